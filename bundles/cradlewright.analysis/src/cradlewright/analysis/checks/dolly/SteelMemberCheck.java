package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.standing.Standing;
import java.util.List;
import java.util.Optional;

/** A check of each steel member of a dolly against a design resistance, with a thicker section as the remedy. */
abstract class SteelMemberCheck extends FrameCheck {

    SteelMemberCheck(CheckInfo info) {
        super(info);
    }

    /**
     * Returns the largest use of a member made of a section, or nothing when the question does not arise for it.
     *
     * @throws IllegalArgumentException when the rules do not cover the section
     * @throws IllegalStateException when effective widths do not settle
     */
    abstract Optional<Used> worst(LoadedMember member, SectionShape shape, double yield);

    /** Returns the reason in words. */
    abstract String words(Verdict verdict, Used used);

    /** Returns why the rules do not cover a section. */
    String whyNotCovered() {
        return "its wall is too thin for its size";
    }

    /** Returns what to do when the rules do not cover a section. */
    String instead() {
        return "Take a section with a thicker wall in its place.";
    }

    /** Returns what to do where no thicker sheet helps. */
    String otherwise(LoadedMember member, Used used) {
        return "Take a stronger shape for " + member.facts().name() + ", or put a support nearer to a castor.";
    }

    /** Notes what went in beside the yield strength. */
    void inputs(FindingBuilder finding, LoadedMember member, Used used) {
    }

    /** Notes what is taken for granted about the joints at its ends. */
    void joints(FindingBuilder finding, LoadedMember member, DollyFacts dolly, Used used) {
    }

    @Override
    protected final List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader) {
        double margin = settings(reader).tightMargin();
        DollyFacts dolly = standing.dolly().orElseThrow();
        return members.stream().filter(member -> !member.timber()).flatMap(member -> judge(member, dolly, margin, subject, reader).stream())
                .toList();
    }

    private Optional<Finding> judge(LoadedMember member, DollyFacts dolly, double margin, Subject subject, Reader reader) {
        if (member.shape().isEmpty()) {
            return Optional.of(finding(member, subject).cantSay("The section of this member is not known.",
                    List.of("section of " + member.facts().name() + ", with all its measures")));
        }
        if (member.yield().isEmpty()) {
            return Optional.of(finding(member, subject).cantSay("Nobody said what steel this member is made of.",
                    List.of("steel of " + member.facts().name() + ", with its yield strength: read it off the delivery note")));
        }
        double yield = member.yield().get();
        try {
            return worst(member, member.shape().get(), yield).map(used -> answer(member, dolly, used, yield, margin, subject, reader));
        } catch (IllegalArgumentException | IllegalStateException e) {
            // The rules refuse the section, a round tube with a very thin wall for one: no number stands behind an answer then.
            return Optional.of(finding(member, subject).remedy(Remedy.advice(instead()))
                    .say(Verdict.CANT_SAY, "The rules used here do not cover this section: " + whyNotCovered() + "."));
        }
    }

    private FindingBuilder finding(LoadedMember member, Subject subject) {
        return finding(subject, member.facts().id(), member.facts().name());
    }

    private Finding answer(LoadedMember member, DollyFacts dolly, Used used, double yield, double margin, Subject subject,
            Reader reader) {
        Verdict verdict = verdict(used, margin);
        FindingBuilder finding = finding(member, subject).situation(used.situation().words()).against(UseWords.demand(used.use()),
                UseWords.capacity(used.use()), "design resistance, " + used.use().clause() + ", loads factored");
        finding.input("yield strength", UseWords.stress(yield), member.steel().orElseThrow().name());
        inputs(finding, member, used);
        joints(finding, member, dolly, used);
        if (verdict == Verdict.STOP && !reader.tried()) {
            finding.remediesOr(new GaugeSearch(reader, dolly, member)
                    .thicker(shape -> worst(member, shape, yield).map(u -> verdict(u, margin)), verdict),
                    otherwise(member, used));
        }
        return finding.say(verdict, words(verdict, used));
    }

    private static Verdict verdict(Used used, double margin) {
        return Verdict.of(used.use().demand(), used.use().capacity(), margin);
    }
}
