package cradlewright.report.sheet;

import cradlewright.analysis.change.PartOffAnswer;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingChange;
import cradlewright.analysis.check.FindingChange.Kind;
import cradlewright.analysis.check.Verdict;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.report.Alike;
import cradlewright.report.BalanceWords;
import cradlewright.report.FindingWords;
import cradlewright.report.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** May a part come off? First the answer in one word, then each visit with what changes, then the cautions. */
public final class PartOffSheet {

    private static final String CARE = "Worked out with the part gone. The way there is not: support a heavy part before its last bolt "
            + "is out, and keep hands off the car while the part swings free.";
    private static final String STIFFNESS = "How stiff the shell is without the part is not looked at: doors, glass and bolted-on sheet "
            + "can hold an open shell in shape.";

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public PartOffSheet(UnitSystem units) {
        this.units = units;
    }

    /**
     * Writes the answers.
     *
     * @param question what was asked, for example {@code May left door come off Red coupe?}
     * @param answers one for each visit, at least one
     */
    public Sheet write(String question, List<PartOffAnswer> answers) {
        SheetBuilder out = new SheetBuilder().sentence(question).sentence(decision(answers));
        answers.forEach(answer -> writeVisit(out, answer));
        writeCautions(out, answers);
        return out.build();
    }

    /** Writes that there is no answer and why. */
    public Sheet cantSay(String question, String missing) {
        SheetBuilder out = new SheetBuilder().sentence(question).sentence("CAN'T SAY. The files do not tell enough to work it out.")
                .row("missing", missing);
        writeCautions(out, List.of());
        return out.build();
    }

    private static String decision(List<PartOffAnswer> answers) {
        Verdict now = Verdict.worst(answers.stream().map(PartOffAnswer::verdictNow).toList());
        Verdict then = Verdict.worst(answers.stream().map(PartOffAnswer::verdictThen).toList());
        return switch (now.worse(then)) {
            case HOLDS -> "YES. It holds as it stands now and with the part off.";
            case TIGHT -> "YES, but it is tight: look at what is written below before the first bolt comes out.";
            case CANT_SAY -> "CAN'T SAY. Something is not known: find out what is named below and ask again.";
            case STOP -> "NOT YET. " + whyNotYet(now, then);
        };
    }

    private static String whyNotYet(Verdict now, Verdict then) {
        if (now != Verdict.STOP) {
            return "With the part off something does not hold: mend what is named below first.";
        }
        if (then != Verdict.STOP) {
            return "With the part off nothing would stop, but it comes off the car as it stands now, and that stops: mend it first.";
        }
        return "It stops as it stands now and would stop with the part off: mend what is named below first.";
    }

    private void writeVisit(SheetBuilder out, PartOffAnswer answer) {
        out.title(answer.subject().label());
        out.row("now", answer.verdictNow().word());
        out.row("part off", answer.verdictThen().word());
        out.row("mass now", BalanceWords.mass(answer.weightNow(), units));
        out.row("mass then", BalanceWords.mass(answer.weightThen(), units));
        out.row("balance", move(answer));
        List<FindingChange> worse = answer.changes(Kind.APPEARS, Kind.WORSE, Kind.CLOSER);
        List<FindingChange> open = answer.changes(Kind.UNANSWERED);
        List<Finding> told = new ArrayList<>();
        if (worse.isEmpty() && open.isEmpty()) {
            out.row("worse", "nothing");
        }
        for (FindingChange change : worse) {
            writeChange(out, change);
            change.after().ifPresent(told::add);
        }
        if (!open.isEmpty()) {
            out.row("worse", "held before, and with the part off there is no answer: " + names(open));
        }
        // What is tight is told only where nothing graver draws the eye.
        Verdict least = answer.verdict() == Verdict.TIGHT ? Verdict.TIGHT : Verdict.CANT_SAY;
        writeOthers(out, "as before", answer.then().stream().filter(finding -> !told.contains(finding)).toList(), least);
        if (answer.verdictNow().compareTo(answer.verdictThen()) > 0) {
            writeOthers(out, "only now", answer.changes(Kind.BETTER).stream().flatMap(change -> change.before().stream()).toList(),
                    least);
        }
    }

    private static String names(List<FindingChange> changes) {
        return String.join(", ", changes.stream().flatMap(change -> change.before().stream())
                .map(finding -> finding.objectName() + " [" + finding.check() + "]").toList());
    }

    private void writeChange(SheetBuilder out, FindingChange change) {
        Finding then = change.after().orElseThrow();
        Optional<Finding> now = change.before();
        String what = now.isEmpty() ? "new: " + then.verdict().word()
                : change.kind() == Kind.CLOSER ? then.verdict().word() + " as before, with more asked"
                : now.get().verdict().word() + ", then " + then.verdict().word();
        String moved = change.moved() ? ", moved from " + now.orElseThrow().objectName() + " to " + then.objectName() : "";
        out.row("worse", what + moved + ". " + FindingWords.reason(then));
        now.map(before -> FindingWords.numbers(before, units)).filter(numbers -> !numbers.isEmpty())
                .ifPresent(numbers -> out.inner("now", numbers));
        ReasonRows.addBelow(out, new Alike(List.of(then)), "part off", units);
    }

    private void writeOthers(SheetBuilder out, String head, List<Finding> findings, Verdict least) {
        List<Finding> told = findings.stream().filter(f -> f.verdict() != Verdict.HOLDS && f.verdict().compareTo(least) >= 0).toList();
        for (Alike alike : Alike.gather(told)) {
            out.row(head, alike.first().verdict().word() + ". " + alike.reason());
            ReasonRows.addBelow(out, alike, "numbers", units);
        }
    }

    private String move(PartOffAnswer answer) {
        Optional<EstimatedBalance> now = answer.weightNow().estimate();
        Optional<EstimatedBalance> then = answer.weightThen().estimate();
        if (now.isEmpty() || then.isEmpty()) {
            return "not known";
        }
        return BalanceWords.move(now.get().balance().point(), then.get().balance().point(), units);
    }

    private static void writeCautions(SheetBuilder out, List<PartOffAnswer> answers) {
        CautionLines.add(out, List.of(CARE, STIFFNESS),
                answers.stream().flatMap(answer -> Stream.concat(answer.now().stream(), answer.then().stream())).toList());
    }
}
