package cradlewright.ui.words;

import cradlewright.report.UnitSystem;
import org.eclipse.core.runtime.Platform;

/** In which units the person at this window reads numbers. */
public final class ReaderUnits {

    /** Where it is kept. */
    public static final String NODE = "cradlewright.ui";

    /** Its key there; the value is the name of a {@link UnitSystem}. */
    public static final String KEY = "units";

    private ReaderUnits() {
    }

    /** Returns the units; metric as long as nobody chose. */
    public static UnitSystem current() {
        String chosen = Platform.getPreferencesService().getString(NODE, KEY, UnitSystem.METRIC.name(), null);
        return UnitSystem.INCH.name().equals(chosen) ? UnitSystem.INCH : UnitSystem.METRIC;
    }
}
