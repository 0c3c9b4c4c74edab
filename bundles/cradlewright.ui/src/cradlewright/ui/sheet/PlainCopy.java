package cradlewright.ui.sheet;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;

/** Puts plain text on the clipboard. */
public final class PlainCopy {

    private PlainCopy() {
    }

    /** Puts a text there; an empty one leaves the clipboard as it is. */
    public static void put(String text, Display display) {
        if (text.isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(display);
        try {
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
    }
}
