package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ScaleStopCheckTest {

    @Test
    void givesTheReadingWithGiveOrTake() {
        // 800 kg give or take 2 x 15 kg.
        List<Finding> findings = Hung.onLift(800, Optional.empty(), Optional.empty()).weighs(800, 15).ask(new ScaleStopCheck());
        assertEquals(1, findings.size());
        assertEquals(830, findings.get(0).inputs().get(2).amount().si(), 1e-9);
        assertEquals(Verdict.HOLDS, findings.get(0).verdict());
    }

    @Test
    void inStrapsNeverBetterThanTight() {
        assertEquals(Verdict.TIGHT, Hung.inStraps(800, 1000, GearFacts.Mode.STRAIGHT).ask(new ScaleStopCheck()).get(0).verdict());
    }

    @Test
    void saysNothingOnADollyOrWithoutAnyMass() {
        assertEquals(List.of(), new SupportShop(CarrierKind.DOLLY).weighs(800, 0).ask(new ScaleStopCheck()));
        assertEquals(List.of(), new SupportShop(CarrierKind.LIFT).ask(new ScaleStopCheck()));
    }
}
