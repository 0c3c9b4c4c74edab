package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * A screw foot beside a castor.
 *
 * @param nodeId where it is
 * @param down whether it carries
 * @param stiffness in N/m
 */
public record FootFacts(String id, String name, Optional<String> nodeId, boolean down, Optional<Value> stiffness) implements Fact {

    /** Returns this foot screwed down. */
    public FootFacts lowered() {
        return new FootFacts(id, name, nodeId, true, stiffness);
    }
}
