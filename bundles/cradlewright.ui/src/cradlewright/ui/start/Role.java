package cradlewright.ui.start;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** For whom the start page is laid out. */
enum Role {
    /** Who keeps the cars moving: what waits, which places are taken, which days come. */
    MANAGER,
    /** Who works on the cars: what stops today and what to do first. */
    TECHNICIAN;

    private static final String KEY = "start.role";

    /** Returns the one chosen last; the technician at first. */
    static Role chosen() {
        return MANAGER.name().equals(node().get(KEY, "")) ? MANAGER : TECHNICIAN;
    }

    /** Keeps this one for the next time; the platform writes it when the window closes. */
    void choose() {
        node().put(KEY, name());
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode("cradlewright.ui");
    }
}
