package cradlewright.report.sheet;

import cradlewright.analysis.change.LiftAnswer;
import cradlewright.analysis.change.LiftQuestion;
import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.load.Carried;
import cradlewright.mechanics.formula.Constants;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Will the gear take the car as it is now? The mass, the share of each arm or strap, the reading at which to stop, then the reasons. */
public final class LiftSheet {

    private static final String SCALE_STOP = "lift.scale-stop";
    private static final String CARE = "Nobody beneath a car that hangs. Raise it a hand's breadth, look at every pad and strap, then "
            + "go on.";

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public LiftSheet(UnitSystem units) {
        this.units = units;
    }

    /** Writes what there is to say. */
    public Sheet write(LiftQuestion question, LiftAnswer answer) {
        SheetBuilder out = new SheetBuilder().title(title(question)).sentence(decision(answer.findings()));
        out.row("mass now", BalanceWords.mass(answer.weight(), units));
        answer.weight().estimate().map(estimate -> estimate.balance().point()).ifPresent(at -> out.row("balance",
                BalanceWords.along(at.x(), units) + ", " + BalanceWords.across(at.y(), units)));
        stop(answer.findings(), out);
        shares(question, answer, out);
        out.title("What there is to say about it");
        ReasonRows.addAll(out, answer.findings(), units);
        CautionLines.add(out, List.of(CARE), answer.findings());
        return out.build();
    }

    private static String title(LiftQuestion question) {
        return question.subject().label() + ", "
                + (question.setup().kind() == CarrierKind.LIFT ? "on " : "in straps from ")
                + question.gear().map(Fact::name).orElse("gear that nobody named") + " (" + question.setup().name() + ")";
    }

    private static String decision(List<Finding> findings) {
        Verdict worst = findings.isEmpty() ? Verdict.CANT_SAY : Verdict.worst(findings.stream().map(Finding::verdict).toList());
        return worst.word() + switch (worst) {
            case HOLDS -> ". Everything that was asked holds.";
            case TIGHT -> ". Read what is tight before you raise it.";
            case CANT_SAY -> ". Do not raise it before what is missing below is known.";
            case STOP -> ". Do not raise it so: mend what is named below first.";
        };
    }

    private void stop(List<Finding> findings, SheetBuilder out) {
        for (Finding finding : findings) {
            if (finding.check().equals(SCALE_STOP)) {
                List<Input> shown = finding.inputs().stream().filter(Input::shown).toList();
                shown.forEach(input -> out.row("stop at", units.text(input.amount()) + " on all scales together"));
                out.inner(shown.isEmpty() ? "missing" : "because", shown.isEmpty() ? String.join(", ", finding.missing())
                        : finding.words());
            }
        }
    }

    private void shares(LiftQuestion question, LiftAnswer answer, SheetBuilder out) {
        boolean arms = question.setup().kind() == CarrierKind.LIFT;
        out.title("What each " + (arms ? "arm" : "strap") + " takes, hanging still");
        if (!answer.loads().found()) {
            out.row("missing", answer.loads().reason());
        }
        for (Carried carried : answer.loads().supports()) {
            List<String> parts = new ArrayList<>(List.of(kilograms(carried.force()), "at most " + kilograms(carried.high())));
            if (!Double.isNaN(carried.least())) {
                parts.add("however arms and shell give " + kilograms(carried.least()) + " to " + kilograms(carried.most()));
            }
            out.row(holder(answer, carried), String.join(", ", parts));
        }
    }

    private static String holder(LiftAnswer answer, Carried carried) {
        return answer.standing().stream().flatMap(standing -> standing.supports().stream())
                .filter(support -> support.contactId().equals(carried.id()))
                .map(support -> carried.name() + ", " + support.holder().name()).findFirst().orElse(carried.name());
    }

    /** Tags and plates of lifting gear read in kg. */
    private String kilograms(double newtons) {
        return units.text(Amount.mass(Math.max(0, newtons) / Constants.GRAVITY));
    }
}
