package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Stage;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.parts.PartsEditor;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.ChosenCar;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The parts list of a car in the window, driven by its widgets. */
class PartsListTest {

    private static final String LOOK = System.getProperty("cradlewright.look", "light");
    private static final int NAME = 0;
    private static final int MASS = 1;
    /** With so many times the rows an edit may take so many times as long: in step with the rows, with room for a busy machine. */
    private static final long QUICK = 20;

    private static WorkingShop shop;

    private Car car;
    private TreeViewer viewer;
    private Tree tree;

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
    void openList() {
        Bot.page().closeAllEditors(false);
        car = shop.folder().cars().stream().filter(each -> each.getName().contains("red")).findFirst().orElseThrow();
        PartsEditor.open(Bot.page(), file());
        Bot.settle();
        IEditorPart editor = Bot.page().getActiveEditor();
        viewer = (TreeViewer) editor.getSite().getSelectionProvider();
        tree = viewer.getTree();
    }

    @AfterEach
    void undoAll() {
        while (shop.stack().canUndo()) {
            shop.stack().undo();
        }
        Bot.page().closeAllEditors(false);
    }

    private ShopFile file() {
        return shop.folder().fileOf(car).orElseThrow();
    }

    private Part part(String name) {
        return car.getPieces().stream().flatMap(piece -> piece.getParts().stream()).filter(part -> part.getName().equals(name))
                .findFirst().orElseThrow();
    }

    private Stage stage() {
        return car.getStages().get(0);
    }

    /** Returns the composite of the editor, below which its widgets lie. */
    private Composite page() {
        Composite top = tree;
        while (top.getParent() != null && Bot.controls(top).filter(Table.class::isInstance).findAny().isEmpty()) {
            top = top.getParent();
        }
        return top.getParent();
    }

    private Table foot() {
        return Bot.find(page(), Table.class, each -> true);
    }

    private String line() {
        return Bot.find(page(), CLabel.class, each -> true).getText();
    }

    private TreeItem item(Part part) {
        return Arrays.stream(tree.getItems()).flatMap(top -> Arrays.stream(top.getItems())).filter(item -> item.getData() == part)
                .findFirst().orElseThrow();
    }

    private String shown(Part part, int column) {
        return item(part).getText(column);
    }

    private int column(String title) {
        return Arrays.stream(tree.getColumns()).map(column -> column.getText()).toList().indexOf(title);
    }

    private Text edit(Part part, int column) {
        viewer.editElement(part, column);
        Bot.settle();
        return Bot.find(tree, Text.class, each -> true);
    }

    private static void enter(Text text) {
        text.notifyListeners(SWT.DefaultSelection, new Event());
        Bot.settle();
    }

    private void click(Part part, int column) {
        tree.notifyListeners(SWT.MouseDown, tickOf(part, column));
        Bot.settle();
    }

    private Event tickOf(Part part, int column) {
        tree.showItem(item(part));
        tree.showColumn(tree.getColumn(column));
        Bot.settle();
        Rectangle cell = item(part).getBounds(column);
        Event event = new Event();
        event.button = 1;
        event.x = cell.x + cell.width / 2;
        event.y = cell.y + cell.height / 2;
        return event;
    }

    private void press(String words) {
        Bot.find(page(), Button.class, button -> button.getText().replace("&", "").equals(words))
                .notifyListeners(SWT.Selection, new Event());
        Bot.settle();
    }

    @Test
    void aMassIsTypedIntoItsCellUndoneAndRedone() {
        Part bonnet = part("bonnet");
        Text field = edit(bonnet, MASS);
        assertEquals("15 kg", field.getText());
        field.setText("12 m");
        assertTrue(line().contains("kg"), "said while it is typed: " + line());
        enter(field);
        assertEquals("15 kg weighed", bonnet.getMass().text(), "what is refused is not stored");
        field = edit(bonnet, MASS);
        field.setText("33 lb +- 1, guessed");
        enter(field);
        assertEquals(33 * 0.45359237, bonnet.getMass().value(), 1e-12, "1 lb is 0.45359237 kg exactly (agreement of 1959)");
        assertTrue(shown(bonnet, column("source")).equals("guessed"));
        assertTrue(shop.stack().isDirty(file()) && Bot.page().getActiveEditor().isDirty());
        Bot.menu("Edit", "Undo");
        assertEquals("15 kg", shown(bonnet, MASS));
        Bot.menu("Edit", "Redo");
        assertEquals("guessed", shown(bonnet, column("source")));
    }

