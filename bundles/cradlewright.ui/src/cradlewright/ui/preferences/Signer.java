package cradlewright.ui.preferences;

import cradlewright.ui.words.ReaderUnits;
import org.eclipse.core.runtime.Platform;

/** Who signs at this window. */
public final class Signer {

    /** Its key in the node of {@link ReaderUnits#NODE}. */
    public static final String KEY = "signer";

    private Signer() {
    }

    /** Returns the name that stands under signatures and readings; empty as long as nobody wrote one. */
    public static String name() {
        return Platform.getPreferencesService().getString(ReaderUnits.NODE, KEY, "", null).strip();
    }
}
