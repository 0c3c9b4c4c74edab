package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;
import java.util.List;

/**
 * Compares what a castor or stand does to a floor with what the wheel of a car does that stands there daily, for a slab about
 * which nothing is known; see {@link SlabFormulas#WHEEL_COMPARISON}.
 *
 * <p>The answer is "no worse" only when every measure is no worse: force, pressure on the contact, force along the edge of the
 * contact, distance to the next wheel. Together the first and the third bound the punching stress on a perimeter at any distance,
 * that is for any thickness; force and pressure bound the bending stress of a slab on soil as long as the contacts are small
 * against the slab's radius of relative stiffness; the distance keeps neighbours from adding more. Anything else is unknown,
 * never "worse" and never "fine". A car that stands there proves nothing about a place where it does not stand: joints, covers,
 * pits.
 */
public final class WheelComparison {

    /**
     * What one wheel, castor or stand does.
     *
     * @param force N, with whatever factor is to be put on rolling
     * @param area contact
     * @param spacing distance to the next loaded contact, m
     */
    public record Footprint(double force, LoadedArea area, double spacing) {

        /** Refuses values that are not above zero. */
        public Footprint {
            Require.positive(force, "force");
            Require.positive(spacing, "distance to the next contact");
        }
    }

    /** The measures compared. */
    public enum Measure {
        /** Force, N. */
        FORCE,
        /** Mean pressure, Pa. */
        PRESSURE,
        /** Force along the edge of the contact, N/m. */
        EDGE_SHEAR,
        /** Distance to the next contact, m; less is worse. */
        SPACING
    }

    /** The answer. */
    public enum Answer {
        /** Every measure is no worse than that of the car wheel. */
        NO_WORSE,
        /** At least one is worse: nothing can be said about an unknown slab. */
        UNKNOWN
    }

    /**
     * One measure.
     *
     * @param measure which
     * @param ours of the castor or stand
     * @param daily of the car wheel
     * @param noWorse true when ours is no worse
     */
    public record Comparison(Measure measure, double ours, double daily, boolean noWorse) {
    }

    /**
     * The answer with what it rests on.
     *
     * @param answer of all measures together
     * @param comparisons each measure
     */
    public record Result(Answer answer, List<Comparison> comparisons) {

        /** Copies the list. */
        public Result {
            comparisons = List.copyOf(comparisons);
        }
    }

    private WheelComparison() {
    }

    /** Compares {@code ours} with the wheel that stands there daily. */
    public static Result of(Footprint ours, Footprint daily) {
        List<Comparison> all = List.of(notAbove(Measure.FORCE, ours.force(), daily.force()),
                notAbove(Measure.PRESSURE, ours.force() / ours.area().area(), daily.force() / daily.area().area()),
                notAbove(Measure.EDGE_SHEAR, ours.force() / ours.area().perimeter(), daily.force() / daily.area().perimeter()),
                new Comparison(Measure.SPACING, ours.spacing(), daily.spacing(), ours.spacing() >= daily.spacing()));
        boolean noWorse = all.stream().allMatch(Comparison::noWorse);
        return new Result(noWorse ? Answer.NO_WORSE : Answer.UNKNOWN, all);
    }

    private static Comparison notAbove(Measure measure, double ours, double daily) {
        return new Comparison(measure, ours, daily, ours <= daily);
    }
}
