package cradlewright.ui.preferences;

import org.eclipse.osgi.util.NLS;

/** Words of the preferences. */
final class Messages extends NLS {

    public static String Reader_description;
    public static String Reader_inch;
    public static String Reader_metric;
    public static String Reader_signer;
    public static String Reader_units;

    static {
        NLS.initializeMessages("cradlewright.ui.preferences.messages", Messages.class);
    }

    private Messages() {
    }
}
