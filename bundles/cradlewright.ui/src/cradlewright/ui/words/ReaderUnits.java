package cradlewright.ui.words;

import cradlewright.report.UnitSystem;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

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

    /** Does something each time other units were chosen, on the thread of the display, until a control is disposed of. */
    public static void whenChanged(Control shown, Runnable what) {
        IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(NODE);
        IPreferenceChangeListener listener = event -> {
            if (KEY.equals(event.getKey())) {
                shown.getDisplay().asyncExec(() -> {
                    if (!shown.isDisposed()) {
                        what.run();
                    }
                });
            }
        };
        preferences.addPreferenceChangeListener(listener);
        shown.addListener(SWT.Dispose, event -> preferences.removePreferenceChangeListener(listener));
    }
}
