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
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.RaisedKey;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.quantity.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Does every support carry its share at rest? Stands, pads of a lift and straps have checks of their own, with the same limit: a support
 * that presses with less than a tenth of the mean can slip out or be pushed out, on a dolly as on a lift.
 */
public final class SupportLightCheck extends LoadedVisitCheck {

    /** Force below which a support carries nothing, N. */
    private static final double NOTHING = 1;
    /** Share of the mean below which a support is light: common practice, no source. */
    private static final double LIGHT = 0.10;
    /** Height up to which shims are tried, m. */
    private static final double HIGHEST = 0.010;
    /** Step that is tried when there are no shims in stock, m. */
    private static final double STEP = 0.0005;

    /** Shims to lay, in words and as records, and their height. */
    private record Lift(double height, String words, Trial trial) {
    }

    /** Creates the check. */
    public SupportLightCheck() {
        super(new CheckInfo("support.light", "Does every support carry its share at rest?", "common practice, no source",
                Cautions.SUPPORTS,
                List.of("heights or gaps of all supports", "give of each support", "mass and balance point"),
                List.of(CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS)),
                LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return !standing.lifted() && standing.supports().stream().anyMatch(SupportLightCheck::asked);
    }

    private static boolean asked(Support support) {
        return support.hold() != Hold.BOLTED && !(support.holder() instanceof Holder.OnStand);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        Loads rest = loads.atRest().orElseThrow();
        for (Support support : standing.supports()) {
            if (asked(support)) {
                rest.support(support.contactId()).ifPresent(c -> findings.add(judge(support, c, rest, standing, loads.meanAtRest(),
                        subject, reader)));
            }
        }
        return findings;
    }

    private Finding judge(Support support, Carried carried, Loads rest, Standing standing, double mean, Subject subject,
            Reader reader) {
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation("at rest")
                .input("carries, masses as listed", Amount.force(carried.force()), "worked out")
                .input("carries at least", Amount.force(carried.low()), "19 times in 20, any stiffness the shell may have")
                .input("mean of all supports", Amount.force(mean), "worked out")
                .input("gap under it before it settles", Amount.length(support.gap()), support.gapFrom().words());
        double margin = settings(reader).tightMargin();
        Verdict verdict = verdict(carried.force(), carried.low(), mean, margin);
        finding.atLeast(Amount.force(LIGHT * mean), Amount.force(Math.max(0, carried.low())),
                "what it carries at least, against a tenth of the mean");
        if (verdict == Verdict.HOLDS) {
            return finding.say(verdict, "It carries its share.");
        }
        List<Lift> lifts = lifts(support, standing, reader);
        List<Map<String, Double>> after = reader.read(new RaisedKey(subject.ownerId(), subject.visitId().orElseThrow(),
                support.contactId(),
                lifts.stream().map(Lift::height).toList()));
        shim(support, carried, rest, lifts, after, then -> verdict(then, then - (carried.force() - carried.low()), mean, margin), mean)
                .ifPresentOrElse(finding::remedy,
                () -> finding.remedy(Remedy.advice("Measure the gap at " + support.name()
                        + " with feelers and close it with shims.")));
        if (verdict == Verdict.STOP && carried.force() >= LIGHT * mean && support.gapU() > 0) {
            finding.remedy(Remedy.advice("Find the heights more closely: once it is set down, measure the gaps under all supports with"
                    + " feelers."));
        }
        String share = taker(support, rest, after).map(name -> " " + name + " takes its share.").orElse("");
        return finding.say(verdict, (carried.force() < NOTHING ? "It carries nothing."
                : carried.force() < LIGHT * mean ? "It is light."
                : verdict == Verdict.STOP ? "It may be light at the unfavourable end of what is known." : "It carries its share, hardly.")
                        + share);
    }

    private static Verdict verdict(double force, double low, double mean, double margin) {
        return force < NOTHING ? Verdict.STOP : Verdict.of(LIGHT * mean, Math.max(0, low), margin);
    }

    /** Without shims in the files, the gap under the support is what shows that it is raised. */
    private static Trial raised(Support support, Standing standing, double height) {
        return Trial.records(Swap.contacts(standing, contact -> contact.id().equals(support.contactId()), contact -> contact.withGap(
                new Value(support.gap() - height, support.gapU(), Source.DERIVED))));
    }

    private static List<Lift> lifts(Support support, Standing standing, Reader reader) {
        List<Lift> lifts = new ArrayList<>();
        for (StockShims.Stack stack : StockShims.under(support, HIGHEST, reader)) {
            lifts.add(new Lift(stack.height(), "Lay " + stack.words() + " under " + support.name() + ".", stack.under(support, standing)));
        }
        if (lifts.isEmpty()) {
            for (int steps = 1; steps * STEP <= HIGHEST; steps++) {
                lifts.add(new Lift(steps * STEP, "Raise " + support.name() + " by " + steps + (steps == 1 ? " step" : " steps")
                        + " of half a millimetre.", raised(support, standing, steps * STEP)));
            }
        }
        return lifts;
    }

    /** The lowest stack that gives the support its share without making another one light, else the lowest that makes it better. */
    private static Optional<Remedy> shim(Support support, Carried carried, Loads rest, List<Lift> lifts,
            List<Map<String, Double>> after, DoubleFunction<Verdict> verdict, double mean) {
        Verdict now = verdict.apply(carried.force());
        Optional<Remedy> better = Optional.empty();
        for (int i = 0; i < after.size(); i++) {
            Map<String, Double> forces = after.get(i);
            if (!forces.isEmpty() && othersKeep(forces, support, rest, mean)) {
                Verdict then = verdict.apply(forces.get(support.contactId()));
                Optional<Remedy> found = Optional.of(Remedy.trial(lifts.get(i).words(), lifts.get(i).trial()));
                if (then == Verdict.HOLDS) {
                    return found;
                }
                better = better.isEmpty() && then.compareTo(now) < 0 ? found : better;
            }
        }
        return better;
    }

    private static boolean othersKeep(Map<String, Double> forces, Support support, Loads rest, double mean) {
        return rest.supports().stream().filter(other -> !other.id().equals(support.contactId()))
                .allMatch(other -> forces.get(other.id()) >= Math.min(other.force(), LIGHT * mean) - NOTHING);
    }

    /** The support that loses most when this one is raised. */
    private static Optional<String> taker(Support support, Loads rest, List<Map<String, Double>> after) {
        Optional<Map<String, Double>> raised = after.stream().filter(forces -> !forces.isEmpty()).findFirst();
        return raised.flatMap(forces -> rest.supports().stream().filter(other -> !other.id().equals(support.contactId()))
                .max(Comparator.comparingDouble(other -> other.force() - forces.get(other.id())))
                .filter(other -> other.force() - forces.get(other.id()) > NOTHING)).map(Carried::name);
    }
}
