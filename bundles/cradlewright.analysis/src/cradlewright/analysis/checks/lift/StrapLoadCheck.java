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
import cradlewright.analysis.checks.InUseElsewhereKey;
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
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.lifting.LiftingFormulas;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Does each strap take what hangs in it? Never better than TIGHT. */
public final class StrapLoadCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public StrapLoadCheck() {
        super(new CheckInfo("lift.strap", "Does each strap take what hangs in it?", "EN 1492-1 and EN 1492-2, mode factors",
                Cautions.LIFTING,
                List.of("working load limit on the tag of each strap", "how it is slung", "mass and balance point",
                        "length of each strap where several meet in one hook"),
                List.of(LiftingFormulas.MODE_FACTOR, LiftingFormulas.HUNG_ON_LEGS, CoupledFormulas.ASSEMBLY,
                        CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY, ContactFormulas.GRADIENT_BOUNDS)),
                LoadedVisitCheck::atRest);
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().stream().anyMatch(support -> support.holder() instanceof Holder.InStrap);
    }

    @Override
    protected boolean answersWithoutLoads(Standing standing, Reader reader) {
        return reader.read(HookHangKey.of(standing)).filter(HookHang::answers).isPresent();
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
        Optional<HookHang> hook = reader.read(HookHangKey.of(standing));
        List<Finding> findings = new ArrayList<>();
        straps.forEach((strap, supports) -> {
            List<String> leans = hook.map(hang -> hang.missingAt(supports)).orElse(List.of());
            if (leans.isEmpty()) {
                StrapPull.of(strap, supports, hook, loads).ifPresentOrElse(
                        pull -> findings.add(judge(strap, pull, standing, used, subject, reader)),
                        () -> findings.add(falling(strap, subject)));
            } else {
                findings.add(finding(subject, strap.id(), strap.name()).situation("hanging still")
                        .cantSay("It leans, and how far does not follow from what is written down: it pulls harder than what hangs in it.",
                                leans));
            }
        });
        return findings;
    }

    private Finding falling(GearFacts.Strap strap, Subject subject) {
        return finding(subject, strap.id(), strap.name()).situation("hanging still").remedy(Remedy.advice(
                "Move the lift points further apart round the balance point, or take straps of other lengths."))
                .say(Verdict.STOP, "With straps as long as these it does not stay hanging: one goes slack and it rolls or tips.");
    }

    private Finding judge(GearFacts.Strap strap, StrapPull pull, Standing standing, Set<String> used, Subject subject, Reader reader) {
        FindingBuilder finding = finding(subject, strap.id(), strap.name()).situation("hanging still");
        pull.note(finding);
        if (strap.ratedLoad().isEmpty()) {
            return finding.cantSay("The working load limit of this strap is not in the files.",
                    List.of("working load limit of " + strap.name() + ": read it off its tag; without a tag the strap is scrap"));
        }
        finding.input("working load limit, straight pull", Amount.mass(strap.ratedLoad().get().si()), strap.ratedLoad().get()
                .source().word())
                .input("factor for how it is slung", Amount.ratio(pull.factor()), "EN 1492-1 and EN 1492-2");
        if (pull.factor() <= 0) {
            return finding.remedy(Remedy.advice(pull.onHook() ? "Use longer straps, or a beam that spreads them."
                    : "Bring the ends of the straps right above the lift points."))
                    .say(Verdict.STOP, "The strap leans too far from upright to be used so.");
        }
        Stated.mass(strap.ratedLoad().get()).against(finding, pull.carried(), pull.factor(), pull.ratedBy());
        if (pull.carried() > limit(strap, pull)) {
            finding.remediesOr(others(strap, pull, standing, used, reader), pull.onHook()
                    ? "Use longer straps of a higher working load limit: the flatter they lie, the harder they pull."
                    : "Use a strap of a higher working load limit.");
            PartsOff.remedies(standing).forEach(finding::remedy);
            return finding.say(Verdict.STOP, "More hangs in this strap than its tag allows.");
        }
        return finding.say(Verdict.TIGHT,
                "Its tag allows what hangs in it. A load in straps is never more than tight: nobody goes beneath it.");
    }

    private static double limit(GearFacts.Strap strap, StrapPull pull) {
        return strap.ratedLoad().map(load -> Stated.mass(load).low()).orElse(0.0) * pull.factor();
    }

    private static List<Remedy> others(GearFacts.Strap strap, StrapPull pull, Standing standing, Set<String> used, Reader reader) {
        List<Remedy> remedies = new ArrayList<>();
        Set<String> elsewhere = InUseElsewhereKey.during(standing, reader);
        for (String id : reader.read(new IdsKey<>(GearFacts.Strap.class))) {
            reader.read(new FactKey<>(GearFacts.Strap.class, id))
                    .filter(other -> !used.contains(id) && !elsewhere.contains(id)
                            && !other.examination().overdue(reader.read(new TodayKey())))
                    .filter(other -> other.legs().orElse(1) == strap.legs().orElse(1))
                    .map(other -> other.slung(strap.mode())).filter(other -> pull.carried() <= limit(other, pull))
                    .ifPresent(other -> remedies.add(Remedy.trial("Use " + other.name() + " here, slung the same way.", "strap",
                            Trial.records(Swap.contacts(standing, contact -> contact.carrierId().filter(strap.id()::equals).isPresent(),
                                    contact -> contact.withCarrier(id), other), strap.id()))));
        }
        return remedies;
    }
}
