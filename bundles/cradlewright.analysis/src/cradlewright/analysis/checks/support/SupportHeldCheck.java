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
import cradlewright.analysis.checks.RatedForce;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Does a bolted or pinned support hold when it is pulled or pushed sideways? Pull and sideways force together stand against the one
 * capacity of the fixture; pull at its unfavourable end, sideways force with the masses as listed.
 */
public final class SupportHeldCheck extends LoadedVisitCheck {

    /** Force below which a support is neither pulled nor pushed sideways, N. */
    private static final double NOTHING = 1;

    /** Pull and sideways force of one support in one situation, N. */
    private record Tug(Situation situation, double pull, double shear) {
        double size() {
            return Math.hypot(pull, shear);
        }
    }

    /** Creates the check. */
    public SupportHeldCheck() {
        super(new CheckInfo("support.held", "Does a bolted or pinned support hold when it is pulled or pushed sideways?",
                "rating of the fixture; load factor against a design resistance EN 1990 Table A1.2(B) (from memory)",
                Cautions.SUPPORTS + " " + Cautions.JOINTS, List.of("what each fixture can take and what that is rated by",
                        "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY, ContactFormulas.ENERGY, ContactFormulas.GRADIENT_BOUNDS)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().stream().anyMatch(support -> support.hold() != Hold.RESTS);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            if (support.hold() != Hold.RESTS) {
                hardest(support, loads).ifPresent(tug -> findings.add(judge(support, tug, standing, subject,
                        settings(reader))));
            }
        }
        return findings;
    }

    private static Optional<Tug> hardest(Support support, VisitLoads loads) {
        return loads.found().stream().flatMap(found -> found.support(support.contactId()).map(c -> tug(support, c,
                found.situation())).stream())
                .max(Comparator.comparingDouble(Tug::size));
    }

    private static Tug tug(Support support, Carried carried, Situation situation) {
        return new Tug(situation, support.hold() == Hold.BOLTED ? Math.max(0, -carried.low()) : 0, carried.shear());
    }

    private Finding judge(Support support, Tug tug, Standing standing, Subject subject, SettingsFacts settings) {
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation(tug.situation().words())
                .input("pulled by at most", Amount.force(tug.pull()), "19 times in 20, any stiffness the shell may have")
                .input("pushed sideways by", Amount.force(tug.shear()), "worked out, masses as listed");
        if (tug.size() < NOTHING) {
            return finding.say(Verdict.HOLDS, "It is neither pulled nor pushed sideways.");
        }
        Optional<RatedForce> rated = rated(support);
        if (rated.isEmpty()) {
            return finding.cantSay("It is pulled or pushed sideways, and what it can take so is not in the files.",
                    List.of("what the holder at " + support.name()
                            + " can take, and whether that is a working load limit, a rated load or a design resistance"));
        }
        rated.get().against(finding, tug.size());
        Verdict verdict = judgement(tug, rated.get(), settings.tightMargin());
        if (verdict != Verdict.HOLDS) {
            KeepOff.remedy(tug.situation(), standing, settings).ifPresent(finding::remedy);
        }
        if (verdict == Verdict.STOP) {
            finding.remedy(Remedy.advice("Fit a prop on the other side, or a fixture of a higher rating."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "It is pulled or pushed sideways harder than it is rated for."
                : "It holds the pull and the push sideways.");
    }

    private static Verdict judgement(Tug tug, RatedForce rated, double margin) {
        return Verdict.of(rated.demand(tug.size()), rated.low(), margin);
    }

    private static Optional<RatedForce> rated(Support support) {
        if (!(support.holder() instanceof Holder.OnFixture on)) {
            return Optional.empty();
        }
        FixtureFacts fixture = on.fixture();
        return fixture.capacity().flatMap(capacity -> fixture.basis().map(basis -> new RatedForce(capacity, basis)));
    }
}
