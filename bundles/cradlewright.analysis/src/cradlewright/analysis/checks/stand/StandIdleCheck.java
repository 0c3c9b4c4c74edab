package cradlewright.analysis.checks.stand;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.List;

/**
 * Does every stand carry? One that carries nothing, or next to nothing, falls over or gets kicked away: below a tenth of the mean it
 * stops, as under a lift.
 */
public final class StandIdleCheck extends LoadedVisitCheck {

    /** Force below which a stand carries nothing, N. */
    private static final double NOTHING = 1;
    /** Share of the mean below which a stand is light: common practice, no source. */
    private static final double LIGHT = 0.10;

    /** Creates the check. */
    public StandIdleCheck() {
        super(new CheckInfo("stand.idle", "Does every stand carry?", "common practice, no source", Cautions.SUPPORTS,
                List.of("places and heights of the stands", "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY, ContactFormulas.ENERGY, ContactFormulas.GRADIENT_BOUNDS)),
                        LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return !StandUse.of(standing).isEmpty();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (StandUse use : StandUse.of(standing)) {
            loads.atRest(use.contactIds()).ifPresent(total -> findings.add(judge(use, total, loads.meanAtRest(), subject,
                    settings(reader).tightMargin())));
        }
        return findings;
    }

    private Finding judge(StandUse use, VisitLoads.Total total, double mean, Subject subject,
            double margin) {
        String name = use.gear().name();
        FindingBuilder finding = finding(subject, use.gear().id(), name).situation("at rest")
                .input("carries, masses as listed", Amount.force(total.force()), "worked out")
                .input("mean of all supports", Amount.force(mean), "worked out")
                .atLeast(Amount.force(LIGHT * mean), Amount.force(Math.max(0, total.low())),
                        "what it carries at least, against a tenth of the mean");
        if (total.force() < NOTHING) {
            return finding.remedy(Remedy.advice("Raise " + name
                    + " until it carries, or take it away and count only on the others."))
                    .say(Verdict.STOP, name + " carries nothing: do not count on it.");
        }
        Verdict verdict = Verdict.of(LIGHT * mean, Math.max(0, total.low()), margin);
        if (verdict != Verdict.HOLDS) {
            finding.remedy(Remedy.advice("Raise " + name + " a little, and try each stand by hand: none may be loose."));
        }
        return finding.say(verdict, switch (verdict) {
            case HOLDS -> name + " carries.";
            case TIGHT -> name + " carries, hardly.";
            default -> name + " carries little, or may carry little: do not count on it.";
        });
    }
}
