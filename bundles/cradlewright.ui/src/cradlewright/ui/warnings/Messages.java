package cradlewright.ui.warnings;

import org.eclipse.osgi.util.NLS;

/** Words of the view of all answers. */
final class Messages extends NLS {

    public static String Fix_enter;
    public static String Fix_hint;
    public static String Fix_label;
    public static String Fix_notReached;
    public static String Fix_stale;
    public static String Fix_title;
    public static String Warnings_answer;
    public static String Warnings_answers;
    public static String Warnings_by;
    public static String Warnings_byCheck;
    public static String Warnings_byThing;
    public static String Warnings_choose;
    public static String Warnings_copy;
    public static String Warnings_copyAll;
    public static String Warnings_days;
    public static String Warnings_explained;
    public static String Warnings_filter;
    public static String Warnings_noShop;
    public static String Warnings_none;
    public static String Warnings_numbers;
    public static String Warnings_planned;
    public static String Warnings_what;

    static {
        NLS.initializeMessages("cradlewright.ui.warnings.messages", Messages.class);
    }

    private Messages() {
    }
}
