package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.ArrayList;
import java.util.List;

/** Does a support stand where the shell is to be cut? */
public final class SupportInCutCheck extends VisitCheck {

    /** Creates the check. */
    public SupportInCutCheck() {
        super(new CheckInfo("support.in-cut", "Does a support stand where the shell is to be cut?", "common practice, no source",
                Cautions.SUPPORTS + " Cut only with supports on sound metal at both sides of the cut.",
                List.of("corners of each planned cut"),
                List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (CutZoneFacts cut : standing.car().cutZones()) {
            if (cut.planned()) {
                findings.addAll(examine(cut, standing, subject));
            }
        }
        return findings;
    }

    private List<Finding> examine(CutZoneFacts cut, Standing standing, Subject subject) {
        if (cut.low().isEmpty() || cut.high().isEmpty()) {
            return List.of(finding(subject, cut.id(), cut.name()).cantSay("Where this cut is to be made is not in the files.",
                    List.of("two opposite corners of the cut: measure them from the marks")));
        }
        List<Support> inside = standing.supports().stream().filter(support -> cut.covers(support.onCar())).toList();
        if (inside.isEmpty()) {
            return List.of(finding(subject, cut.id(), cut.name()).say(Verdict.HOLDS, "No support stands where this cut is planned."));
        }
        return inside.stream().map(support -> finding(subject, support.objectId(), support.name())
                .remedy(Remedy.advice("Carry the shell on both sides of the cut first: add a support or a prop outside of it, then take "
                + "this one away."))
                .say(Verdict.STOP, "Stands inside the planned cut " + cut.name() + ": once cut, it carries nothing.")).toList();
    }
}
