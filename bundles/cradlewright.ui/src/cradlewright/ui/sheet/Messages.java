package cradlewright.ui.sheet;

import org.eclipse.osgi.util.NLS;

/** Words around a sheet. */
final class Messages extends NLS {

    public static String Sheet_copyAll;
    public static String Sheet_copySelected;
    public static String Sheet_selectAll;

    static {
        NLS.initializeMessages("cradlewright.ui.sheet.messages", Messages.class);
    }

    private Messages() {
    }
}
