package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.LiftOff;
import cradlewright.analysis.load.LiftOffKey;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.List;

/** How far may a support sink until it carries nothing? Asked where more than three fixtures hold the shell. */
public final class SupportLiftOffCheck extends LoadedVisitCheck {

    /** Sinking that no feeler tells from none, m: then it is as good as off already. */
    private static final double NONE_LEFT = 5e-5;

    /** Creates the check. */
    public SupportLiftOffCheck() {
        super(new CheckInfo("support.lift-off", "How far may a support sink until it carries nothing?",
                "allowed twist of the shop, common practice, no source",
                Cautions.SUPPORTS, List.of("give of each support", "torsional stiffness of the shell", "mass and balance point"),
                List.of(ContactFormulas.LOAD_PATH, CoupledFormulas.ASSEMBLY, CoupledFormulas.SHELL_TWIST)),
                        LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().size() > 3 && standing.supports().stream()
                .allMatch(support -> support.holder() instanceof Holder.OnFixture);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        double tolerance = settings(reader).shimTolerance().working();
        List<Finding> findings = new ArrayList<>();
        Loads rest = loads.atRest().orElseThrow();
        for (LiftOff answer : reader.read(new LiftOffKey(subject.ownerId(), standing.visit().id()))) {
            standing.supports().stream().filter(support -> support.contactId().equals(answer.contactId())).findFirst()
                    .ifPresent(support -> findings.add(judge(support, answer,
                            rest.support(support.contactId()).filter(carried -> carried.force() > 0).isPresent(), tolerance, subject)));
        }
        return findings;
    }

    private Finding judge(Support support, LiftOff answer, boolean loaded, double tolerance, Subject subject) {
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation("at rest")
                .input("allowed twist while working", Amount.length(tolerance), "settled by the shop");
        answer.soft().ifPresent(soft -> finding.input("may sink with the softest shell", Amount.length(soft), "worked out"));
        if (answer.stiff().isEmpty()) {
            return finding.say(Verdict.HOLDS, "No sinking that matters takes its load off.");
        }
        double stiff = answer.stiff().getAsDouble();
        finding.input("may sink with the stiffest shell", Amount.length(stiff), "worked out")
                .atLeast(Amount.length(tolerance), Amount.length(stiff), "sinking that takes its load off");
        if (stiff >= tolerance) {
            return finding.say(Verdict.HOLDS, "It still carries when it sinks by the twist that is allowed while working.");
        }
        if (stiff < NONE_LEFT) {
            return none(finding, support, loaded);
        }
        boolean always = answer.soft().isPresent() && answer.soft().getAsDouble() < tolerance;
        return finding.remedy(Remedy.advice(always ? "Look at the stack at " + support.name()
                + " every day, or put a softer pad there."
                : "Measure the torsional stiffness of the shell, or put softer pads under it.")).say(Verdict.TIGHT, always
                        ? "It carries nothing once it sinks by less than the twist that is allowed while working."
                        : "If the shell is stiff, it carries nothing once it sinks by less than the twist that is allowed while working.");
    }

    private static Finding none(FindingBuilder finding, Support support, boolean loaded) {
        return loaded ? finding.remedy(Remedy.advice("Shim up " + support.name() + " until it carries more, or put a softer pad there."))
                .say(Verdict.STOP, "If the shell is stiff, what it carries is gone with the least sinking.")
                : finding.remedy(Remedy.advice("Measure the gap at " + support.name() + " with feelers and close it with shims."))
                        .say(Verdict.STOP, "If the shell is stiff, it carries nothing even as it stands.");
    }
}
