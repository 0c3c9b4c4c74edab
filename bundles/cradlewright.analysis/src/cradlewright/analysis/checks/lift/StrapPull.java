package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.lifting.SlingModeFactor;
import cradlewright.mechanics.lifting.SlingModeFactor.Mode;
import cradlewright.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of the tag of one strap. By itself on a hook, a strap is judged by the pull along it; hung straight up, by what hangs in
 * it.
 *
 * @param listed what it carries with everything as listed, kg
 * @param carried what is asked of its tag at most, 19 times in 20, kg
 * @param lean how far it leans from upright at most, rad
 * @param factor of the working load limit for how it is slung; zero where it must not be used so
 * @param legs legs of a sling that is rated as a whole, else one
 * @param onHook whether it meets other straps or legs in one hook
 */
record StrapPull(double listed, double carried, double lean, double factor, int legs, boolean onHook) {

    /** Returns what is asked of a strap; nothing when it does not stay hanging so. */
    static Optional<StrapPull> of(GearFacts.Strap strap, List<Support> supports, Optional<HookHang> hook, VisitLoads loads) {
        if (hook.isPresent() && !hook.get().stays()) {
            return Optional.empty();
        }
        List<HookHang.Leg> legs = hook.stream().flatMap(hang -> supports.stream().flatMap(s -> hang.leg(s).stream())).toList();
        return legs.isEmpty() ? upright(strap, supports, loads) : Optional.of(onHook(strap, legs, hook.get()));
    }

    private static Optional<StrapPull> upright(GearFacts.Strap strap, List<Support> supports, VisitLoads loads) {
        double lean = supports.stream().mapToDouble(s -> Math.acos(Math.max(0, Math.min(1, s.normal().z())))).max().orElse(0);
        int legs = strap.legs().orElse(1);
        // Each leg takes at most its part of what the tag allows for all; the rules of the sling standards allow somewhat more.
        double hardest = legs < 2 ? 0 : legs * supports.stream().flatMap(s -> loads.most(List.of(s.contactId())).stream())
                .mapToDouble(VisitLoads.Total::high).max().orElse(0);
        return loads.most(supports.stream().map(Support::contactId).toList()).map(most -> new StrapPull(
                most.force() / Constants.GRAVITY, Math.max(0, Math.max(most.high(), hardest)) / Constants.GRAVITY, lean,
                SlingModeFactor.factor(mode(strap), lean), legs, false));
    }

    private static StrapPull onHook(GearFacts.Strap strap, List<HookHang.Leg> legs, HookHang hook) {
        double lean = legs.stream().mapToDouble(HookHang.Leg::lean).max().orElseThrow();
        double listed = legs.stream().mapToDouble(HookHang.Leg::pull).max().orElseThrow() / Constants.GRAVITY;
        double high = legs.stream().mapToDouble(HookHang.Leg::high).max().orElseThrow() / Constants.GRAVITY;
        if (strap.legs().orElse(1) < 2) {
            // One strap at more places carries what all of them pull.
            double sum = legs.stream().mapToDouble(HookHang.Leg::high).sum() / Constants.GRAVITY;
            double turned = Math.min(lean, Math.PI / 2);
            double single = SlingModeFactor.factor(Mode.BASKET, turned) <= 0 ? 0
                    : SlingModeFactor.factor(mode(strap), strap.mode() == GearFacts.Mode.BASKET ? turned : 0);
            return new StrapPull(listed, sum, lean, single, 1, true);
        }
        Mode set = strap.legs().getAsInt() == 2 ? Mode.TWO_LEGS : Mode.THREE_LEGS;
        double choked = strap.mode() == GearFacts.Mode.CHOKED ? SlingModeFactor.factor(Mode.CHOKED, 0) : 1;
        double narrow = SlingModeFactor.factor(set, 0);
        double factor = choked * SlingModeFactor.factor(set, Math.min(lean, Math.PI / 2)) / narrow;
        // The tag of a sling of several legs is made out for all of them while they spread little: one leg may pull its part of that, and
        // the whole may weigh what the factor for the spread leaves.
        double whole = legs.size() == hook.legs().size() ? hook.weight() / Constants.GRAVITY : 0;
        return new StrapPull(listed, Math.max(whole, high * narrow * factor / choked), lean, factor, strap.legs().getAsInt(), true);
    }

    /** Nobody writes down how far the two sides of a basket spread, so they are taken as spread, never as upright. */
    private static Mode mode(GearFacts.Strap strap) {
        return switch (strap.mode()) {
            case STRAIGHT -> Mode.STRAIGHT;
            case CHOKED -> Mode.CHOKED;
            case BASKET -> Mode.BASKET;
        };
    }

    /** Notes what goes in. */
    void note(FindingBuilder finding) {
        finding.input(onHook ? "pulls hardest, masses as listed" : "carries, masses as listed", Amount.mass(listed), "worked out");
        if (onHook) {
            finding.shown("leans from upright at most", new Amount(lean, Dimension.ANGLE), "from the lengths of the straps; 19 times in 20")
                    .input("asked of it at most", Amount.mass(carried), "19 times in 20; of four, two or three may carry all");
        } else {
            finding.input("carries at most", Amount.mass(carried), "19 times in 20, any stiffness the shell may have");
        }
        if (legs > 1) {
            finding.input("legs", Amount.ratio(legs), onHook ? "the tag is taken as made out for all legs, spread little, EN 1492-1"
                    : "each takes at most its part of the tag, common practice, no source");
        }
    }

    /** Returns what the capacity is rated by. */
    String ratedBy() {
        return "working load limit on the tag times the factor for how it is slung";
    }
}
