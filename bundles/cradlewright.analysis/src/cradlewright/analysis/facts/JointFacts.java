package cradlewright.analysis.facts;

import java.util.Optional;
import java.util.OptionalInt;

/** A joint of a dolly: bolted or welded. */
public sealed interface JointFacts extends Fact {

    /** A group of bolts in rows and columns; lengths in m. */
    record Bolted(String id, String name, Optional<String> boltId, OptionalInt rows, OptionalInt columns, Optional<Value> pitch,
            Optional<Value> gauge, Optional<Value> endDistance, Optional<Value> edgeDistance, Optional<Value> plate,
            Optional<String> steelId, Holes holes) implements JointFacts {

        /** Returns this joint with another bolt in stock. */
        public Bolted withBolt(String other) {
            return new Bolted(id, name, Optional.of(other), rows, columns, pitch, gauge, endDistance, edgeDistance, plate, steelId, holes);
        }
    }

    /**
     * Parallel fillet welds along a member's height; lengths in m. Runs of unequal length or spacing stand here as equal ones that
     * carry less: each as long as the shortest, as far from the next as the two closest.
     */
    record Welded(String id, String name, Optional<Value> throat, Optional<Value> runLength, Optional<Value> runSpacing, int runs,
            Optional<String> steelId) implements JointFacts {

        /** Returns this joint with welds of another throat. */
        public Welded withThroat(Value other) {
            return new Welded(id, name, Optional.of(other), runLength, runSpacing, runs, steelId);
        }
    }

    /** Shape of the bolt holes. */
    enum Holes {
        NORMAL, OVERSIZE, SLOT
    }
}
