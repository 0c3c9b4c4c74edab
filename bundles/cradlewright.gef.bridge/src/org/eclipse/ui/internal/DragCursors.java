package org.eclipse.ui.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;

/** The cursors while the palette of a diagram is dragged to another edge. */
public final class DragCursors {

    /** The palette cannot be put here. The numbers are those that the library was compiled with. */
    public static final int INVALID = 0;

    /** The palette would go to the left edge. */
    public static final int LEFT = 1;

    /** The palette would go to the right edge. */
    public static final int RIGHT = 2;

    private DragCursors() {
    }

    /** Returns a cursor of the system, which nobody has to dispose of. */
    public static Cursor getCursor(int code) {
        return Display.getCurrent().getSystemCursor(code == INVALID ? SWT.CURSOR_NO : SWT.CURSOR_SIZEWE);
    }
}
