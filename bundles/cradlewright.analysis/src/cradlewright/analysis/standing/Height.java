package cradlewright.analysis.standing;

import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A height with what it is uncertain by; sums and differences join independent errors by the root of the sum of their squares
 * (JCGM 100, 5.1.2; from memory).
 *
 * @param si in m
 * @param variance squared standard uncertainty, in m2
 */
record Height(double si, double variance) {

    static final Height NONE = exact(0);

    /** Returns a height of which nobody said what it is off by. */
    static Height exact(double si) {
        return new Height(si, 0);
    }

    static Height of(Value value) {
        return new Height(value.si(), value.u() * value.u());
    }

    /** Returns the height of a stack; nothing when a thickness or a count is missing. */
    static Optional<Height> of(ShimStackFacts stack) {
        return stack.height().map(height -> new Height(height, stack.heightVariance()));
    }

    /** Returns the height of a point whose place was given with that doubt, wherever the carrier puts it. */
    static Height of(Vec3 at, Optional<Spot> given) {
        return new Height(at.z(), given.filter(Spot::heightDoubted).map(spot -> spot.u() * spot.u()).orElse(0.0));
    }

    Height minus(Height other) {
        return new Height(si - other.si, variance + other.variance);
    }

    Height times(double factor) {
        return new Height(si * factor, variance * factor * factor);
    }

    double u() {
        return Math.sqrt(variance);
    }
}
