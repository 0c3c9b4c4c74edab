package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.frame.FrameFormulas;
import java.util.Comparator;
import java.util.List;

/** Does the dolly stay straight enough for the shims to mean something? Asked at rest, of the member that bends most. */
public final class TwistCheck extends FrameCheck {

    private record Bent(LoadedMember member, double sag) {
    }

    /** Creates the check. */
    public TwistCheck() {
        super(new CheckInfo("dolly.twist", "Does the dolly stay straight enough under the car?", "common practice, no source",
                Cautions.SUPPORTS,
                List.of("section of each member", "places of its ends", "what stands on the dolly", "allowed twist while working"),
                List.of(FrameFormulas.ALONG_MEMBER)));
    }

    @Override
    protected List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader) {
        double allowed = settings(reader).shimTolerance().working();
        double margin = settings(reader).tightMargin();
        return members.stream().flatMap(member -> member.taken().stream()
                .filter(taken -> taken.situation().kind() == Situation.Kind.AT_REST)
                .map(taken -> new Bent(member, taken.load().sag()))).max(Comparator.comparingDouble(Bent::sag))
                .map(bent -> List.of(say(bent, allowed, margin, subject))).orElse(List.of());
    }

    private Finding say(Bent bent, double allowed, double margin, Subject subject) {
        Verdict verdict = Verdict.of(bent.sag, allowed, margin);
        FindingBuilder finding = finding(subject, bent.member.facts().id(), bent.member.facts().name())
                .situation(Situation.atRest().words())
                .against(Amount.length(bent.sag), Amount.length(allowed), "twist allowed while working, as the shop settled it")
                .input("loads raised by the factor", Amount.ratio(LoadsKey.CARRIED), "the same answer as for strength, EN 1990 Table"
                        + " A1.2(B) (from memory); the raise stands for joints that give, common practice, no source");
        if (verdict != Verdict.HOLDS) {
            finding.remedy(Remedy.advice("Set the shims with the car standing on the dolly, measure again, or stiffen "
                    + bent.member.facts().name() + "."));
        }
        String what = " Its sag is counted between its own ends, under loads raised as for strength: bolted and welded joints give as well,"
                + " which nobody works out, and the raise stands for that.";
        return finding.say(verdict, switch (verdict) {
            case HOLDS -> "The member that bends most stays straight enough for the shims." + what;
            case TIGHT -> "The member that bends most uses up nearly all that the shims may be out." + what;
            default -> "The member that bends most gives more than the shims may be out." + what;
        });
    }
}
