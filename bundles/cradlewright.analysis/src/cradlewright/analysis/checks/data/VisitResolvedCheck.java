package cradlewright.analysis.checks.data;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Does the visit name a stage, a setup and things that exist? */
public final class VisitResolvedCheck implements Check {

    private static final CheckInfo INFO = new CheckInfo("data.visit", "Do the files say what rests on what?", "common practice, no source",
            Cautions.DATA, List.of("stage and setup of the visit", "what each support rests on", "where each support is"), List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public Scope scope() {
        return Scope.VISIT;
    }

    @Override
    public List<Finding> examine(Subject subject, Reader reader) {
        String visitId = subject.visitId().orElseThrow();
        Optional<Standing> standing = reader.read(new StandingKey(subject.ownerId(), visitId));
        FindingBuilder finding = new FindingBuilder(INFO, subject, visitId, subject.label());
        if (standing.isEmpty()) {
            return List.of(finding.cantSay("This visit does not say which parts are on or what they rest on.",
                    List.of("stage and setup of this visit: choose both in the car's file")));
        }
        List<String> missing = new ArrayList<>(standing.get().missing());
        missing.addAll(unheld(standing.get()));
        if (!missing.isEmpty()) {
            return List.of(finding.cantSay("Some of what this visit rests on is not in the files.", missing));
        }
        return List.of(finding.say(Verdict.HOLDS, "Stage, setup and supports are all named and found."));
    }

    /** Returns the contacts that name nothing below them; on the floor there is nothing to name. */
    private static List<String> unheld(Standing standing) {
        if (standing.carrier() == CarrierKind.FLOOR || standing.carrier() == CarrierKind.AWAY) {
            return List.of();
        }
        return standing.setup().contacts().stream().filter(contact -> contact.carrierId().isEmpty())
                .map(contact -> contact.name() + ": what it rests on (choose it in the car's file)").toList();
    }
}