    @Test
    void whatComesOffNowIsAskedAboutFirst() {
        Part bonnet = part("bonnet");
        int column = column(stage().getName());
        assertEquals("on", shown(bonnet, column));
        click(bonnet, column);
        assertTrue(stage().getOn().contains(bonnet), "nothing is changed yet");
        Bot.await("the question is answered", () -> Bot.controls(Bot.shell()).anyMatch(control -> control instanceof StyledText text
                && text.isVisible() && text.getText().contains("bonnet")));
        Bot.picture(Bot.shell(), "parts-may-it-come-off-" + LOOK);
        press("Leave It On");
        assertTrue(stage().getOn().contains(bonnet));
        click(bonnet, column);
        press("Take It Off");
        assertFalse(stage().getOn().contains(bonnet));
        assertEquals("off", shown(bonnet, column));
        Bot.menu("Edit", "Undo: part bonnet off");
        assertEquals("on", shown(bonnet, column));
    }

    @Test
    void aStageInWhichNothingStandsIsTickedAtOnce() {
        Part bonnet = part("bonnet");
        Stage other = car.getStages().get(1);
        click(bonnet, column(other.getName()));
        assertTrue(other.getOn().contains(bonnet));
        click(bonnet, column(other.getName()));
        assertFalse(other.getOn().contains(bonnet));
    }

