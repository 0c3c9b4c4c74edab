package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Arm C carries half of the shell, arms A and B a quarter each; the fourth arm is not used. */
class ArmLoadCheckTest {

    private static List<Finding> ask(double kilograms, Double lift, Double arm) {
        List<Finding> findings = Hung.onLift(kilograms, Optional.ofNullable(lift).map(SupportShop::measured),
                Optional.ofNullable(arm).map(SupportShop::measured))
                .ask(new ArmLoadCheck());
        assertEquals(List.of("arm-A", "arm-B", "arm-C"), findings.stream().map(Finding::objectId).toList());
        return findings;
    }

    @Test
    void theRatingOfTheArmComesFirst() {
        // 400 kg on arm C against 450, 440 and 399 kg: 0.889, 0.909 and 1.003.
        assertEquals(Verdict.HOLDS, ask(800, 100.0, 450.0).get(2).verdict());
        assertEquals(Verdict.TIGHT, ask(800, 100.0, 440.0).get(2).verdict());
        assertEquals(Verdict.STOP, ask(800, 9000.0, 399.0).get(2).verdict());
        assertEquals(200, ask(800, null, 450.0).get(0).demand().orElseThrow().si(), 1e-6);
    }

    @Test
    void elseAQuarterOfTheLift() {
        Finding finding = ask(800, 1596.0, null).get(2);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(399, finding.capacity().orElseThrow().si(), 1e-9);
        assertTrue(finding.ratedBy().contains("a quarter"));
        assertEquals(Verdict.HOLDS, ask(800, 1800.0, null).get(2).verdict());
    }

    @Test
    void cantSayWithoutAnyRating() {
        assertEquals(Verdict.CANT_SAY, ask(800, null, null).get(2).verdict());
    }

    @Test
    void saysNothingInStraps() {
        assertEquals(List.of(), Hung.inStraps(800, 1000, GearFacts.Mode.STRAIGHT).ask(new ArmLoadCheck()));
    }
}
