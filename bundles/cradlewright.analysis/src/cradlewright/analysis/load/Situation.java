package cradlewright.analysis.load;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * Something that happens to a car as it stands.
 *
 * @param id stable within a visit
 * @param about what people would point at: the work point or castor; empty when it is the whole
 * @param words what happens, as people say it
 * @param kind what sort of thing
 * @param weightFactor multiplies every weight, 1.4 while rolling over a joint
 * @param push a force that comes on top
 * @param loweredCastor the castor that stands in a hole
 * @param lowered how deep the hole is, m
 */
public record Situation(String id, Optional<String> about, String words, Kind kind, double weightFactor, Optional<Push> push,
        Optional<String> loweredCastor, double lowered) {

    /** What sort of thing happens. */
    public enum Kind {
        AT_REST, LEAN, BAR, STAND_ON, HOLE, JOINT
    }

    /**
     * A force on the carried piece.
     *
     * @param at where, in the axes of the carrier
     * @param force in N
     */
    public record Push(Vec3 at, Vec3 force) {
    }

    /** Tells whether somebody pushes sideways, so that friction must hold it. */
    boolean pushedSideways() {
        return push.map(p -> Math.hypot(p.force().x(), p.force().y()) > 0).orElse(false);
    }

    /** Nothing happens. */
    public static Situation atRest() {
        return new Situation("rest", Optional.empty(), "at rest", Kind.AT_REST, 1, Optional.empty(), Optional.empty(), 0);
    }
}
