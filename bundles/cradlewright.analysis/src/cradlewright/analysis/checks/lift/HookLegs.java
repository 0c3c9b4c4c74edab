package cradlewright.analysis.checks.lift;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.List;
import java.util.Optional;

/**
 * Straps that meet in one hook lean, unless a beam spreads them: each pulls harder than what hangs in it, and to the side. How far is
 * not worked out from the places; without a direction of pull in the files nothing can be said about them.
 */
final class HookLegs {

    /** Least rise of a direction that still counts as upright: 1 degree, common practice, no source. */
    private static final double UPRIGHT = Math.cos(Math.toRadians(1));

    private HookLegs() {
    }

    /** Returns what is missing to say anything about this support; nothing when it does not hang from a hook together with others. */
    static Optional<String> missing(Support support, Standing standing) {
        boolean alone = standing.supports().stream().filter(other -> hook(other, standing).isPresent()
                && hook(other, standing).equals(hook(support, standing))).map(Support::onCar).distinct().count() < 2;
        return hook(support, standing).isEmpty() || alone || support.normal().z() < UPRIGHT ? Optional.empty()
                : Optional.of("how far the strap at " + support.name() + " leans: straps that meet in one hook are never upright; enter the"
                        + " direction of its pull, from there to the hook");
    }

    /** Returns the missing directions of several supports. */
    static List<String> missing(List<Support> supports, Standing standing) {
        return supports.stream().flatMap(support -> missing(support, standing).stream()).toList();
    }

    /** Returns in which hook the strap at a support hangs: that of a hole of a boom, or the only one of the hoist. */
    private static Optional<String> hook(Support support, Standing standing) {
        SetupFacts setup = standing.setup();
        Optional<String> hole = CarFacts.find(setup.contacts(), support.contactId()).flatMap(ContactFacts::holeId);
        boolean strap = support.holder() instanceof Holder.InStrap;
        // Beside a lift, straps without a hole hang from its arms, each from its own.
        return strap ? hole.or(() -> setup.liftId().isEmpty() ? setup.hoistId() : Optional.empty()) : Optional.empty();
    }
}
