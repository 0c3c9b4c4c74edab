package cradlewright.analysis.checks.stand;

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
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.mechanics.lifting.StandLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Does each stand take what rests on it, with the margin for uneven shares? */
public final class StandLoadCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public StandLoadCheck() {
        super(new CheckInfo("stand.load", "Does each stand take what rests on it?",
                "plate of the stand (ASME PASE); margin common practice, no source",
                Cautions.SUPPORTS + " Check each pin before the jack comes away.",
                List.of("rating on the plate of each stand, and whether it is for one or for a pair", "mass and balance point"),
                List.of(LiftingFormulas.STAND, CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return !StandUse.of(standing).isEmpty();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<StandUse> uses = StandUse.of(standing);
        Set<String> used = uses.stream().map(use -> use.gear().id()).collect(Collectors.toSet());
        List<Finding> findings = new ArrayList<>();
        for (StandUse use : uses) {
            loads.most(use.contactIds()).ifPresent(most -> findings.add(judge(use.gear(), most, standing, used, subject, reader)));
        }
        return findings;
    }

    private Finding judge(GearFacts gear, VisitLoads.Total most, Standing standing, Set<String> used, Subject subject, Reader reader) {
        double carried = Math.max(0, most.high()) / Constants.GRAVITY;
        FindingBuilder finding = finding(subject, gear.id(), gear.name()).situation(most.situation().words())
                .input("carries, masses as listed", Amount.mass(most.force() / Constants.GRAVITY), "worked out")
                .input("carries at most", Amount.mass(carried), "19 times in 20, any stiffness the shell may have");
        if (gear.ratedLoad().isEmpty()) {
            return finding.cantSay("The rating of " + gear.name() + " is not in the files.", List.of("rated load of "
                    + gear.name() + ": read it off its plate"));
        }
        if (gear instanceof GearFacts.Stand stand && stand.perPair().isEmpty()) {
            return finding.cantSay("The rating of " + gear.name() + " may be for one stand or for a pair.",
                    List.of("whether the plate of " + gear.name() + " speaks of one stand or of a pair"));
        }
        Optional<StandLoad> load = load(gear, carried);
        if (load.isEmpty()) {
            return finding.cantSay("The rating of " + gear.name() + " is no weight.", List.of("rated load of " + gear.name()
                    + ", above zero"));
        }
        Value stated = gear.ratedLoad().get();
        Stated.mass(stated).against(finding, asked(gear, carried), load.get().ratedEach() / stated.low(), ratedBy(gear));
        double margin = settings(reader).tightMargin();
        Verdict verdict = verdict(gear, carried, margin);
        if (verdict == Verdict.STOP) {
            finding.remediesOr(others(gear, carried, standing, used, reader),
                    "Use stands of a higher rating, or share the load among more of them.");
        }
        return finding.say(verdict, verdict == Verdict.STOP ? gear.name()
                + " carries more than its plate allows with the margin for uneven shares."
                : gear.name() + " takes what rests on it.");
    }

    /** A trailer carries the whole, so no margin for uneven shares stands on it. */
    private static double asked(GearFacts gear, double carried) {
        return gear instanceof GearFacts.Trailer ? carried : StandLoad.MARGIN * carried;
    }

    private static String ratedBy(GearFacts gear) {
        if (gear instanceof GearFacts.Trailer) {
            return "rated load on the plate";
        }
        boolean pair = gear instanceof GearFacts.Stand stand && stand.perPair().orElse(false);
        return (pair ? "half of the rated load of a pair on the plate" : "rated load on the plate")
                + ", against one and a half times what it carries";
    }

    private static Optional<StandLoad> load(GearFacts gear, double carried) {
        boolean pair = gear instanceof GearFacts.Stand stand && stand.perPair().orElse(true);
        return gear.ratedLoad().filter(rated -> rated.low() > 0)
                .map(rated -> new StandLoad(carried, rated.low(), pair ? StandLoad.RatedPer.PAIR : StandLoad.RatedPer.STAND));
    }

    private static Verdict verdict(GearFacts gear, double carried, double margin) {
        return load(gear, carried).map(load -> Verdict.of(asked(gear, carried), load.ratedEach(), margin))
                .orElse(Verdict.CANT_SAY);
    }

    private static List<Remedy> others(GearFacts gear, double carried, Standing standing, Set<String> used, Reader reader) {
        List<Remedy> remedies = new ArrayList<>();
        Set<String> elsewhere = InUseElsewhereKey.during(standing, reader);
        for (String id : reader.read(new IdsKey<>(GearFacts.Stand.class))) {
            reader.read(new FactKey<>(GearFacts.Stand.class, id))
                    .filter(stand -> !used.contains(id) && !elsewhere.contains(id) && stand.perPair().isPresent()
                            && !stand.examination().overdue(reader.read(new TodayKey()))
                            && verdict(stand, carried, settings(reader).tightMargin()).compareTo(Verdict.CANT_SAY) < 0)
                    .ifPresent(stand -> remedies.add(Remedy.trial("Use " + stand.name() + " here if its height fits.", "stand",
                            Trial.records(Swap.contacts(standing, contact -> contact.carrierId().filter(gear.id()::equals).isPresent(),
                                    contact -> contact.withCarrier(id)), gear.id()))));
        }
        return remedies;
    }
}
