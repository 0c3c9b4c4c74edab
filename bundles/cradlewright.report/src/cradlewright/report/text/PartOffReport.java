package cradlewright.report.text;

import cradlewright.analysis.change.PartOffAnswer;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingChange;
import cradlewright.analysis.check.FindingChange.Kind;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.standing.Weight;
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
public final class PartOffReport {

    private static final String CARE = "Worked out with the part gone. The way there is not: support a heavy part before its last bolt "
            + "is out, and keep hands off the car while the part swings free.";
    private static final String STIFFNESS = "How stiff the shell is without the part is not looked at: doors, glass and bolted-on sheet "
            + "can hold an open shell in shape.";

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public PartOffReport(UnitSystem units) {
        this.units = units;
    }

    /**
     * Writes the answers.
     *
     * @param question what was asked, for example {@code May left door come off Red coupe?}
     * @param answers one for each visit, at least one
     */
    public String write(String question, List<PartOffAnswer> answers) {
        StringBuilder out = new StringBuilder(Lines.wrap("", question));
        out.append(Lines.wrap("", decision(answers)));
        answers.forEach(answer -> writeVisit(out, answer));
        writeCautions(out, answers);
        return out.toString();
    }

    /** Writes that there is no answer and why. */
    public String cantSay(String question, String missing) {
        StringBuilder out = new StringBuilder(Lines.wrap("", question));
        out.append(Lines.wrap("", "CAN'T SAY. The files do not tell enough to work it out."));
        out.append(Lines.wrap(head("missing"), missing));
        writeCautions(out, List.of());
        return out.toString();
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

    private void writeVisit(StringBuilder out, PartOffAnswer answer) {
        out.append('\n').append(Lines.wrap("", answer.subject().label()));
        out.append(Lines.wrap(head("now"), answer.verdictNow().word()));
        out.append(Lines.wrap(head("part off"), answer.verdictThen().word()));
        out.append(Lines.wrap(head("mass now"), mass(answer.weightNow())));
        out.append(Lines.wrap(head("part off"), mass(answer.weightThen())));
        out.append(Lines.wrap(head("balance"), move(answer)));
        List<FindingChange> worse = answer.changes(Kind.APPEARS, Kind.WORSE, Kind.CLOSER);
        List<FindingChange> open = answer.changes(Kind.UNANSWERED);
        List<Finding> told = new ArrayList<>();
        if (worse.isEmpty() && open.isEmpty()) {
            out.append(Lines.wrap(head("worse"), "nothing"));
        }
        for (FindingChange change : worse) {
            writeChange(out, change);
            change.after().ifPresent(told::add);
        }
        if (!open.isEmpty()) {
            out.append(Lines.wrap(head("worse"), "held before, and with the part off there is no answer: " + names(open)));
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

    private void writeChange(StringBuilder out, FindingChange change) {
        Finding then = change.after().orElseThrow();
        Optional<Finding> now = change.before();
        String what = now.isEmpty() ? "new: " + then.verdict().word()
                : change.kind() == Kind.CLOSER ? then.verdict().word() + " as before, with more asked"
                : now.get().verdict().word() + ", then " + then.verdict().word();
        out.append(Lines.wrap(head("worse"), what + ". " + FindingWords.reason(then)));
        now.map(before -> FindingWords.numbers(before, units)).filter(numbers -> !numbers.isEmpty())
                .ifPresent(numbers -> out.append(Lines.wrap(deep("now"), numbers)));
        writeDetails(out, new Alike(List.of(then)), "part off");
    }

    private void writeOthers(StringBuilder out, String head, List<Finding> findings, Verdict least) {
        List<Finding> told = findings.stream().filter(f -> f.verdict() != Verdict.HOLDS && f.verdict().compareTo(least) >= 0).toList();
        for (Alike alike : Alike.gather(told)) {
            out.append(Lines.wrap(head(head), alike.first().verdict().word() + ". " + alike.reason()));
            writeDetails(out, alike, "numbers");
        }
    }

    private void writeDetails(StringBuilder out, Alike alike, String numbersHead) {
        Finding finding = alike.first();
        alike.numbers(units).forEach(numbers -> out.append(Lines.wrap(deep(numbersHead), numbers)));
        if (!finding.situation().isEmpty()) {
            out.append(Lines.wrap(deep("when"), finding.situation()));
        }
        alike.missing().forEach(missing -> out.append(Lines.wrap(deep("missing"), missing)));
        alike.remedies().forEach(remedy -> out.append(Lines.wrap(deep(FindingWords.head(remedy)), FindingWords.remedy(alike.first(),
                remedy))));
        out.append(Lines.wrap(deep("rests on"), FindingWords.basis(finding) + " [" + finding.check() + "]"));
    }

    private String mass(Weight weight) {
        String known = BalanceWords.mass(weight.estimate(), units);
        return weight.missing().isEmpty() ? known : known + "; without " + String.join(", ", weight.missing());
    }

    private String move(PartOffAnswer answer) {
        Optional<EstimatedBalance> now = answer.weightNow().estimate();
        Optional<EstimatedBalance> then = answer.weightThen().estimate();
        if (now.isEmpty() || then.isEmpty()) {
            return "not known";
        }
        return BalanceWords.move(now.get().balance().point(), then.get().balance().point(), units);
    }

    private static void writeCautions(StringBuilder out, List<PartOffAnswer> answers) {
        out.append("\nCautions\n").append(Lines.wrap("  - ", CARE)).append(Lines.wrap("  - ", STIFFNESS));
        List<Finding> findings = answers.stream().flatMap(answer -> Stream.concat(answer.now().stream(), answer.then().stream()))
                .toList();
        FindingWords.cautions(findings).forEach(caution -> out.append(Lines.wrap("  - ", caution)));
    }

    private static String head(String word) {
        return String.format("  %-10s ", word);
    }

    private static String deep(String word) {
        return String.format("             %-9s ", word);
    }
}
