package cradlewright.ui.recovery;

import org.eclipse.osgi.util.NLS;

/** The words about unsaved edits. */
public final class Messages extends NLS {

    public static String Copy_job;
    public static String Copy_refused;
    public static String Differs_added;
    public static String Differs_changed;
    public static String Differs_form;
    public static String Differs_removed;
    public static String Left_allBroken;
    public static String Left_broken;
    public static String Left_differs;
    public static String Left_file;
    public static String Left_keepBoth;
    public static String Left_later;
    public static String Left_more;
    public static String Left_nothing;
    public static String Left_question;
    public static String Left_state;
    public static String Left_table;
    public static String Left_take;
    public static String Left_throw;
    public static String Left_title;
    public static String Left_when;
    public static String Left_wholeFile;
    public static String Left_why;
    public static String Row_fileNotInOrder;
    public static String Row_gone;
    public static String Row_notUnderstood;
    public static String Row_otherThing;
    public static String State_beside;
    public static String State_changed;
    public static String State_fits;
    public static String State_new;
    public static String TakeUp_beside;
    public static String TakeUp_label;
    public static String TakeUp_notWritten;
    public static String TakeUp_refused;

    static {
        NLS.initializeMessages("cradlewright.ui.recovery.messages", Messages.class);
    }

    private Messages() {
    }
}
