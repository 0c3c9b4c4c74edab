package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A place where people lean, pull on a bar or stand.
 *
 * @param position where
 * @param direction of the force, of length one
 * @param kind what is done there; nothing when nobody said
 */
public record WorkPointFacts(String id, String name, Optional<Spot> position, Optional<Vec3> direction,
        Optional<Kind> kind) implements Fact {

    /** What is done at a work point. */
    public enum Kind {
        LEAN, BAR, STAND_ON
    }
}
