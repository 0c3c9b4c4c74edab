package cradlewright.diagrams.shared;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;

/** What is selected in a diagram. */
public final class Picked {

    private Picked() {
    }

    /** Returns the selected parts of a type; the one selected last, to which others are put beside, is the last. */
    public static <P extends EditPart> List<P> parts(EditPartViewer viewer, Class<P> type) {
        List<P> parts = new ArrayList<>();
        for (Object part : viewer.getSelectedEditParts()) {
            if (type.isInstance(part)) {
                parts.add(type.cast(part));
            }
        }
        return parts;
    }
}
