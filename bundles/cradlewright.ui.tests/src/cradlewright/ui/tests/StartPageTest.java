package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.overview.CarOverview;
import cradlewright.ui.shop.WorkingShop;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IResource;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The start page: the lines of the overview, for both sorts of readers. */
class StartPageTest {

    private static WorkingShop shop;

    @BeforeAll
    static void open() throws Exception {
        shop = DemoShop.open(DemoShop.copy(), DemoShop.PRESENT);
        DemoShop.awaitAnswers();
    }

    @AfterAll
    static void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
        Bot.settle();
    }

    @BeforeEach
    void begin() {
        Bot.menu("Window", "Start Page");
        press("Technician");
    }

    private static void press(String role) {
        Button button = Bot.find(Bot.shell(), Button.class, each -> each.getText().replace("&", "").equals(role));
        Bot.controls(button.getParent()).filter(Button.class::isInstance).map(Button.class::cast)
                .forEach(each -> each.setSelection(each == button));
        button.notifyListeners(SWT.Selection, new Event());
        Bot.settle();
    }

    private static Table table(String column) {
        return Bot.find(Bot.shell(), Table.class, table -> titles(table).contains(column));
    }

    private static List<String> titles(Table table) {
        return Arrays.stream(table.getColumns()).map(TableColumn::getText).toList();
    }

    private static List<String> column(Table table, String title) {
        int index = titles(table).indexOf(title);
        return Arrays.stream(table.getItems()).map(item -> item.getText(index)).toList();
    }

    /** The same answers put together by an engine of its own. */
    private static List<CarOverview> overview() {
        Engine engine = new Engine();
        engine.update(shop.snapshot());
        return CarOverview.of(shop.answers().orElseThrow(), engine.reader());
    }

    @Test
    void aLineForEachCarSaysWhatTheOverviewSays() {
        Table cars = table("Car");
        assertEquals(overview().stream().map(car -> car.line().name()).toList(), column(cars, "Car"));
        assertEquals(overview().stream().map(car -> car.verdict().map(Verdict::word).orElse("-")).toList(), column(cars, "Today"));
        assertTrue(column(cars, "What stops or holds up").stream().anyMatch(text -> text.contains("still ties the shell to the chassis")));
        assertTrue(Arrays.stream(cars.getItems()).allMatch(item -> item.getImage(0) != null), "a glyph beside each word");
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        Bot.picture(Bot.shell(), "start-technician");
    }

    @Test
    void theManagerSeesPlacesWaitsAndDates() {
        press("Manager");
        Table cars = table("Car");
        assertEquals(overview().stream().map(car -> car.line().standing()).toList(), column(cars, "Where it stands, on what"));
        assertEquals(overview().stream().map(car -> car.line().waiting()).toList(), column(cars, "Waits for, or next"));
        assertTrue(column(table("Taken by"), "Taken by").contains("free"), "a place is free");
        assertTrue(column(table("Dolly or lifting gear"), "Examination due").stream().anyMatch(text -> text.startsWith("20")));
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        Bot.picture(Bot.shell(), "start-manager");
    }

    @Test
    void theChosenCarIsToldAboutAndOpenedByEnter() {
        Table cars = table("Car");
        TableItem green = Arrays.stream(cars.getItems()).filter(item -> item.getText(1).contains("green")).findFirst().orElseThrow();
        cars.setSelection(green);
        Event chosen = new Event();
        chosen.item = green;
        cars.notifyListeners(SWT.Selection, chosen);
        Bot.settle();
        StyledText about = Bot.find(Bot.shell(), StyledText.class, text -> text.getText().startsWith(green.getText(1)));
        assertTrue(about.getText().contains("The stack at rear right is short"), about.getText());
        assertTrue(about.getText().contains("Cautions"), about.getText());
        cars.notifyListeners(SWT.DefaultSelection, chosen);
        Bot.settle();
        assertEquals("green van.cwcar", Bot.page().getActiveEditor().getEditorInput().getAdapter(IResource.class).getName());
    }
}
