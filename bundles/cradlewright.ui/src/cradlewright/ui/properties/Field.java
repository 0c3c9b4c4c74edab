package cradlewright.ui.properties;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Widgets of a row. */
interface Field {

    /** Shows what is known now; something half typed stays. */
    void refresh();

    /** Gives a control the name by which screen readers call it. */
    static void call(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }
        });
    }
}
