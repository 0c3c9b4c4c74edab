package cradlewright.ui.look;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names for controls that have no label of their own, for those who have the window read out to them. */
public final class Spoken {

    private Spoken() {
    }

    /** Gives a control the name that is read out. */
    public static void name(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }
        });
    }
}
