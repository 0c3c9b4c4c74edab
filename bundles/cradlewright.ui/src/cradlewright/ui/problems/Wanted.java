package cradlewright.ui.problems;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;

/**
 * A marker that there ought to be; two that are equal are one.
 *
 * @param resource where it stands
 * @param severity one of those of {@link IMarker}
 * @param message what people read
 * @param location car, dolly or gear that it is about, or the place in the file
 * @param line line in the file; 0 for none
 * @param objectId the object to select; empty for none
 * @param check the check that says so; empty for none
 */
record Wanted(IResource resource, int severity, String message, String location, int line, String objectId, String check) {

    /** The object of a marker, by its id. */
    static final String OBJECT = "objectId";

    /** The check of a marker, by its id. */
    static final String CHECK = "check";

    Map<String, Object> attributes() {
        Map<String, Object> attributes = new HashMap<>(Map.of(IMarker.SEVERITY, severity, IMarker.MESSAGE, message,
                IMarker.LOCATION, location, OBJECT, objectId, CHECK, check));
        if (line > 0) {
            attributes.put(IMarker.LINE_NUMBER, line);
        }
        return attributes;
    }
}
