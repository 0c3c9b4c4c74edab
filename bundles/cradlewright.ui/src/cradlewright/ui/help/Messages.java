package cradlewright.ui.help;

import org.eclipse.osgi.util.NLS;

/** The words of the help that do not stand on its pages. */
public final class Messages extends NLS {

    public static String Link_notNow;
    public static String Page_firstCar;
    public static String Page_firstDolly;
    public static String Page_here;
    public static String Page_keys;
    public static String Page_libraries;
    public static String Page_which;

    static {
        NLS.initializeMessages("cradlewright.ui.help.messages", Messages.class);
    }

    private Messages() {
    }
}
