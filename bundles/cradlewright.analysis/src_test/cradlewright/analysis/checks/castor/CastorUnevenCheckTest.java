package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.quantity.Source;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 900 kg on castors at 0.8 m and 0.4 m, balance point at 0.15 m and 0.05 m towards one of them. Three-support statics: without
 * the castor
 * diagonally across that one carries 900 (0.5 + 0.05/0.8) = 506.25 kg (moments about the line through the other two; enumerated
 * by hand).
 */
class CastorUnevenCheckTest {

    private static final double WORST = 506.25;

    private static RollingShop shop(double rated) {
        return new RollingShop().weighs(760, 0).commonBalance(0.15, 0.05, 0.8).rated(Optional.of(RollingShop.measured(rated)));
    }

    private static Finding rearRight(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorUnevenCheck());
        assertEquals(4, findings.size(), findings::toString);
        return findings.get(3);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = rearRight(shop(WORST / 0.89));
        assertEquals(WORST, holds.demand().orElseThrow().si(), 1e-9 * WORST);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, rearRight(shop(WORST / 0.91)).verdict());
        assertEquals(Verdict.STOP, rearRight(shop(WORST / 1.01)).verdict());
    }

    @Test
    void tradeRuleStandsBeside() {
        // (140 + 760)/(4 - 1) = 300 kg.
        assertEquals(300, rearRight(shop(1000)).inputs().get(1).amount().si(), 1e-9);
    }

    @Test
    void knownStiffnessLeavesTheStopToTheLoads() {
        Finding remark = rearRight(shop(WORST / 1.01).stiffness(1e6));
        assertEquals(Verdict.TIGHT, remark.verdict());
        assertTrue(remark.demand().isEmpty() && remark.capacity().isEmpty(), "what is above the rating is no demand that reads as held");
        assertTrue(remark.inputs().stream().anyMatch(input -> input.shown() && Math.abs(input.amount().si() - WORST) < 1e-6 * WORST));
        assertEquals(Verdict.HOLDS, rearRight(shop(WORST / 0.89).stiffness(1e6)).verdict());
    }

    @Test
    void aRemarkShowsTheRatingThatCountsAndWhatItWasLoweredFrom() {
        // 520 kg like another castor's, give or take 2 x 20 kg: 480 kg count (JCGM 100, k = 2).
        Value likeAnother = new Value(520, 20, Source.LIKE_ANOTHER_CAR);
        Finding remark = rearRight(shop(520).rated(Optional.of(likeAnother)).stiffness(1e6));
        assertEquals(Verdict.TIGHT, remark.verdict());
        Map<String, Double> shown = new HashMap<>();
        remark.inputs().stream().filter(Input::shown).forEach(input -> shown.put(input.name(), input.amount().si()));
        assertEquals(520, shown.get("stated"), 1e-9);
        assertEquals(40, shown.get("less its give or take"), 1e-9);
        assertEquals(480, shown.get("rated load that counts"), 1e-9);
    }

    @Test
    void isTheBoundThatTheCoupledStaticsGive() {
        RollingShop shop = shop(1000);
        Loads rest = shop.read(new LoadsKey("car", "visit", Situation.atRest(), false));
        List<Finding> findings = shop.ask(new CastorUnevenCheck());
        for (int i = 0; i < 4; i++) {
            assertEquals(rest.castors().get(i).most() / 9.80665, findings.get(i).demand().orElseThrow().si(), 1e-6);
        }
    }

    @Test
    void theBalancePointCountsAtItsWorstPlace() {
        // Standard uncertainty 0.02 m of the shell: 0.04 x 760/900 m of both.
        double expected = scan(0.04 * 760 / 900);
        assertEquals(expected, rearRight(shop(1000).balanceOff(0.02)).demand().orElseThrow().si(), 1e-6 * expected);
    }

    /** Brute force: the greatest share of the castor at (0.8, 0.4) over balance points all round the circle of that radius. */
    private static double scan(double off) {
        double most = 0;
        for (int i = 0; i < 360_000; i++) {
            double angle = Math.PI * i / 180_000;
            most = Math.max(most, bound(0.15 + off * Math.cos(angle), 0.05 + off * Math.sin(angle)));
        }
        return most;
    }

    /** Largest load of the castor at (0.8, 0.4) that balances with no castor pulling: what its end and its side carry. */
    private static double bound(double x, double y) {
        return 900 * Math.min(0.5 + x / 1.6, 0.5 + y / 0.8);
    }

    @Test
    void largerCastorsAreProven() {
        List<Remedy> remedies = rearRight(shop(WORST / 1.01).has(RollingShop.type("larger", 600, 0.16))).remedies();
        assertEquals(Remedy.mends("Fit castors of the type larger all round. Their wheels are of another size: the dolly then stands at "
                + "another height.", Verdict.HOLDS), remedies.get(0));
    }

    @Test
    void cantSayWithoutRatingOrMass() {
        assertEquals(Verdict.CANT_SAY, rearRight(shop(1).rated(Optional.empty())).verdict());
        List<Finding> findings = new RollingShop().ask(new CastorUnevenCheck());
        assertEquals(List.of(Verdict.CANT_SAY), findings.stream().map(Finding::verdict).toList());
    }
}
