package cradlewright.ui.parts;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Asks before something comes off in a stage in which the car stands now; nothing is changed before somebody says so. */
final class OffBar {

    private final Composite bar;
    private final Label words;
    private final Button take;
    private Runnable wanted = () -> { };

    OffBar(Composite parent) {
        bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
        words = new Label(bar, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(100, SWT.DEFAULT).applyTo(words);
        take = new Button(bar, SWT.PUSH);
        take.setText(Messages.Bar_take);
        take.addListener(SWT.Selection, event -> {
            Runnable body = wanted;
            hide();
            body.run();
        });
        Button leave = new Button(bar, SWT.PUSH);
        leave.setText(Messages.Bar_leave);
        leave.addListener(SWT.Selection, event -> hide());
        bar.setVisible(false);
    }

    /** Asks; the body runs when somebody says that it comes off. */
    void ask(String question, Runnable body) {
        wanted = body;
        words.setText(question.replace("&", "&&"));
        show(true);
    }

    /** Forgets what was asked. */
    void hide() {
        wanted = () -> { };
        show(false);
    }

    private void show(boolean shown) {
        ((GridData) bar.getLayoutData()).exclude = !shown;
        bar.setVisible(shown);
        bar.getParent().layout(true, true);
    }
}
