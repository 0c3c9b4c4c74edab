package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * A screw foot beside a castor.
 *
 * @param nodeId where it is
 * @param down whether it carries
 */
public record FootFacts(String id, String name, Optional<String> nodeId, boolean down) implements Fact {
}
