package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Verdict;
import cradlewright.model.base.Settings;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Unit;
import cradlewright.ui.edit.Spot;
import cradlewright.ui.file.FilePage;
import cradlewright.ui.history.HistoryView;
import cradlewright.ui.navigator.ShopView;
import cradlewright.ui.problems.ShopMarkers;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The window around one shop: opening, verdicts, editing, undo, saving, deleting, stopping. */
class ShopWindowTest {

    /** What the command line answers for the same day at the head of {@code check}, one car for each word. */
    private static final Map<String, String> TODAY_BY_THE_COMMAND_LINE = Map.of("Cardle Tern estate, black", "HOLDS",
            "Pellow Finch coupe, blue", "CAN'T SAY", "Pellow Siskin coupe, red", "TIGHT", "Marrick Carrier van, cream", "STOP");

    private static Path folder;
    private static Set<String> filesBefore;
    private static WorkingShop shop;

    @BeforeAll
    static void open() throws Exception {
        folder = DemoShop.copy();
        filesBefore = DemoShop.files(folder);
        shop = DemoShop.open(folder, DemoShop.PRESENT);
        DemoShop.awaitAnswers();
    }

    @AfterEach
    void undoAll() {
        while (shop.stack().canUndo()) {
            shop.stack().undo();
        }
        Bot.page().closeAllEditors(false);
        DemoShop.awaitAnswers();
    }

