package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A brace that keeps an opening of the shell in shape.
 *
 * @param from one end
 * @param to the other end
 * @param fitted whether it is in place
 */
public record BraceFacts(String id, String name, Optional<Vec3> from, Optional<Vec3> to, boolean fitted) implements Fact {

    /** Returns this brace in place. */
    public BraceFacts inPlace() {
        return new BraceFacts(id, name, from, to, true);
    }
}
