package cradlewright.analysis.checks.lift;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/** Does a body mount still tie the shell to the chassis while the shell is being lifted? */
public final class StillFastCheck extends VisitCheck {

    /** Creates the check. */
    public StillFastCheck() {
        super(new CheckInfo("lift.still-fast", "Is every body mount free before the shell is lifted?",
                "common practice, no source", Cautions.LIFTING,
                List.of("state of each body mount: fast or free"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        boolean apart = standing.carries(PieceKind.SHELL) && !standing.carries(PieceKind.CHASSIS);
        if (!standing.lifted() || !standing.car().separateChassis() || !apart) {
            return List.of();
        }
        if (!standing.stillFast().isEmpty()) {
            return standing.stillFast().stream().map(mount -> fast(mount, standing, subject)).toList();
        }
        List<String> unsaid = standing.car().mounts().stream().filter(mount -> mount.fast().isEmpty()).map(MountFacts::name).toList();
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label());
        if (standing.car().mounts().isEmpty()) {
            return List.of(finding.cantSay("The files name no body mount of this car, so nobody can have ticked one off.",
                    List.of("body mounts of this car: enter each of them and whether it is fast or free")));
        }
        if (!unsaid.isEmpty()) {
            return List.of(finding.cantSay("Nobody ticked off whether these body mounts are free: " + String.join(", ", unsaid) + ".",
                    List.of("state of each body mount: try the bolt, then tick it off")));
        }
        return List.of(finding.say(Verdict.HOLDS, "Every body mount is ticked off as free."));
    }

    private Finding fast(MountFacts mount, Standing standing, Subject subject) {
        return finding(subject, mount.id(), mount.name())
                .remedy(Remedy.trial("Lower until the straps are slack, free this mount, "
                        + "raise by a finger's breadth and see daylight at every mount.",
                        Trial.records(Change.of(standing.car().with(mount.freed())), mount.id())))
                .say(Verdict.STOP, "This mount still ties the shell to the chassis: the straps would lift both and tear the mount.");
    }
}