    @AfterAll
    static void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
    }

    private static ShopView view() throws CoreException {
        return (ShopView) Bot.page().showView(ShopView.ID);
    }

    private static Tree tree() throws CoreException {
        view();
        Control top = Bot.find(Bot.shell(), Tree.class, tree -> tree.getColumnCount() == 2);
        return (Tree) top;
    }

    private static Car car() {
        return shop.folder().cars().stream().filter(car -> shop.folder().fileOf(car).orElseThrow().path().contains("white coupe"))
                .findFirst()
                .orElseThrow();
    }

    private static TreeItem row(TreeItem[] items, String text) {
        return Arrays.stream(items).filter(item -> item.getText().equals(text)).findFirst()
                .orElseThrow(() -> new AssertionError("no row " + text + " in " + Arrays.toString(items)));
    }

    @Test
    void everyCarHasItsVerdictAsGlyphAndWord() throws CoreException {
        TreeItem cars = row(tree().getItems(), "Cars");
        assertEquals(shop.folder().cars().size(), cars.getItemCount());
        for (TreeItem car : cars.getItems()) {
            assertTrue(Arrays.stream(Verdict.values()).anyMatch(verdict -> car.getText(1).startsWith(verdict.word())), car.getText(1));
            assertTrue(car.getImage(1) != null, "a glyph beside " + car.getText(1));
        }
        // A car whose planned visits are graver says that its word is that of today.
        TODAY_BY_THE_COMMAND_LINE.forEach((car, word) -> assertEquals(word,
                row(cars.getItems(), car).getText(1).replace(" today", ""), car));
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        Bot.picture(Bot.shell(), "window");
        assertTrue(Eyes.colours(tree()) > 20, "the tree is drawn");
    }

    @Test
    void markersSayVerdictAndReasonWhereTheThingLies() throws CoreException {
        IMarker[] markers = shop.resource().findMarkers(ShopMarkers.FINDING, false, IResource.DEPTH_INFINITE);
        long warned = shop.answers().orElseThrow().findings().stream().filter(finding -> finding.verdict() != Verdict.HOLDS)
                .map(finding -> finding.subject() + finding.objectId() + finding.check() + finding.words() + finding.verdict()).distinct()
                .count();
        assertEquals(warned, markers.length);
        IMarker stop = Arrays.stream(markers).filter(marker -> marker.getResource().getName().equals("white coupe.cwcar"))
                .filter(marker -> marker.getAttribute(IMarker.MESSAGE, "").startsWith("STOP: ")).findFirst().orElseThrow();
        assertEquals(IMarker.SEVERITY_ERROR, stop.getAttribute(IMarker.SEVERITY, -1));
        assertTrue(stop.getAttribute(IMarker.LOCATION, "").contains(car().getName()), stop.getAttribute(IMarker.LOCATION, ""));
        IEditorPart editor = IDE.openEditor(Bot.page(), stop);
        Bot.settle();
        assertEquals(stop.getResource(), editor.getEditorInput().getAdapter(IResource.class));
    }

    @Test
    void aPartIsRenamedUndoneRedoneAndSavedFromTheMenus() throws Exception {
        Part part = car().getPieces().get(0).getParts().get(0);
        String before = part.getName();
        String label = "rename part " + before;
        ShopFile file = shop.folder().fileOf(part).orElseThrow();
        view().reveal(part);
        Bot.settle();
        Bot.menu("Edit", "Rename");
        Text field = Bot.find(tree(), Text.class, text -> true);
        assertEquals(before, field.getText());
        field.setText("other bonnet");
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Bot.settle();
        assertEquals("other bonnet", part.getName());
        assertTrue(shop.stack().isDirty(file));
        assertTrue(shop.workingOut(), "answers are older than the edit");
        assertEquals("*" + car().getName(), row(row(tree().getItems(), "Cars").getItems(), "*" + car().getName()).getText());
        assertEquals("Undo: " + label, Bot.menuText("Edit", "Undo"));
        assertTrue(toolTips().anyMatch(tip -> tip.startsWith("Undo: " + label)), "the tool bar names it, too");
        Bot.menu("Edit", "Undo");
        assertEquals(before, part.getName());
        assertFalse(shop.stack().isDirty(file));
        assertEquals("Redo: " + label, Bot.menuText("Edit", "Redo"));
        Bot.menu("Edit", "Redo");
        assertEquals("other bonnet", part.getName());
        Bot.menu("File", "Save All");
        assertFalse(shop.stack().isDirty(file));
        assertTrue(Files.readString(folder.resolve(file.path())).contains("other bonnet"));
        Bot.menu("Edit", "Undo");
        assertTrue(shop.stack().isDirty(file), "undo across a save wants saving");
        Bot.menu("File", "Save All");
        assertTrue(Files.readString(folder.resolve(file.path())).contains(before));
        assertNothingOfThePlatformIn(folder);
    }

    private static Stream<String> toolTips() {
        return Bot.controls(Bot.shell()).filter(ToolBar.class::isInstance).flatMap(bar -> Arrays.stream(((ToolBar) bar).getItems()))
                .map(ToolItem::getToolTipText).filter(Objects::nonNull);
    }

    private static void assertNothingOfThePlatformIn(Path shopFolder) {
        Set<String> surplus = DemoShop.files(shopFolder);
        surplus.removeAll(filesBefore);
        surplus.removeIf(path -> path.startsWith(".versions"));
        assertEquals(Set.of(), surplus);
    }

    @Test
    void deletingNamesWhatRefersToTheThingAndCanBeUndone() throws CoreException {
        Mount mount = car().getMounts().get(0);
        List<Mount> all = List.copyOf(car().getMounts());
        view().reveal(mount);
        Bot.settle();
        Bot.withDialog(() -> Bot.menu("Edit", "Delete"), dialog -> {
            org.eclipse.swt.widgets.List users = Bot.find(dialog, org.eclipse.swt.widgets.List.class, list -> true);
            assertTrue(Stream.of(users.getItems()).anyMatch(line -> line.startsWith("support ")), String.join("; ", users.getItems()));
            assertEquals(List.of(), Eyes.complaints(dialog));
            Bot.picture(dialog, "delete");
            Bot.press(dialog, "Cancel");
        });
        assertEquals(all, car().getMounts());
        Bot.withDialog(() -> Bot.menu("Edit", "Delete"), dialog -> Bot.press(dialog, "Delete"));
        assertEquals(all.size() - 1, car().getMounts().size());
        Bot.menu("Edit", "Undo: delete body mount");
        assertEquals(all, car().getMounts());
    }

    @Test
    void aPartIsCopiedPastedAndMovedIntoAnotherPiece() throws CoreException {
        Piece shell = car().getPieces().get(0);
        Piece other = car().getPieces().get(1);
        Part part = shell.getParts().get(0);
        int parts = shell.getParts().size();
        view().reveal(part);
        Bot.settle();
        Bot.menu("Edit", "Copy");
        Bot.menu("Edit", "Paste");
        assertEquals(parts + 1, shell.getParts().size());
        assertEquals(part.getName() + ", copy", shell.getParts().get(1).getName());
        assertNotEquals(part.getId(), shell.getParts().get(1).getId());
        assertEquals(part.getMass(), shell.getParts().get(1).getMass());
        List<Stage> on = car().getStages().stream().filter(stage -> stage.getOn().contains(part)).toList();
        assertFalse(on.isEmpty());
        Spot spot = Spot.in(other, List.of(part)).orElseThrow();
        assertTrue(spot.accepts(List.of(part)));
        assertTrue(spot.move(List.of(part)));
        assertEquals(other, part.eContainer());
        assertEquals(on, car().getStages().stream().filter(stage -> stage.getOn().contains(part)).toList(), "the stages still have it on");
        Bot.menu("Edit", "Undo: move part");
        assertEquals(0, shell.getParts().indexOf(part));
        assertTrue(Spot.beside(part, true, List.of(shell.getParts().get(2))).orElseThrow().move(List.of(shell.getParts().get(3))));
        assertFalse(Spot.in(part, List.of(shell)).isPresent(), "a piece does not go into a part");
    }

    @Test
    void theHistoryGoesToAnyOfItsStates() throws CoreException {
        Part part = car().getPieces().get(0).getParts().get(0);
        String before = part.getName();
        ShopFile file = shop.folder().fileOf(part).orElseThrow();
        for (String name : List.of("one", "two", "three")) {
            shop.stack().execute(new ShopChange("call it " + name, file, () -> part.setName(name)));
        }
        IViewPart history = Bot.page().showView(HistoryView.ID);
        Bot.settle();
        Table table = Bot.find(Bot.shell(), Table.class, each -> each.getColumnCount() == 3 && each.getColumn(2).getText().equals("State"));
        assertEquals(List.of("as it was opened", "call it one", "call it two", "call it three"),
                Arrays.stream(table.getItems()).map(item -> item.getText(0)).toList());
        table.setSelection(1);
        table.notifyListeners(SWT.DefaultSelection, item(table, 1));
        assertEquals("one", part.getName());
        assertEquals(List.of("", "now", "undone", "undone"), Arrays.stream(table.getItems()).map(item -> item.getText(2)).toList());
        Bot.picture(Bot.shell(), "history");
        table.setSelection(0);
        table.notifyListeners(SWT.DefaultSelection, item(table, 0));
        assertEquals(before, part.getName());
        Bot.page().hideView(history);
    }

    private static Event item(Table table, int index) {
        Event event = new Event();
        event.item = table.getItem(index);
        return event;
    }

    @Test
    void aRunIsStoppedAndBegunAnew() throws CoreException {
        view();
        Settings settings = shop.folder().shop().orElseThrow().getSettings();
        shop.stack().execute(new ShopChange("heavier people", shop.folder().fileOf(settings).orElseThrow(),
                () -> settings.setPersonMass(Measured.of(150, Unit.KILOGRAM))));
        Job run = Arrays.stream(Job.getJobManager().find(null)).filter(job -> job.getName().equals("Checking the shop")).findFirst()
                .orElseThrow();
        Bot.await("the run is under way", () -> run.getState() == Job.RUNNING);
        run.cancel();
        Bot.await("it has ended", () -> shop.state() != WorkingShop.State.WORKING_OUT);
        assertEquals(WorkingShop.State.STOPPED, shop.state());
        assertTrue(shop.answers().isPresent(), "the old answers are still there, and said to be old");
        Bot.settle();
        Bot.picture(Bot.shell(), "stopped");
        Bot.menu("Window", "Check Again");
        DemoShop.awaitAnswers();
        assertEquals(WorkingShop.State.CURRENT, shop.state());
        assertEquals(shop.snapshot().number(), shop.answers().orElseThrow().snapshot());
    }

    @Test
    void theFilterFindsNamesAndAnswers() throws CoreException {
        Tree tree = tree();
        Text filter = Bot.find(tree.getParent().getParent(), Text.class, text -> true);
        filter.setText("CAN'T SAY");
        filter.notifyListeners(SWT.Modify, new Event());
        Bot.await("the tree is filtered", () -> tree.getItemCount() < 6 && tree.getItemCount() > 0
                && Arrays.stream(tree.getItem(0).getItems()).noneMatch(item -> item.getText(1).equals("TIGHT")));
        filter.setText("");
        filter.notifyListeners(SWT.Modify, new Event());
        Bot.await("the tree is whole again", () -> tree.getItemCount() == 6);
    }

    @Test
    void aFileThatCannotBeReadSaysWhyWhereAndHowToMendIt() throws Exception {
        Path broken = DemoShop.copy();
        Path bad = broken.resolve("cars/white coupe.cwcar");
        List<String> lines = Files.readAllLines(bad);
        lines.set(20, lines.get(20) + " <oops");
        Files.write(bad, lines);
        try {
            WorkingShop other = DemoShop.open(broken, DemoShop.PRESENT);
            assertEquals(WorkingShop.State.HELD_BACK, other.state());
            ShopFile file = other.folder().files().stream().filter(each -> each.path().equals("cars/white coupe.cwcar")).findFirst()
                    .orElseThrow();
            TreeItem row = row(row(tree().getItems(), "Cars").getItems(), file.path());
            assertEquals("unreadable", row.getText(1));
            IEditorPart page = IDE.openEditor(Bot.page(), other.resource(file), FilePage.ID);
            Bot.settle();
            String words = String.join("\n", Bot.controls(Bot.shell()).filter(Label.class::isInstance).filter(Control::isVisible)
                    .map(label -> ((Label) label).getText()).toList());
            assertTrue(words.contains("cars/white coupe.cwcar, line 2"), words);
            assertTrue(words.contains("To mend it: "), words);
            assertFalse(words.contains("Exception"), words);
            assertEquals(List.of(), Eyes.complaints(Bot.shell()));
            Bot.picture(Bot.shell(), "broken");
            Bot.await("markers tell it", () -> markers(other).length > 0);
            assertTrue(Arrays.stream(markers(other)).anyMatch(marker -> marker.getAttribute(IMarker.SEVERITY, -1) == IMarker.SEVERITY_ERROR
                    && marker.getResource().equals(other.resource(file))));
            assertNotEquals(null, page);
        } finally {
            shop = DemoShop.open(folder, DemoShop.PRESENT);
            DemoShop.awaitAnswers();
        }
    }

    private static IMarker[] markers(WorkingShop of) {
        try {
            return of.resource().findMarkers(ShopMarkers.FILE, false, IResource.DEPTH_INFINITE);
        } catch (CoreException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void withoutAShopTheTreeSaysWhatToDo() throws Exception {
        WorkingShop.close();
        Bot.settle();
        view();
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        Bot.picture(Bot.shell(), "empty");
        assertTrue(Bot.controls(Bot.shell()).filter(Control::isVisible)
                .anyMatch(control -> control instanceof Link link && link.getText().contains("Open the folder")));
        shop = DemoShop.open(folder, DemoShop.PRESENT);
        DemoShop.awaitAnswers();
    }

    @Test
    void theEyesSeeWhatIsWrong() {
        Shell bad = new Shell(Bot.shell());
        Label cut = new Label(bad, SWT.NONE);
        cut.setText("words that are far longer than the room that they are given");
        cut.setBounds(5, 5, 40, 20);
        Label over = new Label(bad, SWT.NONE);
        over.setText("over");
        over.setBounds(10, 8, 60, 30);
        bad.setSize(300, 200);
        bad.open();
        Bot.settle();
        List<String> complaints = Eyes.complaints(bad);
        int nothing = Eyes.colours(new Canvas(bad, SWT.NONE));
        bad.dispose();
        assertTrue(complaints.stream().anyMatch(line -> line.startsWith("cut off")), complaints::toString);
        assertTrue(complaints.stream().anyMatch(line -> line.startsWith("over one another")), complaints::toString);
        assertEquals(1, nothing);
    }
}
