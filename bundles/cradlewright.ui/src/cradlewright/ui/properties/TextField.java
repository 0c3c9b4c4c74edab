package cradlewright.ui.properties;

import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** A field for text that is judged while somebody types and stored by Enter or on leaving it; Escape brings back what was there. */
final class TextField implements Field {

    /** Room for the mark of a mistake, in pixels. */
    static final int MARK = 9;

    /**
     * What stands in the field and becomes of it.
     *
     * @param shown what is known now
     * @param hint what stands there in pale letters when nothing does
     * @param about what it is, for those who rest the mouse on it
     * @param judge judges what is typed
     */
    record Content(Supplier<String> shown, Supplier<String> hint, Supplier<String> about, Function<String, Reply> judge) {
    }

    private final Text text;
    private final Content content;
    private final Desk desk;
    private final ControlDecoration mark;
    private boolean filling;
    private boolean typed;

    TextField(Composite parent, String name, Content content, Desk desk) {
        this.content = content;
        this.desk = desk;
        text = new Text(parent, SWT.BORDER | SWT.SINGLE);
        Field.call(text, name);
        mark = new ControlDecoration(text, SWT.TOP | SWT.LEFT);
        mark.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR).getImage());
        mark.hide();
        text.addListener(SWT.Modify, event -> modified());
        text.addListener(SWT.DefaultSelection, event -> store());
        text.addListener(SWT.FocusOut, event -> store());
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE && typed) {
                event.doit = false;
                typed = false;
                refresh();
                desk.say(Reply.nothing());
            }
        });
        refresh();
    }

    /** Lets the field be as wide as it gets, or of a fixed number of letters. */
    TextField wide(int letters, boolean grow, int columns) {
        GridData data = new GridData(grow ? SWT.FILL : SWT.BEGINNING, SWT.CENTER, grow, false, columns, 1);
        data.horizontalIndent = MARK;
        data.widthHint = Math.max(1, (int) (letters * averageLetter()));
        text.setLayoutData(data);
        return this;
    }

    private double averageLetter() {
        GC gc = new GC(text);
        try {
            return gc.getFontMetrics().getAverageCharacterWidth();
        } finally {
            gc.dispose();
        }
    }

    void setEditable(boolean editable) {
        text.setEditable(editable);
    }

    private void modified() {
        if (!filling) {
            typed = true;
            judge();
        }
    }

    private Reply judge() {
        Reply reply = content.judge().apply(text.getText());
        if (reply.isRefused()) {
            mark.setDescriptionText(reply.trouble());
            mark.show();
        } else {
            mark.hide();
        }
        desk.say(reply);
        return reply;
    }

    private void store() {
        if (!typed) {
            return;
        }
        Reply reply = judge();
        if (!reply.isRefused()) {
            typed = false;
            reply.change().ifPresentOrElse(desk::perform, this::refresh);
            desk.say(new Reply(reply.change(), "", reply.change().isPresent() ? reply.remark() : ""));
        }
    }

    @Override
    public void refresh() {
        if (typed || text.isDisposed()) {
            return;
        }
        filling = true;
        mark.hide();
        String shown = content.shown().get();
        if (!shown.equals(text.getText())) {
            text.setText(shown);
        }
        text.setMessage(content.hint().get());
        text.setToolTipText(content.about().get());
        filling = false;
    }
}
