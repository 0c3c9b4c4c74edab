package cradlewright.analysis.facts;

import java.util.Optional;
import java.util.OptionalInt;

/** A joint of a dolly: bolted or welded. */
public sealed interface JointFacts extends Fact {

    /** A group of bolts in rows and columns; lengths in m. */
    record Bolted(String id, String name, Optional<String> boltId, OptionalInt rows, OptionalInt columns, Optional<Value> pitch,
            Optional<Value> gauge, Optional<Value> endDistance, Optional<Value> edgeDistance, Optional<Value> plate,
            Optional<String> steelId, Holes holes) implements JointFacts {
    }

    /**
     * Parallel fillet welds along a member's height; lengths in m. Runs of unequal length or spacing stand here as equal ones that
     * carry less: each as long as the shortest, as far from the next as the two closest.
     */
    record Welded(String id, String name, Optional<Value> throat, Optional<Value> runLength, Optional<Value> runSpacing, int runs,
            Optional<String> steelId) implements JointFacts {
    }

    /** Shape of the bolt holes. */
    enum Holes {
        NORMAL, OVERSIZE, SLOT
    }
}
