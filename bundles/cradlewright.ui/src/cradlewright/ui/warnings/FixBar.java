package cradlewright.ui.warnings;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.report.FindingWords;
import cradlewright.ui.edit.Edits;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** What can be entered at once about the selected answer, one button each; gone while nothing can. */
final class FixBar {

    private final Composite bar;
    private Optional<Question> running = Optional.empty();

    FixBar(Composite parent) {
        bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 4).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
        bar.setVisible(false);
    }

    /** Asks what can be entered about an answer. While answers are old nothing can. */
    void show(Optional<WorkingShop> shop, Optional<Finding> finding) {
        running.ifPresent(Question::giveUp);
        fill(List.of(), Optional.empty());
        running = shop.filter(open -> !open.workingOut()).flatMap(open -> finding.map(about -> {
            ShopSnapshot snapshot = open.snapshot();
            return open.askChecks((checks, progress) -> Fix.of(about, snapshot, checks, progress), fixes -> fill(fixes.stream()
                    .filter(fix -> fix.canBeEntered(open.stack(), open.folder(), open.snapshot())).toList(), finding));
        }));
    }

    private void fill(List<Fix> fixes, Optional<Finding> finding) {
        if (bar.isDisposed()) {
            return;
        }
        for (Control child : bar.getChildren()) {
            child.dispose();
        }
        for (Fix fix : fixes) {
            String words = FindingWords.remedy(finding.orElseThrow(), fix.remedy());
            Button button = new Button(bar, SWT.PUSH);
            button.setText(Messages.Fix_enter);
            button.setToolTipText(Messages.Fix_hint);
            button.addListener(SWT.Selection, event -> enter(fix));
            Label label = new Label(bar, SWT.WRAP);
            label.setText(words);
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(label);
        }
        ((GridData) bar.getLayoutData()).exclude = fixes.isEmpty();
        bar.setVisible(!fixes.isEmpty());
        bar.getParent().layout(true, true);
    }

    private void enter(Fix fix) {
        WorkingShop open = WorkingShop.current().orElseThrow();
        try {
            fix.toChange(open.folder(), open.snapshot()).ifPresentOrElse(Edits::run,
                    () -> MessageDialog.openInformation(bar.getShell(), Messages.Fix_title, Messages.Fix_stale));
        } catch (NotEntered e) {
            MessageDialog.openError(bar.getShell(), Messages.Fix_title, e.getMessage());
        }
    }
}
