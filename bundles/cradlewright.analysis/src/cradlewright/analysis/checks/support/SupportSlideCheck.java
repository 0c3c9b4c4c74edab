package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.KeepOff;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.coupled.CoupledFormulas;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Does a support slide when somebody pushes? A support alone may slip while the others still hold; STOP is said when all that rest
 * together cannot hold the push. A turn about a support that holds is not looked at.
 */
public final class SupportSlideCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public SupportSlideCheck() {
        super(new CheckInfo("support.slide", "Does a support slide when somebody pushes?", "common practice, no source",
                Cautions.SUPPORTS,
                List.of("what each support carries", "where people lean or pull"), List.of(CoupledFormulas.ASSEMBLY)),
                        SupportSlideCheck::sideways);
    }

    private static boolean sideways(Situation situation) {
        return situation.push().map(SupportSlideCheck::sideways).orElse(0.0) > 0;
    }

    private static double sideways(Situation.Push push) {
        return Math.hypot(push.force().x(), push.force().y());
    }

    @Override
    protected boolean arises(Standing standing) {
        return !standing.lifted() && standing.supports().stream().anyMatch(support -> support.hold() == Hold.RESTS);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            if (support.hold() == Hold.RESTS) {
                worst(support, loads).ifPresent(worst -> findings.add(judge(support, worst, standing, subject,
                        settings(reader))));
            }
        }
        return findings;
    }

    private static Optional<Loads> worst(Support support, VisitLoads loads) {
        return loads.found().stream().filter(found -> found.support(support.contactId()).isPresent())
                .max(Comparator.comparingDouble(found -> lack(found.support(support.contactId()).orElseThrow())));
    }

    /** Sideways force that friction does not cover, N; below zero where it does. */
    private static double lack(Carried carried) {
        return carried.shear() - grip(carried);
    }

    private static double grip(Carried carried) {
        return Support.FRICTION * Math.max(0, carried.low());
    }

    private Finding judge(Support support, Loads worst, Standing standing, Subject subject, SettingsFacts settings) {
        Carried carried = worst.support(support.contactId()).orElseThrow();
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation(worst.situation().words())
                .input("friction", Amount.ratio(Support.FRICTION), "common practice, no source")
                .input("carries at least", Amount.force(Math.max(0, carried.low())), "19 times in 20, any stiffness of the shell")
                .input("sideways here", Amount.force(carried.shear()), "worked out").input("friction holds here",
                        Amount.force(grip(carried)), "worked out");
        Verdict verdict = verdict(carried, worst, standing, settings.tightMargin());
        compare(finding, carried, worst, standing, verdict);
        if (verdict == Verdict.HOLDS) {
            return finding.say(verdict, "Friction holds it.");
        }
        KeepOff.remedy(worst.situation(), standing, settings).ifPresent(finding::remedy);
        finding.remedy(Remedy.trial("Pin the shell at " + support.name() + ".", Trial.records(Swap.contacts(standing,
                contact -> contact.id().equals(support.contactId()), contact -> contact.withHold(Hold.PINNED)))));
        return finding.say(verdict, verdict == Verdict.STOP
                ? "The push slides the shell off its supports: friction does not hold it."
                : "Friction hardly holds it here; the other supports hold the rest of the push.");
    }

    /** Shows the pair of numbers that decided: here, or where the others help, the whole push against the friction of all. */
    private static void compare(FindingBuilder finding, Carried carried, Loads loads, Standing standing, Verdict verdict) {
        if (verdict == Verdict.STOP || carried.shear() <= grip(carried)) {
            finding.against(Amount.force(carried.shear()), Amount.force(grip(carried)), "friction, common practice, no source");
        } else if (standing.supports().stream().allMatch(support -> support.hold() == Hold.RESTS)) {
            finding.against(Amount.force(push(loads)), Amount.force(grip(loads)),
                    "friction of all supports together, common practice, no source");
        }
    }

    private static double push(Loads loads) {
        return loads.situation().push().map(SupportSlideCheck::sideways).orElse(0.0);
    }

    private static double grip(Loads loads) {
        return loads.supports().stream().mapToDouble(SupportSlideCheck::grip).sum();
    }

    private static Verdict verdict(Carried carried, Loads loads, Standing standing, double margin) {
        Verdict here = Verdict.of(carried.shear(), grip(carried), margin);
        if (here != Verdict.STOP) {
            return here;
        }
        boolean held = standing.supports().stream().anyMatch(support -> support.hold() != Hold.RESTS);
        return held || push(loads) <= grip(loads) ? Verdict.TIGHT : Verdict.STOP;
    }
}