    private static void copy(String text) {
        Clipboard clipboard = new Clipboard(Bot.display());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    @Test
    void threeRowsOfASpreadsheetAreEnteredAsOneChange() {
        int before = car.getPieces().get(0).getParts().size();
        copy("name\tmass\tsource\tx\ty\tz\r\ngrille\t2,5\tguessed\t50\t0\t600\r\nsun visor\t0,4\t\t\t\t\r\nhorn\tloud\t\t\t\t\r\n"
                + "bonnet\t15,5\tweighed\t\t\t\r\n");
        tree.setFocus();
        Bot.settle();
        Bot.withDialog(() -> Bot.menu("Edit", "Paste"), dialog -> {
            Table preview = Bot.find(dialog, Table.class, each -> true);
            assertEquals(List.of("new", "new", "refused", "change"),
                    Arrays.stream(preview.getItems()).map(item -> item.getText(2)).toList());
            assertTrue(preview.getItem(2).getText(3).contains("loud"), preview.getItem(2).getText(3));
            Bot.picture(dialog, "parts-paste-" + LOOK);
            assertEquals(List.of(), Eyes.complaints(dialog));
            Bot.press(dialog, "Enter 3 Rows");
        });
        assertEquals(before + 2, car.getPieces().get(0).getParts().size());
        assertEquals("15.5 kg weighed", part("bonnet").getMass().text());
        assertEquals("2.5 kg guessed", part("grille").getMass().text());
        Bot.menu("Edit", "Undo: paste 3 rows");
        assertEquals(before, car.getPieces().get(0).getParts().size());
        assertEquals("15 kg weighed", part("bonnet").getMass().text());
    }

    private long millisOfATick(Part part) {
        Event tick = tickOf(part, column(car.getStages().get(1).getName()));
        long start = System.nanoTime();
        tree.notifyListeners(SWT.MouseDown, tick);
        long millis = (System.nanoTime() - start) / 1_000_000;
        assertTrue(car.getStages().get(1).getOn().contains(part));
        return millis;
    }

    @Test
    void threeHundredRowsStayQuick() {
        StringBuilder rows = new StringBuilder("name\tmass\tsource\tx\ty\tz\n");
        for (int i = 0; i < 300; i++) {
            rows.append("clip ").append(i).append('\t').append(i).append(".5 kg\tweighed\t").append(10 * i).append("\t0\t500\n");
        }
        int fewRows = tree.getItem(0).getItemCount();
        long few = millisOfATick(part("bonnet"));
        copy(rows.toString());
        tree.setFocus();
        Bot.settle();
        Bot.withDialog(() -> Bot.menu("Edit", "Paste"), dialog -> Bot.press(dialog, "Enter 300 Rows"));
        assertTrue(tree.getItem(0).getItemCount() > 300);
        long many = millisOfATick(part("clip 299"));
        String words = "a tick, from the mouse to the end of the edit and all its listeners: " + few + " ms among " + fewRows
                + " rows, " + many + " ms among 300 more";
        System.out.println(words);
        assertTrue(many < QUICK * (few + 1), words);
    }

    private static void openByCommand() throws CommandException {
        Bot.window().getService(IHandlerService.class).executeCommand("cradlewright.ui.openParts", null);
        Bot.settle();
    }

    @Test
    void theListOpensForTheCarThatIsChosenInTheTreeOrOnTheStartPage() throws CommandException, PartInitException {
        Bot.page().closeAllEditors(false);
        ShopView shopTree = (ShopView) Bot.page().showView(ShopView.ID);
        shopTree.reveal(part("bonnet"));
        Bot.settle();
        openByCommand();
        assertEquals("Pellow Siskin coupe, red, parts", Bot.page().getActiveEditor().getTitle());
        Bot.page().closeAllEditors(false);
        Bot.menu("Window", "Start Page");
        Bot.await("the start page has its lines", () -> ((ChosenCar) Bot.page().getActiveEditor()).chosenCar().isPresent());
        String id = ((ChosenCar) Bot.page().getActiveEditor()).chosenCar().orElseThrow();
        openByCommand();
        Car chosen = shop.folder().cars().stream().filter(each -> each.getId().equals(id)).findFirst().orElseThrow();
        assertEquals(chosen.getName() + ", parts", Bot.page().getActiveEditor().getTitle());
    }

    @Test
    void whatIsCopiedGoesToTheClipboardAsCells() {
        viewer.setSelection(new StructuredSelection(part("bonnet")));
        tree.setFocus();
        Bot.settle();
        Bot.menu("Edit", "Copy");
        Clipboard clipboard = new Clipboard(Bot.display());
        String text = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        assertEquals(2, text.lines().count(), text);
        String row = text.lines().skip(1).findFirst().orElseThrow();
        assertTrue(row.startsWith("bonnet\t15 kg\t\tweighed\t720\t0\t900\t40 mm\tshell\t"), row);
    }

    /** The command line prints the mass at a visit in these words. */
    private String massAtVisit() {
        CarFacts facts = shop.snapshot().find(CarFacts.class, car.getId()).orElseThrow();
        VisitFacts visit = facts.visitsOn(shop.snapshot().today()).get(0);
        assertEquals(stage().getId(), visit.stageId().orElseThrow());
        List<Weight> weights = new ArrayList<>();
        shop.ask(new WeightKey(car.getId(), visit.id()), (Answer<Weight>) weights::add);
        Bot.await("the weight is known", () -> !weights.isEmpty());
        return BalanceWords.mass(weights.get(0).estimate(), UnitSystem.METRIC);
    }

    private String footOfStage() {
        Bot.await("the foot is worked out", () -> foot().getItemCount() > 0 && Bot.controls(page())
                .noneMatch(control -> control instanceof Label label && label.getText().contains("again")));
        TableItem line = Arrays.stream(foot().getItems()).filter(item -> item.getText(NAME).equals(stage().getName())).findFirst()
                .orElseThrow();
        return line.getText(MASS).replace(" ± ", " kg, give or take ");
    }

    @Test
    void theFootIsTheNumberOfTheCommandLineBeforeAndAfterAnEdit() {
        String before = footOfStage();
        assertEquals(massAtVisit(), before);
        Text field = edit(part("bonnet"), MASS);
        field.setText("40 kg");
        enter(field);
        String after = footOfStage();
        assertEquals(massAtVisit(), after);
        assertFalse(before.equals(after), after);
    }

    @Test
    void rowsAreFilteredAndSorted() {
        Text filter = Bot.find(page(), Text.class, each -> each.getMessage().equals("name, source, piece or stage"));
        filter.setText("shell guessed");
        Bot.settle();
        assertEquals("wiring loom", tree.getItem(0).getItem(0).getText(NAME));
        assertTrue(line().contains("rows shown"), line());
        filter.setText("");
        tree.getColumn(MASS).notifyListeners(SWT.Selection, new Event());
        tree.getColumn(MASS).notifyListeners(SWT.Selection, new Event());
        Bot.settle();
        assertEquals("bare shell", tree.getItem(0).getItem(0).getText(NAME), "the heaviest first");
    }

    @Test
    void theDiagramOpensBesideTheListAndBothAreOneFile() {
        ShopEditors.open(Bot.page(), file());
        Bot.settle();
        assertEquals(2, Bot.page().getEditorReferences().length);
        assertFalse(Bot.page().getActiveEditor() instanceof PartsEditor);
        PartsEditor.open(Bot.page(), file());
        assertEquals(2, Bot.page().getEditorReferences().length);
        assertTrue(Bot.page().getActiveEditor() instanceof PartsEditor);
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        assertTrue(Eyes.colours(tree) > 12, "the table is drawn");
        Bot.picture(Bot.shell(), "parts-" + LOOK);
    }
}
