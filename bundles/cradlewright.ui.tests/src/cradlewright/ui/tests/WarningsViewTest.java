package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.report.UnitSystem;
import cradlewright.report.sheet.FindingSheet;
import cradlewright.report.sheet.Sheet;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.warnings.WarningsView;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.resources.IResource;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The view of all answers: nothing is left out, the explanation is that of the reports, what was tried is entered and taken back. */
class WarningsViewTest {

    private static final String SHORT = "The stack at rear right is short";

    private static WorkingShop shop;

    private WarningsView view;
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
    void show() throws Exception {
        view = (WarningsView) Bot.page().showView(WarningsView.ID);
        Bot.settle();
        tree = (Tree) viewer().getControl();
        viewer().expandAll();
        Bot.settle();
    }

    @AfterEach
    void hide() {
        Bot.page().hideView(view);
        while (shop.stack().canUndo()) {
            shop.stack().undo();
        }
        DemoShop.awaitAnswers();
    }

    private TreeViewer viewer() {
        return (TreeViewer) view.getSite().getSelectionProvider();
    }

    private List<TreeItem> answers() {
        return Arrays.stream(tree.getItems()).flatMap(group -> Stream.of(group.getItems())).toList();
    }

    private TreeItem select(String words) {
        TreeItem found = answers().stream().filter(item -> item.getText(1).contains(words)).findFirst()
                .orElseThrow(() -> new AssertionError("no row says " + words));
        tree.setSelection(found);
        Event chosen = new Event();
        chosen.item = found;
        tree.notifyListeners(SWT.Selection, chosen);
        Bot.settle();
        return found;
    }

    private static Finding finding(String words) {
        return shop.answers().orElseThrow().findings().stream().filter(finding -> finding.words().contains(words)).findFirst()
                .orElseThrow();
    }

    private static long count(Verdict verdict) {
        return shop.answers().orElseThrow().counts().getOrDefault(verdict, 0L);
    }

    private static void tick(String word) {
        Button button = Bot.find(Bot.shell(), Button.class, each -> each.getText().equals(word) && (each.getStyle() & SWT.CHECK) != 0);
        button.setSelection(!button.getSelection());
        button.notifyListeners(SWT.Selection, new Event());
        Bot.settle();
    }

    @Test
    void everyAnswerOfTheTickedKindsIsThereGravestGroupFirst() {
        assertEquals(count(Verdict.STOP) + count(Verdict.CANT_SAY) + count(Verdict.TIGHT), answers().size());
        assertEquals("STOP", tree.getItem(0).getText(0));
        tick("STOP");
        viewer().expandAll();
        assertEquals(count(Verdict.CANT_SAY) + count(Verdict.TIGHT), answers().size());
        Combo by = Bot.find(Bot.shell(), Combo.class, combo -> Arrays.asList(combo.getItems()).contains("check"));
        by.select(1);
        by.notifyListeners(SWT.Selection, new Event());
        viewer().expandAll();
        assertEquals(count(Verdict.CANT_SAY) + count(Verdict.TIGHT), answers().size());
        assertTrue(tree.getItem(0).getText(1).endsWith("?"), "a check is called by its question: " + tree.getItem(0).getText(1));
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
    }

    @Test
    void theExplanationIsThatOfTheReports() {
        select(SHORT);
        Sheet sheet = new FindingSheet(shop.catalogue(), UnitSystem.METRIC).write(finding(SHORT));
        StyledText shown = Bot.find(Bot.shell(), StyledText.class, text -> text.getText().contains("Is a stack of shims short"));
        for (Sheet.Line line : sheet.lines()) {
            assertTrue(shown.getText().contains(line.text().replaceAll("\\s+", " ")), line.text());
        }
        // 6.0 mm listed and twice the doubt of four gaps of 0.2 mm each: 2 * 0.2 * sqrt(4).
        assertTrue(shown.getText().contains("found 6.8 mm, at most 3.0 mm allowed"), shown.getText());
        Bot.picture(Bot.shell(), "warnings");
    }

    @Test
    void aDoubleClickOpensTheFileOfTheThing() {
        TreeItem row = select(SHORT);
        Event chosen = new Event();
        chosen.item = row;
        tree.notifyListeners(SWT.DefaultSelection, chosen);
        Bot.settle();
        assertEquals("green van.cwcar", Bot.page().getActiveEditor().getEditorInput().getAdapter(IResource.class).getName());
        Bot.page().closeAllEditors(false);
    }

    @Test
    void whatWasTriedIsEnteredByOneButtonAndTakenBackByUndo() {
        select(SHORT);
        Bot.await("the button is there", () -> Bot.controls(Bot.shell()).anyMatch(WarningsViewTest::enters));
        Bot.settle();
        Bot.picture(Bot.shell(), "warnings-fix");
        assertEquals(List.of(), Eyes.complaints(Bot.shell()));
        Bot.find(Bot.shell(), Button.class, WarningsViewTest::enters).notifyListeners(SWT.Selection, new Event());
        assertTrue(Bot.menuText("Edit", "Undo").startsWith("Undo: what to do: Lay "), Bot.menuText("Edit", "Undo"));
        DemoShop.awaitAnswers();
        assertFalse(stillShort(), "the stack is made up");
        Bot.menu("Edit", "Undo");
        DemoShop.awaitAnswers();
        assertTrue(stillShort(), "and short again");
    }

    private static boolean enters(Control control) {
        return control instanceof Button button && button.isVisible() && button.getText().replace("&", "").equals("Enter as Done");
    }

    private static boolean stillShort() {
        return shop.answers().orElseThrow().findings().stream()
                .anyMatch(finding -> finding.verdict() == Verdict.STOP && finding.words().contains(SHORT));
    }
}
