package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A fixture on a dolly that takes one body mount.
 *
 * @param nodeId the node it stands on
 * @param on where along a member it stands instead, if it stands on one
 * @param height of its top above the node, in m
 * @param offset of its top from the node besides the height, in m
 * @param padId pad type in stock
 * @param hold how it holds
 * @param boltId bolt type in stock
 * @param boltCount number of bolts
 * @param capacity in N
 * @param basis what the capacity is rated by
 * @param stiffness along its push, in N/m
 */
public record FixtureFacts(String id, String name, Optional<String> nodeId, Optional<Station> on, Optional<Value> height, Vec3 offset,
        Optional<String> padId, Hold hold, Optional<String> boltId, OptionalInt boltCount, Optional<Value> capacity,
        Optional<Basis> basis, Optional<Value> stiffness) implements Fact {

    /**
     * A place along a member.
     *
     * @param memberId the member
     * @param distance from its start, in m; nothing when nobody measured it
     */
    public record Station(String memberId, Optional<Value> distance) {
    }
}
