package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.MemberLoad;
import cradlewright.analysis.load.Situation;
import cradlewright.mechanics.frame.StationForces;
import cradlewright.mechanics.steel.MemberForces;
import cradlewright.mechanics.steel.Utilisation;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A member of a dolly with what it carries in every situation in which the car stands.
 *
 * @param facts the member
 * @param length between its ends, m
 * @param upright whether it stands rather than lies
 * @param shape its section, nothing when a measure is missing
 * @param steel its steel, nothing when nobody said
 * @param taken what it carries, under factored loads
 */
public record LoadedMember(MemberFacts facts, double length, boolean upright, Optional<SectionShape> shape,
        Optional<StockFacts.Steel> steel,
        List<Taken> taken) {

    /**
     * What the member carries in one situation.
     *
     * @param situation what happens
     * @param load what it carries
     * @param inLine what the members in line with it carry, in their order, itself among them
     */
    public record Taken(Situation situation, MemberLoad load, List<MemberLoad> inLine) {

        /** Copies the list; refuses a line that the member is not in. */
        public Taken {
            inLine = List.copyOf(inLine);
            if (!inLine.contains(load)) {
                throw new IllegalArgumentException("the line of " + load.memberId() + " does not hold it");
            }
        }

        /** Makes the load of a member that nothing runs on from. */
        Taken(Situation situation, MemberLoad load) {
            this(situation, load, List.of(load));
        }

        /** Returns the forces at its cuts when it is of that section: those of {@link #forces}, the torque split where it warps. */
        List<MemberForces> forces(SectionShape shape) {
            return shape.properties().torsion().warps()
                    ? TwistedForces.of(inLine, inLine.indexOf(load), shape.properties().torsion()) : forces();
        }

        /**
         * Returns the forces at the critical cuts for the rules of steel. Frame and steel share axes and signs: tension above zero,
         * a moment about y above zero pulls the upper side, one about z presses the side of y.
         */
        List<MemberForces> forces() {
            return load.stations().stream().map(StationForces::forces).map(TwistedForces::plain).toList();
        }
    }

    /** How far something of the member is used, and when. */
    record Used(Utilisation use, Situation situation) {
    }

    /** Copies the list. */
    public LoadedMember {
        taken = List.copyOf(taken);
    }

    /** Tells whether it is of timber. */
    boolean timber() {
        return shape.map(SectionShape::timber).orElse(false);
    }

    /** Returns the low end of the yield strength, Pa. */
    Optional<Double> yield() {
        return steel.flatMap(StockFacts.Steel::fy).map(Value::low).filter(fy -> fy > 0);
    }

    /** Returns the length that is not held sideways: as stated, else from end to end, m. */
    double unheld() {
        return facts.unbraced().map(Value::high).orElse(length);
    }

    /** Returns the largest use over all situations; of several equal ones the first. */
    Optional<Used> worst(Function<Taken, ? extends Collection<Utilisation>> uses) {
        return taken.stream().flatMap(t -> uses.apply(t).stream().map(use -> new Used(use, t.situation())))
                .max(Comparator.comparingDouble(used -> used.use().ratio()));
    }
}
