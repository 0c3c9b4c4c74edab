package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * People, boxes, tools or braces that are in the shell for a while.
 *
 * @param kind which of them
 * @param mass in kg
 * @param position where
 */
public record TemporaryLoadFacts(String id, String name, Kind kind, Optional<Value> mass, Optional<Spot> position) implements Fact {

    /** What it is. */
    public enum Kind {
        PEOPLE, BOX, BRACE, TOOLS
    }
}
