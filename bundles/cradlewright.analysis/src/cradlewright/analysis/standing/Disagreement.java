package cradlewright.analysis.standing;

import cradlewright.analysis.check.Amount;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.mass.PoseWeighing.Level;
import java.util.List;

/**
 * How far parts list and scales lie apart in one respect.
 *
 * @param what in which respect, in words
 * @param listed what the parts list adds up to
 * @param weighed what the scales say
 * @param apart how far they lie apart, not negative
 * @param allowed how far they may lie apart, 19 times in 20
 */
public record Disagreement(String what, Amount listed, Amount weighed, Amount apart, Amount allowed) {

    /** Compares mass, place along the car and place across it; the errors of list and scales are taken as independent. */
    public static List<Disagreement> of(Level weighed, EstimatedBalance listed) {
        return List.of(
                new Disagreement("mass", Amount.mass(listed.balance().mass()), Amount.mass(weighed.mass()),
                        Amount.mass(Math.abs(weighed.mass() - listed.balance().mass())),
                        Amount.mass(together(weighed.massUncertainty(), listed.standard(Quantity.MASS)))),
                length("balance point along the car", listed.balance().point().x(), weighed.x(),
                        together(weighed.xUncertainty(), listed.standard(Quantity.X))),
                length("balance point across the car", listed.balance().point().y(), weighed.y(),
                        together(weighed.yUncertainty(), listed.standard(Quantity.Y))));
    }

    private static Disagreement length(String what, double listed, double weighed, double allowed) {
        return new Disagreement(what, Amount.length(listed), Amount.length(weighed), Amount.length(Math.abs(weighed - listed)),
                Amount.length(allowed));
    }

    private static double together(double one, double other) {
        return EstimatedBalance.COVERAGE * Math.hypot(one, other);
    }

    /** Returns the difference over what is allowed; infinite for a difference where none is allowed. */
    public double use() {
        return apart.si() > 0 ? apart.si() / allowed.si() : 0;
    }

    /** Tells whether the difference is no larger than what is known of both. */
    public boolean within() {
        return apart.si() <= allowed.si();
    }
}
