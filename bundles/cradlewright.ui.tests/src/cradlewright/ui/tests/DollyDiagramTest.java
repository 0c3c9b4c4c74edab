package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.diagrams.dolly.DollyEditor;
import cradlewright.model.base.FileRoot;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.Member;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Unit;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Projection;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Dolly 3 under the red coupe as a diagram: mouse, keys, numbers typed in place, situations. */
class DollyDiagramTest {

    private static Path folder;
    private static WorkingShop shop;
    private static Dolly dolly;
    private static Visit visit;
    private IEditorPart editor;
    private Diagram diagram;

    @BeforeAll
    static void open() throws Exception {
        folder = DemoShop.copy();
        shop = DemoShop.open(folder);
        Car car = shop.folder().cars().stream().filter(each -> each.getName().contains("red")).findFirst().orElseThrow();
        visit = car.getVisits().stream().filter(each -> Boolean.TRUE.equals(each.getCurrent())).findFirst().orElseThrow();
        dolly = visit.getSetup().getDolly();
    }

    @BeforeEach
    void show() {
        editor = ShopEditors.open(Bot.page(), file());
        diagram = new Diagram(editor);
        DemoShop.awaitAnswers();
        Bot.await("loads are drawn", () -> known(number()) && known(use()));
    }

    @AfterEach
    void undoAll() {
        while (shop.stack().canUndo()) {
            shop.stack().undo();
        }
        Bot.page().closeAllEditors(false);
    }

    @AfterAll
    static void close() {
        WorkingShop.close();
    }

    private static ShopFile file() {
        return shop.folder().fileOf(dolly).orElseThrow();
    }

    private static Castor castor() {
        return dolly.getCastors().stream().filter(each -> "front left".equals(each.getName())).findFirst().orElseThrow();
    }

    private static Member rail() {
        return dolly.getMembers().stream().filter(each -> "left rail 2".equals(each.getName())).findFirst().orElseThrow();
    }

    private static boolean known(String text) {
        return !text.contains("old") && !text.contains("not known");
    }

    /** Returns the number beside the bar of the castor at the front left. */
    private String number() {
        return text(castor().getId(), Kind.CASTOR, 1);
    }

    private String use() {
        return text(rail().getId(), Kind.RAIL, 0);
    }

    /** While another situation is being worked out nothing is written beside a thing. */
    private String text(String id, Kind kind, int which) {
        List<String> texts = diagram.texts(id, kind);
        return which < texts.size() ? texts.get(which) : "not known yet";
    }

    private static Engine ofTheFiles() {
        Engine engine = new Engine();
        List<FileRoot> roots = ShopFolder.open(folder).files().stream().map(ShopFile::root).flatMap(Optional::stream).toList();
        engine.update(ShopImporter.importShop(roots, LocalDate.now(DemoShop.DAY), 1));
        return engine;
    }

    private static String carId() {
        return ((Car) visit.eContainer()).getId();
    }

    /** What the command line would say of the files as they are saved: all answers about one thing under the car. */
    private static List<Finding> answers(String objectId) {
        return new ShopChecks(ofTheFiles(), BuiltInChecks.catalogue())
                .ask(subject -> subject.ownerId().equals(carId()) && subject.visitId().equals(Optional.of(visit.getId())), Progress.NONE)
                .findings().stream().filter(finding -> finding.objectId().equals(objectId)).toList();
    }

    private static String useOfTheFiles() {
        DoubleStream uses = answers(rail().getId()).stream().filter(finding -> !finding.check().equals("dolly.twist"))
                .mapToDouble(finding -> finding.use().orElse(0.0));
        return "use " + Math.round(100 * uses.max().orElseThrow()) + " %";
    }

    /** The castor is asked for a mass at its upper end, 19 times in 20. */
    private static String numberOfTheFiles() {
        Finding load = answers(castor().getId()).stream().filter(finding -> finding.check().equals("castor.load")).findFirst()
                .orElseThrow();
        return "up to " + Math.round(load.demand().orElseThrow().si() * 9.80665) + " N";
    }

    private Combo situations() {
        return Bot.find(Bot.shell(), Combo.class, combo -> Arrays.asList(combo.getItems()).contains("worst of all situations"));
    }

    private void choose(String words) {
        situations().select(situations().indexOf(words));
        situations().notifyListeners(SWT.Selection, new Event());
        Bot.settle();
    }

