package cradlewright.analysis.checks.gear;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import java.util.List;

/** Is it known what the gear is rated for? */
public final class RatingCheck implements Check {

    private static final CheckInfo INFO = new CheckInfo("gear.rating", "Is it known what it is rated for?",
            "plate or tag: EN 1492-1 and EN 1492-2 for straps, EN 1493 for lifts, ASME PASE for stands", Cautions.LIFTING,
            List.of("rated load on the plate or tag"), List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public Scope scope() {
        return Scope.GEAR;
    }

    @Override
    public List<Finding> examine(Subject subject, Reader reader) {
        return reader.read(new FactKey<>(GearFacts.class, subject.ownerId())).map(gear -> List.of(examine(gear, subject)))
                .orElse(List.of());
    }

    private static Finding examine(GearFacts gear, Subject subject) {
        FindingBuilder finding = new FindingBuilder(INFO, subject, gear.id(), gear.name());
        if (gear.ratedLoad().isEmpty()) {
            return finding.cantSay("What " + gear.name() + " is rated for is not in the files.", List.of("rated load of "
                    + gear.name() + ": read it off its plate or tag"));
        }
        if (gear.ratedLoad().get().guessed()) {
            return finding.cantSay("The rating of " + gear.name() + " is only guessed.", List.of("rated load of " + gear.name()
                    + ": read it off its plate or tag and name the plate as its source"));
        }
        if (gear instanceof GearFacts.Stand stand && stand.perPair().isEmpty()) {
            return finding.cantSay("The rating of " + gear.name() + " may be for one stand or for a pair.",
                    List.of("whether the plate of " + gear.name() + " speaks of one stand or of a pair"));
        }
        return finding.input("rated load", Amount.mass(gear.ratedLoad().get().si()), gear.ratedLoad().get().source().word())
                .say(Verdict.HOLDS, "What it is rated for is known.");
    }
}
