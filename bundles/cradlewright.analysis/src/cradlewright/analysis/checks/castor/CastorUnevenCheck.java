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
import cradlewright.analysis.checks.DollyLoadCheck;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.castor.CastorRule;
import cradlewright.mechanics.formula.Constants;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Does each castor take the load of a dolly that an uneven floor leaves on three of them? */
public final class CastorUnevenCheck extends DollyLoadCheck {

    /** Creates the check. */
    public CastorUnevenCheck() {
        super(new CheckInfo("castor.uneven", "Does each castor take it when an uneven floor leaves the dolly on three of them?",
                "statics of three supports; trade rule from castor makers' selection guides", Cautions.CASTORS,
                List.of("rated load of each castor type", "place of each castor", "mass and balance point of car and dolly"),
                List.of(CastorFormulas.THREE_CARRY, CastorFormulas.TRADE_RULE)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return onCastors(standing);
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        List<Double> worst = WorstCastors.of(load);
        if (worst.isEmpty()) {
            return List.of();
        }
        boolean stiffnessKnown = load.wheels().stream().allMatch(wheel -> wheel.type().flatMap(CastorType::stiffness)
                .isPresent());
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < load.wheels().size(); i++) {
            findings.add(judge(load, i, worst, stiffnessKnown, standing, subject, reader));
        }
        return findings;
    }

    private Finding judge(DollyLoad load, int castor, List<Double> worstOfEach, boolean stiffnessKnown, Standing standing, Subject subject,
            Reader reader) {
        DollyLoad.Wheel wheel = load.wheels().get(castor);
        double worst = worstOfEach.get(castor) / Constants.GRAVITY;
        FindingBuilder finding = finding(subject, wheel.castor().id(), wheel.castor().name()).situation("on three castors")
                .input("car and dolly together, at most", Amount.mass(load.massHigh()), "19 times in 20")
                .input("asked of each castor by the trade rule",
                        Amount.mass(CastorRule.tradeRule(load.massHigh() - load.carriedHigh(), load.carriedHigh(), load.wheels()
                                .size())),
                        "total over one less than the number of castors, castor makers' selection guides");
        Optional<Value> rated = wheel.type().flatMap(CastorType::ratedLoad).filter(value -> value.low() > 0);
        if (rated.isEmpty()) {
            return finding.cantSay("What this castor is rated for is not in the files.",
                    List.of("type of castor " + wheel.castor().name() + " with its rated load: from its maker"));
        }
        double margin = settings(reader).tightMargin();
        Verdict rigid = Verdict.of(worst, Stated.mass(rated.get()).low(), margin);
        // With the give of every castor known, castor.load works out the hole that the shop has settled. What a still worse floor would do
        // is a remark then, not a demand that the castor has to meet.
        boolean remark = rigid == Verdict.STOP && stiffnessKnown;
        if (remark) {
            Stated counts = Stated.mass(rated.get());
            finding.shown("on any floor it may get", Amount.mass(worst), "statics of three supports");
            counts.note(finding).shown("rated load that counts", Amount.mass(counts.low()), counts.origin());
        } else {
            Stated.mass(rated.get()).against(finding, worst, "rated load of the castor");
        }
        Verdict verdict = remark ? Verdict.TIGHT : rigid;
        if (rigid != Verdict.HOLDS) {
            CastorTypes.stronger(standing, Collections.max(worstOfEach) / Constants.GRAVITY, margin, reader).forEach(finding::remedy);
        }
        if (rigid == Verdict.STOP) {
            finding.remedy(Remedy.advice("Roll it on even floors only, and look whether every castor touches."));
        }
        return finding.say(verdict, words(rigid, stiffnessKnown));
    }

    private static String words(Verdict rigid, boolean stiffnessKnown) {
        if (rigid != Verdict.STOP) {
            return "This castor takes it on any floor, however stiff the dolly.";
        }
        return stiffnessKnown
                ? "A floor more uneven than the shop has settled would put more on this castor than it is rated for."
                : "On an uneven floor this castor gets more than it is rated for.";
    }
}
