package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.BraceFacts;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/** Is the opening braced before it is cut? */
public final class CutBracedCheck extends VisitCheck {

    /** Creates the check. */
    public CutBracedCheck() {
        super(new CheckInfo("support.cut-braced", "Is the opening braced before it is cut?", "common practice, no source",
                "Measure the openings before and after bracing and after each cut.", List.of("braces named for each planned cut"),
                List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        return standing.car().cutZones().stream().filter(CutZoneFacts::planned).map(cut -> examine(cut, standing.car(), subject)).toList();
    }

    private Finding examine(CutZoneFacts cut, CarFacts car, Subject subject) {
        FindingBuilder finding = finding(subject, cut.id(), cut.name());
        if (cut.braceIds().isEmpty()) {
            return finding.cantSay("No brace is named for this cut.",
                    List.of("the brace that keeps the opening in shape, or a note that none is needed"));
        }
        List<String> loose = cut.braceIds().stream().flatMap(id -> CarFacts.find(car.braces(), id).stream())
                .filter(brace -> !brace.fitted()).map(BraceFacts::name).toList();
        List<String> absent = cut.braceIds().stream().filter(id -> CarFacts.find(car.braces(), id).isEmpty()).toList();
        if (loose.isEmpty() && !absent.isEmpty()) {
            return finding.cantSay("A brace that is named for this cut is not in the file.",
                    absent.stream().map(id -> "the brace " + id + ": enter it, or name another one for " + cut.name()).toList());
        }
        if (!loose.isEmpty()) {
            return finding.remedy(Remedy.trial("Fit " + String.join(", ", loose) + " and take the aperture readings, then cut.",
                    Trial.records(Change.of(braced(cut, car)))))
                    .say(Verdict.STOP, "Not yet braced: " + String.join(", ", loose) + (loose.size() == 1 ? " is" : " are")
                    + " not fitted.");
        }
        return finding.say(Verdict.HOLDS, "Every brace named for this cut is fitted.");
    }

    private static CarFacts braced(CutZoneFacts cut, CarFacts car) {
        CarFacts braced = car;
        for (BraceFacts brace : car.braces()) {
            braced = cut.braceIds().contains(brace.id()) ? braced.with(brace.inPlace()) : braced;
        }
        return braced;
    }
}
