package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.ApertureFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.OpeningChange;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Were the openings of the shell measured before and after metal was cut out? Without a reading from before nobody can tell afterwards
 * whether the shell has moved. That the readings agree is no proof that it has not moved elsewhere.
 */
public final class ReadingsAtHoldCheck extends CarWorkCheck {

    /** What two readings with a tape may differ by although nothing moved, m: common practice, no source. */
    private static final double TAPE = 0.002;

    private static final String MEASURE = ": measure the diagonals of each opening beside the cut and write them down";

    /** Creates the check. */
    public ReadingsAtHoldCheck() {
        super(new CheckInfo("job.readings-at-hold", "Were the openings measured before and after the cut?", "common practice, no source",
                Cautions.WORK, List.of("which operations cut metal out", "day on which the cut began",
                        "readings of the openings from before and after"), List.of()));
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        List<ApertureFacts.Reading> readings = reader.read(new FactKey<>(ApertureFacts.class, ApertureFacts.idFor(subject.ownerId())))
                .map(ApertureFacts::readings).orElse(List.of()).stream()
                .filter(reading -> reading.at().filter(at -> !at.toLocalDate().isAfter(today)).isPresent()).toList();
        return work.operations().stream().filter(operation -> operation.kind().filter(OperationFacts.Kind.CUT::equals).isPresent())
                .map(cut -> judge(cut, readings, today, finding(subject, cut))).toList();
    }

    private static Finding judge(OperationFacts cut, List<ApertureFacts.Reading> readings, LocalDate today, FindingBuilder finding) {
        if (!cut.begun(today)) {
            return readings.isEmpty() ? finding.cantSay("Nobody measured the openings yet, and the cut comes.",
                    List.of("readings of the openings from before the cut" + MEASURE))
                    : finding.say(Verdict.HOLDS, "Openings are measured before the cut.");
        }
        if (cut.started().isEmpty()) {
            return finding.cantSay("Which readings are from before the cut is not known.",
                    List.of("day on which the cut began: write it down at " + cut.name()));
        }
        List<OpeningChange> changes = OpeningChange.over(cut.started().get(), readings);
        if (changes.isEmpty()) {
            return finding.cantSay("Nobody measured the openings before the cut, so whether the shell has moved cannot be told.",
                    List.of("readings of the openings from before the cut, which nobody can take any more: compare with the other side"
                            + " or with another car"));
        }
        return cut.done() ? compare(changes, finding) : finding.say(Verdict.HOLDS, "Openings were measured before the cut.");
    }

    private static Finding compare(List<OpeningChange> changes, FindingBuilder finding) {
        List<String> missing = new ArrayList<>();
        boolean moved = false;
        for (OpeningChange change : changes) {
            if (change.comparable()) {
                finding.input("change of " + change.opening(), Amount.length(change.largest()), "readings before and after");
                moved |= change.moved(TAPE);
            } else {
                missing.add("a reading of " + change.opening() + " from after the cut, of the same lines as before" + MEASURE);
            }
        }
        if (moved) {
            return finding.remedy(Remedy.advice("Measure again; then look at supports and braces before anything else is welded."))
                    .say(Verdict.STOP, "An opening is not as it was before the cut: the shell has moved.");
        }
        return missing.isEmpty() ? finding.say(Verdict.HOLDS, "Measured before and after the cut, and no opening has moved.")
                : finding.cantSay("Not every opening was measured again after the cut.", missing);
    }
}
