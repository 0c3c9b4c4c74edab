package cradlewright.analysis.dolly;

import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A dolly as a body: its frame when its members are known, else rigid; its own mass and balance point.
 *
 * @param frame the frame, assembled and factorised as a free body; nothing for a dolly without members or one that cannot be assembled
 * @param mass own mass in kg, castors and joints included as far as known
 * @param centre own balance point in the axes of the dolly
 * @param castorMass mass in kg that is not part of the frame's own weight
 * @param missing what the files leave open, each with how to mend it
 * @param loose members that hang loose or form a mechanism
 * @param rocking the end that turns about a pin, if there is one
 */
public record DollyBody(Optional<FrameStructure> frame, double mass, Optional<Vec3> centre, double castorMass, List<String> missing,
        List<String> loose, Optional<RockingEnd> rocking) {

    /** Copies the lists. */
    public DollyBody {
        missing = List.copyOf(missing);
        loose = List.copyOf(loose);
    }
}
