package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.dolly.DollyBody;
import cradlewright.analysis.dolly.DollyBodyKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import java.util.List;

/** Do the members of a dolly hold together? */
public final class LooseCheck extends DollyCheck {

    /** Creates the check. */
    public LooseCheck() {
        super(new CheckInfo("dolly.loose", "Do the members of the dolly hold together?",
                "statics: every member joined so that nothing moves freely",
                Cautions.STRUCTURE, List.of("section of each member", "places of its ends", "which ends are hinged"), List.of()));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        if (dolly.members().isEmpty()) {
            return List.of();
        }
        DollyBody body = reader.read(new DollyBodyKey(dolly.id()));
        FindingBuilder finding = finding(subject, dolly.id(), dolly.name());
        if (!body.loose().isEmpty()) {
            finding.remedy(Remedy.advice("Join these members firmly at both ends, or take hinges out of the record that are none."));
            return List.of(finding.say(Verdict.STOP, "The dolly hangs loose: nothing keeps these in place: "
                    + String.join(", ", body.loose()) + "."));
        }
        if (body.frame().isEmpty()) {
            List<String> missing = body.missing().isEmpty() ? List.of("section and ends of each member") : body.missing();
            return List.of(finding.cantSay("The members of the dolly are not fully known.", missing));
        }
        return List.of(finding.say(Verdict.HOLDS, "All members hold together."));
    }
}
