package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A prop under an overhanging end.
 *
 * @param at where it touches, in the axes of the dolly
 * @param fitted whether it is in place
 * @param capacity in N
 * @param basis what the capacity is rated by
 * @param nodeId the node of the dolly that it is bolted to; it stands on the floor when empty
 */
public record PropFacts(String id, String name, Optional<Vec3> at, boolean fitted, Optional<Value> capacity,
        Optional<Basis> basis, Optional<String> nodeId) implements Fact {

    /** Returns this prop in place. */
    public PropFacts inPlace() {
        return new PropFacts(id, name, at, true, capacity, basis, nodeId);
    }
}
