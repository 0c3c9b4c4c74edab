package cradlewright.ui.warnings;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.sheet.FindingSheet;
import cradlewright.report.sheet.GroupSheet;
import cradlewright.report.sheet.PlainSheet;
import cradlewright.report.sheet.Sheet;
import cradlewright.ui.look.ColumnTree;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.sheet.PlainCopy;
import cradlewright.ui.sheet.SheetPane;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.StateWords;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.shop.WorstVerdicts;
import cradlewright.ui.words.ReaderUnits;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;

/** All answers, gravest first, with the numbers, formulas and sources of the selected one beside them. */
public final class WarningsView extends ViewPart implements OpenShopListener, WorkingShopListener {

    /** Its id. */
    public static final String ID = "cradlewright.ui.warningsView";

    private static final int VERDICT_WIDTH = 130;
    private static final int WHAT = 5;
    private static final int NUMBERS = 3;

    private final AnswerTree rows = new AnswerTree();
    private final Set<Verdict> wanted = EnumSet.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.TIGHT);
    private Gathering gathering = Gathering.THING;
    private Optional<WorkingShop> shop = Optional.empty();
    private Label line;
    private TreeViewer tree;
    private SheetPane explained;
    private FixBar fixes;

    @Override
    public void createPartControl(Composite parent) {
        SashForm halves = new SashForm(parent, SWT.HORIZONTAL);
        ReaderUnits.whenChanged(halves, this::fill);
        Composite left = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(left);
        choices(left);
        line = new Label(left, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(4, 2).applyTo(line);
        tree(left);
        Composite right = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(right);
        explained = new SheetPane(right, Messages.Warnings_explained);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(explained.control());
        fixes = new FixBar(right);
        halves.setWeights(3, 2);
        actions();
        WorkingShop.addOpenListener(this);
        show(WorkingShop.current());
    }

    private void choices(Composite parent) {
        Composite bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2 + Verdict.values().length).margins(4, 2).applyTo(bar);
        new Label(bar, SWT.NONE).setText(Messages.Warnings_by);
        Combo by = new Combo(bar, SWT.DROP_DOWN | SWT.READ_ONLY);
        by.setItems(Messages.Warnings_byThing, Messages.Warnings_byCheck);
        by.select(gathering.ordinal());
        Spoken.name(by, Messages.Warnings_by);
        by.addListener(SWT.Selection, event -> {
            gathering = Gathering.values()[by.getSelectionIndex()];
            fill();
        });
        for (Verdict verdict : List.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.TIGHT, Verdict.HOLDS)) {
            Button button = new Button(bar, SWT.CHECK);
            button.setText(verdict.word());
            button.setSelection(wanted.contains(verdict));
            button.addListener(SWT.Selection, event -> {
                if (button.getSelection()) {
                    wanted.add(verdict);
                } else {
                    wanted.remove(verdict);
                }
                fill();
            });
        }
    }

    private void tree(Composite parent) {
        ColumnTree filtered = new ColumnTree(parent, new AnswerFilter(), SWT.SINGLE);
        filtered.setInitialText(Messages.Warnings_filter);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(filtered);
        tree = filtered.getViewer();
        tree.getTree().setHeaderVisible(true);
        Spoken.name(tree.getTree(), Messages.Warnings_answers);
        TreeViewerColumn verdict = filtered.addNarrow(new VerdictColumn(), VERDICT_WIDTH);
        verdict.getColumn().setText(Messages.Warnings_answer);
        filtered.addWide(new TextColumn() {
            @Override
            public String getText(Object row) {
                return AnswerTree.what(row);
            }
        }, WHAT).getColumn().setText(Messages.Warnings_what);
        filtered.addWide(new TextColumn() {
            @Override
            public String getText(Object row) {
                return AnswerTree.numbers(row);
            }
        }, NUMBERS).getColumn().setText(Messages.Warnings_numbers);
        ColumnViewerToolTipSupport.enableFor(tree);
        tree.setContentProvider(rows);
        tree.setComparer(rows);
        tree.setInput(rows);
        tree.addSelectionChangedListener(event -> explain());
        tree.addDoubleClickListener(event -> go());
        getSite().setSelectionProvider(tree);
    }

    private void actions() {
        Action copy = new Action(Messages.Warnings_copy) {
            @Override
            public void run() {
                explained.copy();
            }
        };
        copy.setToolTipText(Messages.Warnings_copy);
        copy.setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_COPY));
        getViewSite().getActionBars().getToolBarManager().add(copy);
        Action copyAll = new Action(Messages.Warnings_copyAll) {
            @Override
            public void run() {
                PlainCopy.put(allText(), tree.getControl().getDisplay());
            }
        };
        getViewSite().getActionBars().getMenuManager().add(copyAll);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), copy);
    }

    /** Returns every answer that is shown, group by group. */
    private String allText() {
        GroupSheet sheet = new GroupSheet(ReaderUnits.current());
        return rows.groups().stream().map(group -> PlainSheet.write(sheet.write(group.title(), group.findings())))
                .collect(Collectors.joining("\n"));
    }

    /** A column of text whose tip is the whole text, for it may be cut. */
    private abstract static class TextColumn extends ColumnLabelProvider {

        @Override
        public String getToolTipText(Object row) {
            String text = getText(row);
            return text.isEmpty() ? null : text;
        }
    }

    private final class VerdictColumn extends ColumnLabelProvider {

        @Override
        public String getText(Object row) {
            return VerdictLook.word(AnswerTree.verdict(row));
        }

        @Override
        public Image getImage(Object row) {
            return VerdictLook.image(AnswerTree.verdict(row));
        }

        @Override
        public Color getForeground(Object row) {
            Color ground = tree.getTree().getBackground();
            boolean old = shop.map(WorkingShop::workingOut).orElse(false);
            return old ? VerdictLook.faint(ground) : VerdictLook.color(AnswerTree.verdict(row), ground);
        }
    }

    private Optional<Object> selected() {
        return Optional.ofNullable(tree.getStructuredSelection().getFirstElement());
    }

    /** Opens the editor of what the selected answer points at. */
    private void go() {
        selected().ifPresent(row -> {
            if (row instanceof AnswerRow answer) {
                Finding finding = answer.finding();
                boolean there = shop.flatMap(open -> open.fileOf(finding.objectId())).isPresent();
                ShopEditors.open(getSite().getPage(), there ? finding.objectId() : finding.subject().ownerId());
            } else {
                tree.setExpandedState(row, !tree.getExpandedState(row));
            }
        });
    }

    private void explain() {
        Optional<Sheet> sheet = shop.flatMap(open -> selected().map(row -> sheet(open, row)));
        sheet.ifPresentOrElse(explained::show, () -> explained.say(shop.isPresent() ? Messages.Warnings_choose : Messages.Warnings_noShop));
        fixes.show(shop, selected().filter(AnswerRow.class::isInstance).map(row -> ((AnswerRow) row).finding()));
    }

    private static Sheet sheet(WorkingShop open, Object row) {
        return row instanceof AnswerRow answer ? new FindingSheet(open.catalogue(), ReaderUnits.current()).write(answer.finding())
                : new GroupSheet(ReaderUnits.current()).write(((AnswerGroup) row).title(), ((AnswerGroup) row).findings());
    }

    private void fill() {
        Optional<ShopAnswers> answers = shop.filter(open -> open.state() != WorkingShop.State.HELD_BACK).flatMap(WorkingShop::answers);
        rows.show(answers.map(all -> AnswerGroup.gather(all, shop.orElseThrow().catalogue(), gathering, wanted,
                WorstVerdicts.of(all, shop.orElseThrow().snapshot()), ReaderUnits.current()))
                .orElse(List.of()));
        String state = shop.map(StateWords::of).orElse("");
        String words = state.isEmpty() && shop.isPresent() && rows.groups().isEmpty() ? Messages.Warnings_none : state;
        line.setText(words);
        ((GridData) line.getLayoutData()).exclude = words.isEmpty();
        line.setVisible(!words.isEmpty());
        line.getParent().layout();
        tree.refresh();
        explain();
    }

    private void show(Optional<WorkingShop> shown) {
        shop.ifPresent(old -> old.removeListener(this));
        shop = shown;
        shown.ifPresent(open -> open.addListener(this));
        fill();
    }

    @Override
    public void opened(WorkingShop opened) {
        show(Optional.of(opened));
    }

    @Override
    public void closing(WorkingShop closing) {
        show(Optional.empty());
    }

    @Override
    public void answered() {
        fill();
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
        shop.ifPresent(open -> open.removeListener(this));
        super.dispose();
    }
}
