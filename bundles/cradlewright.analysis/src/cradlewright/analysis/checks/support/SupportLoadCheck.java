package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.KeepOff;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.PartsOff;
import cradlewright.analysis.checks.RatedForce;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Does each fixture take what it carries? */
public final class SupportLoadCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public SupportLoadCheck() {
        super(new CheckInfo("support.load", "Does each fixture take what it carries?",
                "rating of the fixture; load factor against a design resistance EN 1990 Table A1.2(B) (from memory)",
                        Cautions.SUPPORTS,
                List.of("what each fixture can take and what that is rated by", "mass and balance point",
                        "height of each support"),
                List.of(CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().stream().anyMatch(support -> support.holder() instanceof Holder.OnFixture);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            Optional<VisitLoads.Total> most = loads.most(List.of(support.contactId()));
            if (support.holder() instanceof Holder.OnFixture on && most.isPresent()) {
                findings.add(judge(support, on.fixture(), most.get(), standing, subject, settings(reader)));
            }
        }
        return findings;
    }

    private Finding judge(Support support, FixtureFacts fixture, VisitLoads.Total most, Standing standing, Subject subject,
            SettingsFacts settings) {
        double carried = Math.max(0, most.high());
        FindingBuilder finding = finding(subject, fixture.id(), fixture.name()).situation(most.situation().words())
                .input("carries, masses as listed", Amount.force(most.force()), "worked out")
                .input("carries at most", Amount.force(carried), "19 times in 20, any stiffness the shell may have");
        if (fixture.capacity().isEmpty() || fixture.basis().isEmpty()) {
            return finding.cantSay("What this fixture can take is not in the files.", List.of(fixture.capacity().isEmpty()
                    ? "what " + fixture.name() + " can take: from its drawing or a test, or work it out"
                    : "what the number for " + fixture.name()
                            + " is rated by: working load limit, rated load or design resistance"));
        }
        RatedForce rated = new RatedForce(fixture.capacity().get(), fixture.basis().get());
        rated.against(finding, carried);
        Verdict verdict = Verdict.of(rated.demand(carried), rated.low(), settings.tightMargin());
        if (verdict != Verdict.HOLDS) {
            KeepOff.remedy(most.situation(), standing, settings).ifPresent(finding::remedy);
        }
        if (verdict == Verdict.STOP) {
            PartsOff.remedies(standing).forEach(finding::remedy);
            finding.remedy(Remedy.advice("Add a support, or fit a fixture of a higher rating."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "This fixture carries more than it is rated for."
                : "This fixture takes what it carries.");
    }
}
