package cradlewright.analysis.checks.place;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/**
 * Does it stand where wind reaches it? Wind is outside of what is worked out: the supports and the tipping are those of still air. So what
 * stands outdoors is never better than TIGHT, and a cover, which catches more wind than a shell, is named.
 */
public final class OutdoorsCheck extends VisitCheck {

    /** Creates the check. */
    public OutdoorsCheck() {
        super(new CheckInfo("place.outdoors", "Does it stand where wind reaches it?", "common practice, no source",
                Cautions.TIPPING + " Wind is not looked at.", List.of("whether the place or the setup is outdoors",
                        "whether a cover lies over it"),
                List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        boolean outdoors = standing.setup().weather().outdoors().orElse(standing.place().map(PlaceFacts::outdoors).orElse(false));
        if (!outdoors || standing.carrier() == CarrierKind.AWAY) {
            return List.of();
        }
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label()).situation("outdoors");
        finding.remedy(Remedy.advice("Tie it down, set the brakes or put the feet down, and bring it in before a storm."));
        boolean covered = standing.setup().weather().covered().orElse(false);
        return List.of(finding.say(Verdict.TIGHT, covered
                ? "What wind does to it is not looked at, and the cover catches more of it: all answers are for still air."
                : "What wind does to it is not looked at: all answers are for still air."));
    }
}
