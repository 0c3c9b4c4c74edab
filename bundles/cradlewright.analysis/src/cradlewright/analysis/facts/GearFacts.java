package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Lifting gear and what else carries a piece; masses in kg, lengths in m, angles in rad. */
public sealed interface GearFacts extends Fact {

    /** Returns what its tag says. */
    Examination examination();

    /** Returns the plate rating in kg. */
    Optional<Value> ratedLoad();

    /**
     * A two-post lift.
     *
     * @param frontRearLow smallest front:rear share that its plate allows
     * @param frontRearHigh largest front:rear share that its plate allows
     */
    record Lift(String id, String name, Examination examination, Optional<Value> ratedLoad, Optional<Double> frontRearLow,
            Optional<Double> frontRearHigh, List<ArmFacts> arms) implements GearFacts {
    }

    /**
     * An arm of a lift.
     *
     * @param pivot in the axes of the lift
     * @param ratedLoad in kg
     * @param stiffness of the arm at its pad in N/m
     * @param padStiffness of its pad in N/m
     */
    record ArmFacts(String id, String name, Optional<Vec3> pivot, Optional<Value> reachMin, Optional<Value> reachMax,
            Optional<Value> azimuthFrom, Optional<Value> azimuthTo, Optional<Value> ratedLoad, Optional<Value> stiffness,
            Optional<Value> padStiffness) implements Fact {
    }

    /**
     * A hoist.
     *
     * @param holes where its hook may go
     */
    record Hoist(String id, String name, Examination examination, Optional<Value> ratedLoad, List<HoleFacts> holes)
            implements GearFacts {
    }

    /**
     * Where the hook of a hoist may go.
     *
     * @param at in the axes of the hoist
     * @param ratedLoad what the hoist may lift there, in kg
     */
    record HoleFacts(String id, String name, Optional<Vec3> at, Optional<Value> ratedLoad) implements Fact {
    }

    /**
     * A strap.
     *
     * @param ratedLoad working load limit in kg, straight pull
     * @param length in m
     * @param mode how it is slung
     * @param stiffness in N/m
     * @param legs how many legs hang from its one ring; nothing when nobody said, as of a strap that is one by itself
     */
    record Strap(String id, String name, Examination examination, Optional<Value> ratedLoad, Optional<Value> length, Mode mode,
            Optional<Value> stiffness, OptionalInt legs) implements GearFacts {

        /** Returns this strap slung in another way. */
        public Strap slung(Mode other) {
            return new Strap(id, name, examination, ratedLoad, length, other, stiffness, legs);
        }
    }

    /** How a strap is slung. */
    enum Mode {
        STRAIGHT, CHOKED, BASKET
    }

    /**
     * An axle stand.
     *
     * @param perPair whether the rating is for two of them; nothing when nobody said
     * @param lowest height at the lowest pin step
     * @param step height of one pin step
     * @param steps number of steps
     */
    record Stand(String id, String name, Examination examination, Optional<Value> ratedLoad, Optional<Boolean> perPair,
            Optional<Value> lowest, Optional<Value> step, OptionalInt steps) implements GearFacts {
    }

    /** A trestle. */
    record Trestle(String id, String name, Examination examination, Optional<Value> ratedLoad) implements GearFacts {
    }

    /** A trailer. */
    record Trailer(String id, String name, Examination examination, Optional<Value> ratedLoad) implements GearFacts {
    }
}
