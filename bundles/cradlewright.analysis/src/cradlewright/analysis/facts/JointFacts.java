package cradlewright.analysis.facts;

import java.util.Optional;

/** A joint of a dolly: bolted or welded. */
public sealed interface JointFacts extends Fact {

    /** A group of bolts in rows and columns; lengths in m. */
    record Bolted(String id, String name, Optional<String> boltId, int rows, int columns, Optional<Value> pitch, Optional<Value> gauge,
            Optional<Value> endDistance, Optional<Value> edgeDistance, Optional<Value> plate, Optional<String> steelId, Holes holes)
            implements JointFacts {
    }

    /** Fillet welds along both sides of a member's height; lengths in m. */
    record Welded(String id, String name, Optional<Value> throat, Optional<Value> runLength, Optional<Value> runSpacing, int runs,
            Optional<String> steelId) implements JointFacts {
    }

    /** Shape of the bolt holes. */
    enum Holes {
        NORMAL, OVERSIZE, SLOT
    }
}
