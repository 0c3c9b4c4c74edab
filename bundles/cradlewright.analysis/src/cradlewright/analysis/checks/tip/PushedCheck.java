package cradlewright.analysis.checks.tip;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.load.TipAnswer;
import cradlewright.analysis.load.TipKey;
import cradlewright.analysis.standing.Standing;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A check of how many times each push can be laid on before something falls over. */
abstract class PushedCheck extends VisitCheck {

    private final TipAnswer.Question question;

    PushedCheck(CheckInfo info, TipAnswer.Question question) {
        super(info);
        this.question = question;
    }

    /** Returns the rigid load at its unfavourable end, or nothing when it is not held up by points that only push. */
    abstract Optional<RigidTip> unfavourable(Standing standing, Reader reader);

    /** Adds what to do; {@code now} is TIGHT or STOP. */
    abstract void remedies(FindingBuilder finding, TipAnswer answer, Verdict now, Standing standing, Reader reader);

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        List<TipAnswer> answers = reader.read(new TipKey(subject.ownerId(), subject.visitId().orElseThrow())).stream()
                .filter(answer -> answer.question() == question).toList();
        Optional<TipAnswer> unanswered = answers.stream().filter(answer -> !answer.answered()).findFirst();
        if (unanswered.isPresent()) {
            return List.of(finding(subject, standing.visit().id(), subject.label()).situation(unanswered.get().situation()
                    .words())
                    .cantSay("Whether it falls over cannot be worked out.", whatIsMissing(subject, reader)));
        }
        if (answers.stream().anyMatch(answer -> !answer.standsAlone())) {
            return List.of(fallsByItself(standing, subject));
        }
        return answers.stream().map(answer -> judge(answer, standing, subject, reader)).toList();
    }

    /** Returns the finding about what falls over though nobody pushes. */
    final Finding fallsByItself(Standing standing, Subject subject) {
        return finding(subject, standing.visit().id(), subject.label()).situation("at rest").say(Verdict.STOP,
                "It falls over though nobody pushes: its balance point lies beyond what it stands on.");
    }

    private static List<String> whatIsMissing(Subject subject, Reader reader) {
        Optional<Loads> loads = VisitLoads.read(subject, reader, situation -> situation.kind() == Situation.Kind.AT_REST)
                .unanswered();
        return loads.map(found -> Arrays.asList(found.reason().split("; ")))
                .orElse(List.of("an answer: the calculation did not come to an end"));
    }

    private Finding judge(TipAnswer answer, Standing standing, Subject subject, Reader reader) {
        SettingsFacts settings = settings(reader);
        double ratio = unfavourable(standing, reader).map(rigid -> rigid.ratio(answer.situation().push().orElseThrow()))
                .map(rigid -> Math.min(rigid, answer.low())).orElse(answer.low());
        double required = settings.requiredRatio();
        String about = answer.situation().about().orElse(answer.situation().id());
        String name = CarFacts.find(standing.car().workPoints(), about).map(WorkPointFacts::name).orElse(answer.situation().words());
        FindingBuilder finding = finding(subject, about, name).situation(answer.situation().words())
                .input("push", Amount.force(answer.situation().push().orElseThrow().force().norm()),
                        "settled by the shop; else common practice, no source");
        if (Double.isInfinite(ratio)) {
            return finding.input("times the push must be held", Amount.ratio(required),
                    "settled by the shop; else common practice, no source")
                    .say(Verdict.HOLDS, "This push upsets nothing.");
        }
        finding.atLeast(Amount.ratio(required), Amount.ratio(ratio),
                "how many times the push can be laid on before it goes over, mass and balance point at their unfavourable ends");
        if (!Double.isInfinite(answer.ratio())) {
            // The answer asks with the castors as drawn; the verdict turns them to their worst position.
            finding.input(answer.question() == TipAnswer.Question.ON_FLOOR ? "times the push is held, masses as listed, castors straight"
                    : "times the push is held, masses as listed", Amount.ratio(answer.ratio()), "worked out");
        }
        Verdict verdict = Verdict.of(required, ratio, settings.tightMargin());
        if (verdict != Verdict.HOLDS) {
            remedies(finding, answer, verdict, standing, reader);
        }
        return finding.say(verdict, words(verdict, ratio, answer.over()));
    }

    private static String words(Verdict verdict, double ratio, String over) {
        String where = over.isEmpty() ? "" : " It would go " + over + ".";
        return (verdict != Verdict.STOP ? "It stands against this push."
                : ratio < 1 ? "It falls over." : "It is too close to falling over.") + where;
    }
}
