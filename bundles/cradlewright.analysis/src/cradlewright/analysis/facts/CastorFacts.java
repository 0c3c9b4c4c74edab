package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * A castor of a dolly.
 *
 * @param nodeId where it is bolted on
 * @param typeId castor type in stock
 * @param swivel whether it turns
 * @param brake what its brake holds
 */
public record CastorFacts(String id, String name, Optional<String> nodeId, Optional<String> typeId, boolean swivel, Brake brake)
        implements Fact {

    /** What a brake holds. */
    public enum Brake {
        NONE, WHEEL, WHEEL_AND_SWIVEL
    }


    /** Returns this castor of another type in stock. */
    public CastorFacts withType(String other) {
        return new CastorFacts(id, name, nodeId, Optional.of(other), swivel, brake);
    }

    /** Returns this castor with another brake. */
    public CastorFacts withBrake(Brake other) {
        return new CastorFacts(id, name, nodeId, typeId, swivel, other);
    }
}
