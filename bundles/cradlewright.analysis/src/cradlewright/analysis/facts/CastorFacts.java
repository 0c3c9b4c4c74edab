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
}
