package cradlewright.analysis.checks.lift;

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
import cradlewright.analysis.checks.PartsOff;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.mechanics.lifting.SlingModeFactor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Does each strap take what hangs in it? Never better than TIGHT. */
public final class StrapLoadCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public StrapLoadCheck() {
        super(new CheckInfo("lift.strap", "Does each strap take what hangs in it?", "EN 1492-1 and EN 1492-2, mode factors",
                Cautions.LIFTING,
                List.of("working load limit on the tag of each strap", "how it is slung", "mass and balance point"),
                List.of(LiftingFormulas.MODE_FACTOR, CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP,
                        ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS)), LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().stream().anyMatch(support -> support.holder() instanceof Holder.InStrap);
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        Map<GearFacts.Strap, List<Support>> straps = new LinkedHashMap<>();
        for (Support support : standing.supports()) {
            if (support.holder() instanceof Holder.InStrap in) {
                straps.computeIfAbsent(in.strap(), strap -> new ArrayList<>()).add(support);
            }
        }
        Set<String> used = straps.keySet().stream().map(GearFacts.Strap::id).collect(Collectors.toSet());
        List<Finding> findings = new ArrayList<>();
        straps.forEach((strap, supports) -> {
            List<String> leans = HookLegs.missing(supports, standing);
            if (leans.isEmpty()) {
                loads.most(supports.stream().map(Support::contactId).toList()).ifPresent(most -> findings.add(judge(strap, lean(supports),
                        most, oneLeg(strap, supports, loads), standing, used, subject, reader)));
            } else {
                findings.add(finding(subject, strap.id(), strap.name()).situation("hanging still")
                        .cantSay("It leans, and nobody wrote down how far: it pulls harder than what hangs in it.", leans));
            }
        });
        return findings;
    }

    /**
     * What the hardest leg of a sling with several legs asks of the whole tag, N: each leg takes at most its part of what the tag
     * allows for all of them. Common practice, no source; the rules of the sling standards allow somewhat more.
     */
    private static double oneLeg(GearFacts.Strap strap, List<Support> supports, VisitLoads loads) {
        int legs = strap.legs().orElse(1);
        return legs < 2 ? 0 : legs * supports.stream().flatMap(s -> loads.most(List.of(s.contactId())).stream())
                .mapToDouble(VisitLoads.Total::high).max().orElse(0);
    }

    /** Largest lean of the pull from upright, rad. */
    private static double lean(List<Support> supports) {
        return supports.stream().mapToDouble(s -> Math.acos(Math.max(0, Math.min(1, s.normal().z())))).max().orElse(0);
    }

    private Finding judge(GearFacts.Strap strap, double lean, VisitLoads.Total most, double oneLeg, Standing standing,
            Set<String> used, Subject subject, Reader reader) {
        double carried = Math.max(0, Math.max(most.high(), oneLeg)) / Constants.GRAVITY;
        FindingBuilder finding = finding(subject, strap.id(), strap.name()).situation("hanging still")
                .input("carries, masses as listed", Amount.mass(most.force() / Constants.GRAVITY), "worked out")
                .input("carries at most", Amount.mass(carried), "19 times in 20, any stiffness of the shell");
        if (strap.legs().orElse(1) > 1) {
            finding.input("legs", Amount.ratio(strap.legs().getAsInt()),
                    "each takes at most its part of the tag, common practice, no source");
        }
        if (strap.ratedLoad().isEmpty()) {
            return finding.cantSay("The working load limit of this strap is not in the files.",
                    List.of("working load limit of " + strap.name() + ": read it off its tag; without a tag the strap is scrap"));
        }
        double factor = SlingModeFactor.factor(mode(strap), lean);
        finding.input("working load limit, straight pull", Amount.mass(strap.ratedLoad().get().si()), strap.ratedLoad().get()
                .source().word())
                .input("factor for how it is slung", Amount.ratio(factor), "EN 1492-1 and EN 1492-2");
        if (factor <= 0) {
            return finding.remedy(Remedy.advice("Bring the ends of the straps right above the lift points."))
                    .say(Verdict.STOP, "The strap leans too far from upright to be used so.");
        }
        Stated.mass(strap.ratedLoad().get()).against(finding, carried, factor,
                "working load limit on the tag times the factor for how it is slung");
        if (carried > limit(strap, lean)) {
            finding.remediesOr(others(strap, lean, carried, standing, used, reader), "Use a strap of a higher working load limit.");
            PartsOff.remedies(standing).forEach(finding::remedy);
            return finding.say(Verdict.STOP, "More hangs in this strap than its tag allows.");
        }
        return finding.say(Verdict.TIGHT,
                "Its tag allows what hangs in it. A load in straps is never more than tight: nobody goes beneath it.");
    }

    private static double limit(GearFacts.Strap strap, double lean) {
        return strap.ratedLoad().map(load -> Stated.mass(load).low()).orElse(0.0) * SlingModeFactor.factor(mode(strap), lean);
    }

    /** Nobody writes down how far the two sides of a basket spread, so they are taken as spread, never as upright. */
    private static SlingModeFactor.Mode mode(GearFacts.Strap strap) {
        return switch (strap.mode()) {
            case STRAIGHT -> SlingModeFactor.Mode.STRAIGHT;
            case CHOKED -> SlingModeFactor.Mode.CHOKED;
            case BASKET -> SlingModeFactor.Mode.BASKET;
        };
    }

    private static List<Remedy> others(GearFacts.Strap strap, double lean, double carried, Standing standing, Set<String> used,
            Reader reader) {
        List<Remedy> remedies = new ArrayList<>();
        for (String id : reader.read(new IdsKey<>(GearFacts.Strap.class))) {
            reader.read(new FactKey<>(GearFacts.Strap.class, id))
                    .filter(other -> !used.contains(id) && !other.examination().overdue(reader.read(new TodayKey())))
                    .map(other -> other.slung(strap.mode())).filter(other -> carried <= limit(other, lean))
                    .ifPresent(other -> remedies.add(Remedy.trial("Use " + other.name() + " here, slung the same way.", "strap",
                            Trial.records(Swap.contacts(standing, contact -> contact.carrierId().filter(strap.id()::equals).isPresent(),
                                    contact -> contact.withCarrier(id), other), strap.id()))));
        }
        return remedies;
    }
}