    @Test
    void whileACastorIsDraggedTheNumbersAreThoseThatTheCommandLineSaysAfterwards() throws Exception {
        String before = number();
        assertEquals(numberOfTheFiles(), before);
        assertEquals(useOfTheFiles(), use());
        double x = castor().getNode().getPosition().x();
        Point from = diagram.middle(diagram.part(castor().getId(), Kind.CASTOR, Projection.PLAN), 1);
        diagram.drag(from, 24);
        Bot.await("the loads there are shown", () -> !number().equals(before));
        assertEquals(x, castor().getNode().getPosition().x(), 0, "nothing is edited while it is dragged");
        Bot.picture(Bot.shell(), "dolly-dragging");
        String shown = number();
        diagram.mouse(SWT.MouseUp, from.x + 24, from.y, 1, SWT.BUTTON1);
        double moved = castor().getNode().getPosition().x();
        assertTrue(moved > x + 30, "it is now at " + moved);
        assertEquals(0, moved % 5, 1e-9, "whole 5 mm");
        Bot.await("the loads are worked out", () -> known(number()));
        assertEquals(shown, number());
        shop.stack().save(file());
        assertEquals(numberOfTheFiles(), number());
        assertEquals(useOfTheFiles(), use());
        assertEquals(1, shop.stack().history().size(), "a drag is one step of undo");
        shop.stack().undo();
        Bot.await("the old loads are back", () -> number().equals(before));
        shop.stack().save(file());
    }

    @Test
    void aSituationIsChosen() {
        String worst = number();
        choose(Situation.atRest().words());
        Bot.await("the loads at rest are drawn", () -> known(number()) && !number().startsWith("up to"));
        double force = ofTheFiles().read(new LoadsKey(carId(), visit.getId(), Situation.atRest(), false), Progress.NONE).castors().stream()
                .filter(carried -> carried.id().equals(castor().getId())).findFirst().orElseThrow().force();
        assertEquals(Math.round(force) + " N", number());
        Bot.picture(Bot.shell(), "dolly-at-rest");
        choose("worst of all situations");
        Bot.await("the worst is back", () -> number().equals(worst));
    }

    @Test
    void theDollyIsShownEmpty() {
        Combo under = Bot.find(Bot.shell(), Combo.class, combo -> Arrays.asList(combo.getItems()).contains("empty"));
        under.select(under.indexOf("empty"));
        under.notifyListeners(SWT.Selection, new Event());
        Bot.settle();
        assertTrue(diagram.texts(rail().getId(), Kind.RAIL).isEmpty(), "nothing stands on it");
        assertEquals(1, situations().getItemCount());
    }

    @Test
    void arrowsMoveByOneAndByTenMillimetres() {
        double x = castor().getNode().getPosition().x();
        diagram.viewer().select(diagram.part(castor().getId(), Kind.CASTOR, Projection.PLAN));
        diagram.key(SWT.ARROW_RIGHT, 0);
        diagram.key(SWT.ARROW_RIGHT, SWT.SHIFT);
        assertEquals(x + 11, castor().getNode().getPosition().x(), 1e-9);
        diagram.key('n', 0);
        assertNotEquals(castor().getId(), Diagram.item(diagram.viewer().getSelectedEditParts().get(0)).id());
    }

    @Test
    void thicknessIsTypedIntoARail() {
        String before = use();
        Text field = diagram.field(diagram.part(rail().getId(), Kind.RAIL, Projection.PLAN));
        assertEquals("6 mm", field.getText());
        field.setText("4");
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Bot.settle();
        assertEquals(4, ((FoldedSection) rail().getSection()).getThickness().in(Unit.MILLIMETRE), 1e-9);
        Bot.await("the use is worked out", () -> known(use()) && !use().equals(before));
    }

    @Test
    void aToolOfThePaletteAddsAFixture() {
        int fixtures = dolly.getFixtures().size();
        diagram.take("Fixture");
        Point at = diagram.middle(diagram.part(rail().getId(), Kind.RAIL, Projection.PLAN), 0);
        diagram.click(at);
        assertEquals(fixtures + 1, dolly.getFixtures().size());
        assertFalse(diagram.texts(dolly.getFixtures().get(fixtures).getId(), Kind.FIXTURE).contains("load"));
        DemoShop.awaitAnswers();
        Bot.picture(Bot.shell(), "dolly-with-another-fixture");
    }

    @Test
    void theOutlineShowsTheSheetInMiniature() throws Exception {
        ContentOutline outline = (ContentOutline) Bot.page().showView(IPageLayout.ID_OUTLINE);
        Bot.page().activate(editor);
        Bot.settle();
        Bot.await("the miniature is drawn", () -> Eyes.colours(outline.getCurrentPage().getControl()) > 5);
        Bot.picture(Bot.shell(), "dolly-in-miniature");
        Bot.page().hideView(outline);
    }

    @Test
    void anObjectIsShownAndTheWindowCanBeRead() {
        ((DollyEditor) editor).show(visit.getSetup().getContacts().get(0).getId());
        assertEquals(visit.getSetup().getContacts().get(0).getFixture().getId(),
                Diagram.item(diagram.viewer().getSelectedEditParts().get(0)).id(), "the fixture that it stands on");
        Bot.picture(Bot.shell(), "dolly");
        assertTrue(Eyes.colours(diagram.canvas()) > 20, "the dolly is drawn");
    }
}
