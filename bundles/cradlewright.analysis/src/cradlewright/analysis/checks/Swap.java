package cradlewright.analysis.checks;

import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Changes what is between a carried piece and what carries it. */
public final class Swap {

    private Swap() {
    }

    /**
     * Returns the car with some contacts of its setup changed.
     *
     * @param standing where
     * @param which the contacts to change
     * @param how what becomes of each
     * @param more records that change with it
     */
    public static Change contacts(Standing standing, Predicate<ContactFacts> which, UnaryOperator<ContactFacts> how, Fact... more) {
        SetupFacts setup = standing.setup();
        for (ContactFacts contact : standing.setup().contacts()) {
            setup = which.test(contact) ? setup.with(how.apply(contact)) : setup;
        }
        List<Fact> facts = new ArrayList<>(List.of(more));
        facts.add(standing.car().with(setup));
        return new Change(facts, Optional.empty());
    }

    /** Returns a contact with what is in between made higher by that much, m: a gap that was measured closes by as much. */
    public static ContactFacts raised(ContactFacts contact, double by) {
        return contact.gap().map(gap -> contact.withGap(new Value(gap.si() - by, gap.u(), gap.source()))).orElse(contact);
    }
}
