package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.KeepOff;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.RatedForce;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Does an end prop take what comes on it? It is set by hand until it just touches, so it takes nothing at rest and its part of every push;
 * one that is driven in takes more than this.
 */
public final class PropLoadCheck extends LoadedVisitCheck {

    /** What one prop carries in one situation. */
    private record Pressed(Situation situation, Carried carried) {
    }

    /** Creates the check. */
    public PropLoadCheck() {
        super(new CheckInfo("support.prop", "Does each end prop take what comes on it?",
                "rating of the prop; load factor against a design resistance EN 1990 Table A1.2(B) (from memory)",
                Cautions.TIPPING + " Set a prop by hand until it just touches: driven in, it lifts the end and carries more than is shown.",
                List.of("what each prop can take and what that is rated by", "where it touches", "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY, ContactFormulas.ENERGY, ContactFormulas.GRADIENT_BOUNDS)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return !standing.fittedProps().isEmpty();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (PropFacts prop : standing.fittedProps()) {
            hardest(prop, loads).ifPresent(most -> findings.add(judge(prop, most, standing, subject, settings(reader))));
        }
        return findings;
    }

    private static Optional<Pressed> hardest(PropFacts prop, VisitLoads loads) {
        return loads.found().stream().flatMap(found -> on(prop, found).map(c -> new Pressed(found.situation(), c)).stream())
                .max(Comparator.comparingDouble(pressed -> pressed.carried().high()));
    }

    private static Optional<Carried> on(PropFacts prop, Loads loads) {
        return loads.props().stream().filter(carried -> carried.id().equals(prop.id())).findFirst();
    }

    private Finding judge(PropFacts prop, Pressed most, Standing standing, Subject subject, SettingsFacts settings) {
        double carried = most.carried().high();
        FindingBuilder finding = finding(subject, prop.id(), prop.name()).situation(most.situation().words())
                .input("carries, masses as listed", Amount.force(most.carried().force()), "worked out")
                .input("carries at most", Amount.force(carried), "19 times in 20, any stiffness the shell may have");
        if (prop.capacity().isEmpty() || prop.basis().isEmpty()) {
            return finding.cantSay("What this prop can take is not in the files.", List.of("what " + prop.name()
                    + " can take, and whether that is a working load limit, a rated load or a design resistance"));
        }
        RatedForce rated = new RatedForce(prop.capacity().get(), prop.basis().get());
        rated.against(finding, carried);
        Verdict verdict = Verdict.of(rated.demand(carried), rated.low(), settings.tightMargin());
        if (verdict != Verdict.HOLDS) {
            KeepOff.remedy(most.situation(), standing, settings).ifPresent(finding::remedy);
        }
        if (verdict == Verdict.STOP) {
            finding.remedy(Remedy.advice("Put a stand of a higher rating under that end."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "This prop carries more than it is rated for."
                : "This prop takes what comes on it.");
    }
}
