package cradlewright.ui.ask;

import cradlewright.report.sheet.Sheet;
import cradlewright.ui.sheet.SheetPane;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** One question with its field above and its answer below. While an answer is worked out the one before stays, with a word about that. */
abstract class AskPage {

    private final Composite page;
    private final Composite input;
    private final Composite waiting;
    private final SheetPane pane;
    private final String invitation;
    private Optional<WorkingShop> shop = Optional.empty();
    private Optional<Question> running = Optional.empty();

    /**
     * Makes the page.
     *
     * @param columns how many controls stand side by side above the answer
     * @param invitation what is said before anything was asked
     */
    AskPage(Composite parent, int columns, String invitation) {
        this.invitation = invitation;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
        input = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).margins(6, 4).applyTo(input);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(input);
        waiting = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 0).applyTo(waiting);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(waiting);
        Label words = new Label(waiting, SWT.NONE);
        words.setText(Messages.Ask_working);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(words);
        Button stop = new Button(waiting, SWT.PUSH);
        stop.setText(Messages.Ask_stop);
        stop.addListener(SWT.Selection, event -> stop());
        pane = new SheetPane(page, Messages.Ask_answer);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(pane.control());
        pane.say(invitation);
    }

    /** Returns where the controls of the question go. */
    final Composite input() {
        return input;
    }

    final Composite control() {
        return page;
    }

    final SheetPane pane() {
        return pane;
    }

    final Optional<WorkingShop> shop() {
        return shop;
    }

    /** Takes the shop that is open now, or none; a question about another one is forgotten. */
    void show(Optional<WorkingShop> shown) {
        giveUp();
        due(false);
        shop = shown;
        forget();
        pane.say(shown.isPresent() ? invitation : Messages.Ask_noShop);
    }

    /** Forgets what was asked last. */
    abstract void forget();

    /** Begins to answer what was asked last; nothing when that is answered at once or nothing was asked. */
    abstract Optional<Question> begin(WorkingShop open);

    /** Puts the cursor where the question is entered. */
    abstract void focus();

    /** Asks what was asked last, on the shop as it is now. */
    final void ask() {
        giveUp();
        running = shop.flatMap(this::begin);
        due(running.isPresent());
    }

    /** Gives up what is being worked out. */
    final void giveUp() {
        running.ifPresent(Question::giveUp);
        running = Optional.empty();
    }

    private void stop() {
        giveUp();
        due(false);
        forget();
        pane.say(Messages.Ask_stopped);
    }

    private void due(boolean due) {
        ((GridData) waiting.getLayoutData()).exclude = !due;
        waiting.setVisible(due);
        page.layout();
    }

    /** Returns whoever shows an answer as a sheet. */
    final <T> Answer<T> showing(Function<T, Sheet> sheet) {
        return new Answer<>() {
            @Override
            public void is(T value) {
                running = Optional.empty();
                due(false);
                pane.show(sheet.apply(value));
            }

            @Override
            public void failed(RuntimeException why) {
                Answer.super.failed(why);
                running = Optional.empty();
                due(false);
                pane.say(NLS.bind(Messages.Ask_brokeOff, why));
            }
        };
    }
}
