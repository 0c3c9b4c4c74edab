package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.FeetDown;
import cradlewright.analysis.checks.KeepOff;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.PartsOff;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.formula.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Does each castor take what it carries, also over a joint and with a castor in a hole? */
public final class CastorLoadCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public CastorLoadCheck() {
        super(new CheckInfo("castor.load", "Does each castor take what it carries, also over a joint or a hole?",
                "rated load of the maker (EN 12532 or EN 12530); factor over joints common practice, no source", Cautions.CASTORS,
                List.of("rated load and stiffness of each castor type", "mass and balance point of car and dolly",
                        "height of each support"),
                List.of(CoupledFormulas.ASSEMBLY, CoupledFormulas.STIFFNESS_SWEEP, ContactFormulas.ENERGY,
                        ContactFormulas.GRADIENT_BOUNDS,
                        CastorFormulas.JOINT_FACTOR, CastorFormulas.NORM_TEST)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.dolly().filter(dolly -> !dolly.castors().isEmpty() && !DollyLoad.onFeet(dolly)).isPresent();
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        DollyFacts dolly = standing.dolly().orElseThrow();
        List<Finding> findings = new ArrayList<>();
        for (CastorFacts castor : dolly.castors()) {
            CastorMost.of(loads, castor.id()).ifPresent(most -> findings.add(judge(castor, most, loads, standing, subject, reader)));
        }
        return findings;
    }

    private Finding judge(CastorFacts castor, CastorMost most, VisitLoads loads, Standing standing, Subject subject,
            Reader reader) {
        Optional<CastorType> type = castor.typeId().flatMap(id -> reader.read(new FactKey<>(CastorType.class, id)));
        double carried = kilograms(most.carried().high());
        FindingBuilder finding = finding(subject, castor.id(), castor.name()).situation(most.situation().words())
                .input("carries, masses as listed", Amount.mass(kilograms(most.carried().force())), "worked out")
                .input("carries at most", Amount.mass(carried), "19 times in 20, any stiffness the shell may have, the dolly as listed")
                .input("weight counts, times", Amount.ratio(most.situation().weightFactor()),
                        "settled by the shop; else common practice, no source");
        Optional<Value> rated = type.flatMap(CastorType::ratedLoad).filter(value -> value.low() > 0);
        if (rated.isEmpty()) {
            return finding.cantSay("What this castor is rated for is not in the files.", List.of(type.isEmpty()
                    ? "which type of castor " + castor.name() + " is" : "rated load of castor " + type.get().name()
                            + ": from its maker"));
        }
        Stated.mass(rated.get()).against(finding, carried, "rated load of the castor");
        if (type.get().stiffness().isEmpty()) {
            finding.input("give of the castor", Amount.ratio(1),
                    "taken as that of a common castor; its stiffness is not in the files");
        }
        double margin = settings(reader).tightMargin();
        Verdict verdict = Verdict.of(carried, Stated.mass(rated.get()).low(), margin);
        if (verdict != Verdict.HOLDS) {
            KeepOff.remedy(most.situation(), standing, settings(reader)).ifPresent(finding::remedy);
            FeetDown.remedy("Put the feet down.", standing).ifPresent(finding::remedy);
            CastorTypes.stronger(standing, mostOfAny(loads), margin, reader).forEach(finding::remedy);
        }
        if (verdict == Verdict.STOP) {
            PartsOff.remedies(standing).forEach(finding::remedy);
            finding.remedy(Remedy.advice("Move the load towards the other castors."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "This castor carries more than it is rated for."
                : "This castor takes what it carries.");
    }

    /** Other castors are of another stiffness, so the most that statics allow for any stiffness stands against their rating, kg. */
    private static double mostOfAny(VisitLoads loads) {
        return loads.found().stream().flatMap(found -> found.castors().stream())
                .mapToDouble(c -> kilograms(Math.max(c.high(), c.most() + c.high() - c.force()))).max().orElseThrow();
    }

    private static double kilograms(double newtons) {
        return Math.max(0, newtons) / Constants.GRAVITY;
    }
}
