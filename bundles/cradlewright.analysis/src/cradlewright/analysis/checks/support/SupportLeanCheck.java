package cradlewright.analysis.checks.support;

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
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.List;

/**
 * Does it stay put where the push of a support leans? Friction must hold what the lean asks for sideways; where it does not, another
 * support that leans against it, or one that is pinned or bolted, may. Friction is worked out for supports that give three times as far
 * sideways as along their push (common practice, no source).
 */
public final class SupportLeanCheck extends LoadedVisitCheck {

    private static final String FRICTION = "friction, settled by the shop or common practice, no source";

    /** Creates the check. */
    public SupportLeanCheck() {
        super(new CheckInfo("support.lean", "Does it stay put where the face of a support leans?", "common practice, no source",
                Cautions.SUPPORTS, List.of("direction in which each support pushes", "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY)), LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.leans() && standing.supports().stream().anyMatch(SupportLeanCheck::asked);
    }

    private static boolean asked(Support support) {
        return support.hold() == Hold.RESTS && support.holdsUp() && !support.upright();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        Loads rest = loads.atRest().orElseThrow();
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            if (asked(support)) {
                rest.support(support.contactId()).ifPresent(carried -> findings.add(judge(support, carried, standing, subject,
                        settings(reader))));
            }
        }
        return findings;
    }

    private Finding judge(Support support, Carried carried, Standing standing, Subject subject, SettingsFacts settings) {
        double grip = settings.friction().low() * Math.max(0, carried.force());
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation("at rest")
                .input("friction", Amount.ratio(settings.friction().low()),
                        "least that the shop has settled, else common practice, no source")
                .input("carries along its push, masses as listed", Amount.force(carried.force()), "worked out")
                .against(Amount.force(carried.shear()), Amount.force(grip), FRICTION);
        Verdict verdict = Verdict.of(carried.shear(), grip, settings.tightMargin());
        if (verdict != Verdict.STOP) {
            return finding.say(verdict, "Friction holds it on its face.");
        }
        finding.remedy(Remedy.advice("Pin or bolt it at " + support.name() + ", or make the face level."));
        return standing.supports().stream().anyMatch(other -> holdsAgainst(other, support))
                ? finding.say(Verdict.TIGHT, "Friction does not hold it on its face; it leans on the other supports.")
                : finding.say(Verdict.STOP, "It slides off: friction does not hold it on its face and no other support leans against it.");
    }

    private static boolean holdsAgainst(Support other, Support support) {
        return other.hold() != Hold.RESTS
                || other.normal().x() * support.normal().x() + other.normal().y() * support.normal().y() < 0;
    }
}
