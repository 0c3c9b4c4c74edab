package cradlewright.ui.properties;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

/** The line that says what there is to say about what is being typed. */
public final class ReplyLine {

    private final CLabel line;

    /** Makes the line. */
    public ReplyLine(Composite parent) {
        line = new CLabel(parent, SWT.NONE);
    }

    /** Returns the line, to be laid out. */
    public Control control() {
        return line;
    }

    /** Says what a reply says; returns false, and leaves the line as it is, when that is nothing. */
    public boolean say(Reply reply) {
        if (!reply.isRefused() && reply.remark().isEmpty()) {
            return false;
        }
        show(reply.isRefused() ? reply.trouble() : reply.remark(),
                reply.isRefused() ? ISharedImages.IMG_OBJS_ERROR_TSK : ISharedImages.IMG_OBJS_INFO_TSK);
        return true;
    }

    /** Says something that holds for all that is shown; nothing clears the line. */
    public void tell(String words) {
        show(words, words.isEmpty() ? "" : ISharedImages.IMG_OBJS_INFO_TSK);
    }

    /** Says something plain, without a picture. */
    public void tellPlainly(String words) {
        show(words, "");
    }

    private void show(String words, String picture) {
        line.setText(escape(words));
        line.setToolTipText(words);
        line.setImage(picture.isEmpty() ? null : PlatformUI.getWorkbench().getSharedImages().getImage(picture));
    }

    /** Returns words in which no letter is taken for a key. */
    static String escape(String words) {
        return words.replace("&", "&&");
    }
}
