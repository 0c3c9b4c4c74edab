package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.quantity.Source;
import cradlewright.report.UnitSystem;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.preferences.ReaderPage;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.views.properties.PropertySheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Details of what is selected are typed into fields, refused while they are wrong, stored as one change and undone. */
class PropertiesTest {

    private static WorkingShop shop;

    private Composite page;
    private Part part;

    @BeforeAll
    static void open() throws Exception {
        shop = DemoShop.open(DemoShop.copy());
    }

    @BeforeEach
    void begin() throws CoreException {
        part = parts().get(1);
        show(part);
    }

    @AfterEach
    void undoAll() {
        while (shop.stack().canUndo()) {
            shop.stack().undo();
        }
        units(UnitSystem.METRIC);
    }

    @AfterAll
    static void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
    }

    private static Car car() {
        return shop.folder().cars().stream().filter(car -> shop.folder().fileOf(car).orElseThrow().path().contains("white coupe"))
                .findFirst().orElseThrow();
    }

    private static List<Part> parts() {
        return car().getPieces().get(0).getParts();
    }

    private void show(EObject... things) throws CoreException {
        PropertySheet view = (PropertySheet) Bot.page().showView(IPageLayout.ID_PROP_SHEET);
        ShopView tree = (ShopView) Bot.page().showView(ShopView.ID);
        tree.reveal(things[0]);
        if (things.length > 1) {
            tree.getSite().getSelectionProvider().setSelection(new StructuredSelection(things));
        }
        Bot.settle();
        page = (Composite) view.getCurrentPage().getControl();
    }

    private static void units(UnitSystem units) {
        InstanceScope.INSTANCE.getNode(ReaderUnits.NODE).put(ReaderUnits.KEY, units.name());
        Bot.settle();
    }

    /** Finds what follows the label of a row: first the field for the value, then the others. */
    private <T extends Control> T field(String label, Class<T> type, int number) {
        Label before = Bot.find(page, Label.class, each -> each.getText().equals(label));
        List<Control> all = Bot.controls(before.getParent()).toList();
        return all.subList(all.indexOf(before), all.size()).stream().filter(type::isInstance).map(type::cast).skip(number).findFirst()
                .orElseThrow();
    }

    private Text value(String label) {
        return field(label, Text.class, 0);
    }

    private String line() {
        return Bot.find(page, CLabel.class, each -> true).getText();
    }

    private static void enter(Text text) {
        text.notifyListeners(SWT.DefaultSelection, new Event());
        Bot.settle();
    }

    @Test
    void aMassIsTypedStoredUndoneAndRedoneFromTheMenu() {
        String before = part.getMass().text();
        value("mass").setText("285 kg +- 8, weighed");
        assertEquals(before, part.getMass().text(), "nothing is stored while it is typed");
        enter(value("mass"));
        assertEquals("285 kg u 4 weighed", part.getMass().text());
        assertEquals("285 kg", value("mass").getText());
        assertEquals("8 kg", field("mass", Text.class, 1).getText());
        assertEquals("weighed", field("mass", Combo.class, 0).getText());
        Bot.menu("Edit", "Undo: change mass of part " + part.getName());
        assertEquals(before, part.getMass().text());
        Bot.menu("Edit", "Redo: change mass of part " + part.getName());
        assertEquals("285 kg", value("mass").getText());
    }

    @Test
    void whatIsWrongIsSaidWhileItIsTypedAndNeverStored() {
        String before = part.getMass().text();
        Text mass = value("mass");
        mass.setText("12 m");
        assertTrue(line().contains("kg"), line());
        enter(mass);
        assertEquals(before, part.getMass().text());
        assertEquals("12 m", mass.getText(), "what was typed is still there to be mended");
        Bot.picture(Bot.shell(), "properties-refused");
        mass.setText("-4 kg");
        assertTrue(line().contains("more than 0 is wanted") || line().contains("0 or more is wanted"), line());
        Event escape = new Event();
        escape.detail = SWT.TRAVERSE_ESCAPE;
        mass.notifyListeners(SWT.Traverse, escape);
        assertFalse(escape.doit, "Escape only brings back what was there");
        assertTrue(before.startsWith(mass.getText()), mass.getText());
        assertFalse(shop.stack().canUndo());
    }

    @Test
    void leavingAFieldStoresItAndClearingMakesItUnknown() {
        Text mass = value("mass");
        mass.setText("");
        mass.notifyListeners(SWT.FocusOut, new Event());
        Bot.settle();
        assertNull(part.getMass());
        assertFalse(field("mass", Combo.class, 0).isEnabled(), "there is nothing to know well");
        assertEquals("not known", mass.getMessage());
    }

    @Test
    void severalAreEditedInOneStep() throws CoreException {
        Part other = parts().get(2);
        show(part, other);
        assertTrue(Bot.controls(page).anyMatch(each -> each instanceof Label label && label.getText().equals("part, 2 chosen")));
        Combo source = field("mass", Combo.class, 0);
        source.select(source.indexOf("guessed"));
        source.notifyListeners(SWT.Selection, new Event());
        Bot.settle();
        assertEquals(Source.GUESSED, part.getMass().source());
        assertEquals(Source.GUESSED, other.getMass().source());
        Bot.picture(Bot.shell(), "properties-several");
        Bot.menu("Edit", "Undo: change mass of part " + part.getName() + " and 1 more");
        assertFalse(shop.stack().canUndo());
    }

    @Test
    void aConditionIsChosenFromAList() throws CoreException {
        Mount mount = car().getMounts().get(0);
        show(mount);
        Combo condition = field("condition", Combo.class, 0);
        condition.select(condition.indexOf("holed"));
        condition.notifyListeners(SWT.Selection, new Event());
        assertEquals("holed", mount.getCondition().getLiteral());
        assertEquals(List.of(), Eyes.complaints(page));
        Bot.picture(Bot.shell(), "properties-mount");
    }

    @Test
    void whoDependsOnItIsALinkThatGoesThere() {
        Link link = Bot.find(page, Link.class, each -> each.getText().contains("stage") && each.getText().equals(first()));
        link.notifyListeners(SWT.Selection, new Event());
        Bot.settle();
        assertTrue(Bot.controls(page).anyMatch(each -> each instanceof Label label && label.getText().startsWith("stage ")));
    }

    private String first() {
        return Bot.controls(page).filter(Link.class::isInstance).map(each -> ((Link) each).getText())
                .filter(text -> text.contains("stage")).findFirst().orElseThrow();
    }

    @Test
    void unitsAreChosenInThePreferences() {
        double kilograms = part.getMass().value();
        Bot.withDialog(() -> PreferencesUtil.createPreferenceDialogOn(Bot.shell(), ReaderPage.ID, null, null).open(), dialog -> {
            Bot.picture(dialog, "preferences");
            dialog.close();
        });
        units(UnitSystem.INCH);
        assertTrue(value("mass").getText().endsWith(" lb"), value("mass").getText());
        assertTrue(value("balance point").getText().endsWith(" in"), value("balance point").getText());
        assertEquals(kilograms, part.getMass().value(), "what is kept stays as it is");
        Bot.picture(Bot.shell(), "properties-inch");
    }

    @Test
    void nothingIsCutOff() {
        assertEquals(List.of(), Eyes.complaints(page));
        Bot.picture(Bot.shell(), "properties");
        assertTrue(Eyes.colours(page) > 20, "the page is drawn");
    }
}
