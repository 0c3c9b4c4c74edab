package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.change.PartOffQuestion;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.lookup.SupportCardsKey;
import cradlewright.model.vehicle.Part;
import cradlewright.report.UnitSystem;
import cradlewright.report.sheet.PartOffSheet;
import cradlewright.report.sheet.Sheet;
import cradlewright.report.sheet.SupportSheet;
import cradlewright.ui.ask.AskView;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.shop.WorkingShop;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The daily questions: what is shown is what the same question answers on an engine of its own, and nothing is edited. */
class AskViewTest {

    private static WorkingShop shop;

    private AskView view;

    @BeforeAll
    static void openShop() throws Exception {
        shop = DemoShop.open(DemoShop.copy(), DemoShop.PRESENT);
        DemoShop.awaitAnswers();
    }

    @AfterAll
    static void closeShop() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
        Bot.settle();
    }

    @BeforeEach
    void show() throws Exception {
        // The start page has a sheet of its own.
        Bot.page().closeAllEditors(false);
        view = (AskView) Bot.page().showView(AskView.ID);
        Bot.settle();
    }

    /** The sheet of a question stays until the next one is answered; each test begins without one. */
    @AfterEach
    void hide() {
        Bot.page().hideView(view);
    }

    private static CarFacts car(String name) {
        return shop.snapshot().all(CarFacts.class).stream().filter(car -> car.name().contains(name)).findFirst().orElseThrow();
    }

    private static void type(String hint, String text) {
        Text field = Bot.find(Bot.shell(), Text.class, each -> each.getMessage().equals(hint));
        field.setText(text);
        field.notifyListeners(SWT.DefaultSelection, new Event());
    }

    /** Waits until the visible sheet says something, and returns it. */
    private static String awaitSheet(String words) {
        Bot.await("a sheet says " + words, () -> Bot.controls(Bot.shell())
                .anyMatch(control -> control instanceof StyledText text && text.isVisible() && text.getText().contains(words)));
        return Bot.find(Bot.shell(), StyledText.class, text -> true).getText();
    }

    private static void assertShows(Sheet sheet, String shown) {
        for (Sheet.Line line : sheet.lines()) {
            assertTrue(shown.contains(line.text().replaceAll("\\s+", " ")), () -> line.text() + " in " + shown);
        }
    }

    @Test
    void mayAPartComeOffIsAnsweredAsByTheCommandLine() {
        CarFacts red = car("red");
        PartFacts bonnet = red.parts().filter(part -> part.name().equals("bonnet")).findFirst().orElseThrow();
        Bot.menu("Ask", "May It Come Off Now?");
        type("part, such as left door", "bonnet coupe red");
        String shown = awaitSheet("Cautions");
        String question = "May bonnet come off " + red.name() + " on 2026-11-25?";
        assertShows(new PartOffSheet(UnitSystem.METRIC).write(question,
                new PartOffQuestion(shop.snapshot(), red, bonnet, shop.catalogue()).ask(Progress.NONE)), shown);
        assertEquals(0, shop.stack().history().size());
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        Bot.picture(Bot.shell(), "ask-part");
    }

    @Test
    void aPartThatIsSelectedInTheTreeIsAskedAboutAtOnce() throws Exception {
        Part door = shop.folder().cars().stream().filter(car -> car.getName().contains("red")).flatMap(car -> car.getPieces().stream())
                .flatMap(piece -> piece.getParts().stream()).filter(part -> part.getName().equals("right door")).findFirst().orElseThrow();
        ShopView tree = (ShopView) Bot.page().showView(ShopView.ID);
        tree.reveal(door);
        Bot.settle();
        Bot.menu("Ask", "May It Come Off Now?");
        awaitSheet("May right door come off " + car("red").name());
    }

    @Test
    void severalPartsAreNamedSoThatOneCanBeChosen() {
        Bot.menu("Ask", "May It Come Off Now?");
        type("part, such as left door", "left door");
        String shown = awaitSheet("Several parts fit");
        assertTrue(shown.contains("left door, shell of " + car("red").name()), shown);
    }

    @Test
    void aSupportIsLookedUpFromTheToolBar() {
        type("support or part, such as 4L", "4l");
        String shown = awaitSheet("held by");
        Engine engine = new Engine();
        engine.update(shop.snapshot());
        assertShows(new SupportSheet(UnitSystem.METRIC).write("4l", engine.read(new SupportCardsKey("4l"), Progress.NONE), shop.answers()),
                shown);
        assertTrue(shown.contains("stacks\tas found: "), shown);
        Bot.picture(Bot.shell(), "ask-support");
    }

    @Test
    void theSupportOfOneCarIsLookedUpByWordsOfItsName() {
        type("support or part, such as 4L", "4L red");
        String shown = awaitSheet("held by");
        assertTrue(shown.startsWith(car("red").name() + ", 4L"), shown);
        assertEquals(-1, shown.indexOf(car("black").name()), shown);
    }

    @Test
    void theGearIsAskedAboutACarAsItIsNow() {
        view.askLift(car("cream").id());
        Combo way = Bot.find(Bot.shell(), Combo.class, combo -> Arrays.stream(combo.getItems())
                .anyMatch(item -> item.contains("Engine hoist")));
        assertTrue(way.getItemCount() >= 2, String.join("; ", way.getItems()));
        String shown = awaitSheet("What each strap takes");
        assertTrue(shown.contains("stop at\t"), shown);
        assertTrue(shown.contains("mass now\t"), shown);
        assertEquals(0, shop.stack().history().size());
        Bot.picture(Bot.shell(), "ask-lift");
    }
}
