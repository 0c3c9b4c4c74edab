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

    private static final String FRICTION = "friction, settled by the shop or common practice, no source";

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
        SettingsFacts settings = settings(reader);
        Grip grip = new Grip(settings.friction().low(), standing, settings.tightMargin());
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            if (support.hold() == Hold.RESTS) {
                worst(support, grip, loads).ifPresent(worst -> findings.add(judge(support, worst, grip, subject, settings)));
            }
        }
        return findings;
    }

    private static Optional<Loads> worst(Support support, Grip grip, VisitLoads loads) {
        return loads.found().stream().filter(found -> found.support(support.contactId()).isPresent())
                .max(Comparator.comparingDouble(found -> {
                    Carried carried = found.support(support.contactId()).orElseThrow();
                    return carried.shear() - grip.of(carried);
                }));
    }

    private Finding judge(Support support, Loads worst, Grip grip, Subject subject, SettingsFacts settings) {
        Carried carried = worst.support(support.contactId()).orElseThrow();
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation(worst.situation().words())
                .input("friction, at least", Amount.ratio(grip.friction()), "settled by the shop, else common practice, no source")
                .input("carries at least", Amount.force(Math.max(0, carried.low())), "19 times in 20, any stiffness the shell may have")
                .input("sideways here", Amount.force(carried.shear()), "worked out").input("friction holds here",
                        Amount.force(grip.of(carried)), "worked out");
        Verdict verdict = grip.verdict(carried, worst);
        compare(finding, carried, worst, grip, verdict);
        if (verdict == Verdict.HOLDS) {
            return finding.say(verdict, "Friction holds it.");
        }
        KeepOff.remedy(worst.situation(), grip.standing(), settings).ifPresent(finding::remedy);
        finding.remedy(Remedy.trial("Pin the shell at " + support.name() + ".", Trial.records(Swap.contacts(grip.standing(),
                contact -> contact.id().equals(support.contactId()), contact -> contact.withHold(Hold.PINNED)))));
        if (verdict == Verdict.STOP && grip.at(settings.friction().high()).verdict(carried, worst) != Verdict.STOP) {
            finding.remedy(Remedy.advice("Pull at an empty pad with a spring balance and settle a narrower range of friction: "
                    + "at the better end of the range it would be held."));
        }
        return finding.say(verdict, verdict == Verdict.STOP
                ? "The push slides the shell off its supports: friction does not hold it."
                : "Friction hardly holds it here; the other supports hold the rest of the push.");
    }

    /** Shows the pair of numbers that decided: here, or where the others help, the whole push against the friction of all. */
    private static void compare(FindingBuilder finding, Carried carried, Loads loads, Grip grip, Verdict verdict) {
        if (verdict == Verdict.STOP || carried.shear() <= grip.of(carried)) {
            finding.against(Amount.force(carried.shear()), Amount.force(grip.of(carried)), FRICTION);
        } else if (grip.standing().supports().stream().allMatch(support -> support.hold() == Hold.RESTS)) {
            finding.against(Amount.force(push(loads)), Amount.force(grip.ofAll(loads)), FRICTION + ", of all supports together");
        }
    }

    private static double push(Loads loads) {
        return loads.situation().push().map(SupportSlideCheck::sideways).orElse(0.0);
    }

    /**
     * What friction holds.
     *
     * @param friction sideways force over push
     * @param standing the visit
     * @param margin share from which an answer reads TIGHT
     */
    private record Grip(double friction, Standing standing, double margin) {

        Grip at(double other) {
            return new Grip(other, standing, margin);
        }

        /** Returns what friction holds at one support, N. */
        double of(Carried carried) {
            return friction * Math.max(0, carried.low());
        }

        /** Returns what friction holds at all supports together, N. */
        double ofAll(Loads loads) {
            return loads.supports().stream().mapToDouble(this::of).sum();
        }

        Verdict verdict(Carried carried, Loads loads) {
            Verdict here = Verdict.of(carried.shear(), of(carried), margin);
            if (here != Verdict.STOP) {
                return here;
            }
            boolean held = standing.supports().stream().anyMatch(support -> support.hold() != Hold.RESTS);
            return held || push(loads) <= ofAll(loads) ? Verdict.TIGHT : Verdict.STOP;
        }
    }
}
