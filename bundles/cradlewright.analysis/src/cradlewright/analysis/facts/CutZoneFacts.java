package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A part of the shell that is to be cut.
 *
 * @param low the corner with the smallest coordinates
 * @param high the corner with the largest coordinates
 * @param planned whether the cut is planned
 * @param braceIds braces that must be fitted before
 */
public record CutZoneFacts(String id, String name, Optional<Vec3> low, Optional<Vec3> high, boolean planned, List<String> braceIds)
        implements Fact {

    /** Tells whether a place lies over or under the zone, seen from above. */
    public boolean covers(Vec3 p) {
        return low.isPresent() && high.isPresent() && p.x() >= low.get().x() && p.x() <= high.get().x() && p.y() >= low.get().y()
                && p.y() <= high.get().y();
    }
}
