package cradlewright.ui;

import org.eclipse.osgi.util.NLS;

/** The words of the window. */
public final class Messages extends NLS {

    public static String Checking_broken;
    public static String Checking_done;
    public static String Checking_filesNotInOrder;
    public static String Checking_name;
    public static String Open_noProject;
    public static String Open_noShop;
    public static String Question_name;
    public static String Start_noFolder;
    public static String Start_second;
    public static String Start_title;

    static {
        NLS.initializeMessages("cradlewright.ui.messages", Messages.class);
    }

    private Messages() {
    }
}
