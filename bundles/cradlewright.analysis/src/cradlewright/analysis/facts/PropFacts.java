package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A prop under an overhanging end.
 *
 * @param at where it touches, in the axes of the dolly
 * @param fitted whether it is in place
 * @param capacity in N
 * @param nodeId the node of the dolly it stands on; on the floor when empty
 */
public record PropFacts(String id, String name, Optional<Vec3> at, boolean fitted, Optional<Value> capacity, Optional<String> nodeId)
        implements Fact {
}
