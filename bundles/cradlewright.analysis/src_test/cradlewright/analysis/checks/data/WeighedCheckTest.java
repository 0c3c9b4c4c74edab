package cradlewright.analysis.checks.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.lift.GuessedMassCheck;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.facts.WeighingFacts.Reading;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Four cells under a shell: 92 and 88 kg at 0.30 m, 71 and 69 kg at 2.10 m, 0.55 and 0.50 m off the middle, left first. By moments
 * 320 kg, 1.0875 m behind the zero, 0.0100 m to the left (own derivation: statics). With 0.5 kg on each reading u(m) = 1 kg.
 */
class WeighedCheckTest {

    private static Reading reading(double x, double y, double kilograms) {
        return new Reading(Optional.of(new Spot(new Vec3(x, y, 0), 0.002)), Optional.of(new Value(kilograms, 0.5, Source.WEIGHED)));
    }

    private static List<Reading> readings() {
        return List.of(reading(0.30, -0.55, 92), reading(0.30, 0.55, 88), reading(2.10, -0.50, 71), reading(2.10, 0.50, 69));
    }

    private static WeighingFacts weighing(String id, int day, String stage, List<Reading> readings) {
        return new WeighingFacts(id, id, Optional.of(LocalDateTime.of(2026, 3, day, 8, 0)), Optional.of(stage), Optional.empty(), readings);
    }

    private static VisitShop listed(double mass, double u, double x, Source source) {
        VisitShop shop = new VisitShop(CarrierKind.STRAPS).part("shell of the car", new Value(mass, u, source), new Vec3(x, -0.01, 0.4),
                0.005);
        shop.weighings.add(weighing("w", 2, "stage", readings()));
        return shop;
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new WeighedCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void holdsWhenListAndScalesAreAlike() {
        // 2 sqrt(1^2 + 3^2) = 6.3246 kg may lie between them; 6 kg do.
        Finding finding = only(listed(314, 3, 1.0875, Source.MAKERS_SHEET));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(6, finding.demand().orElseThrow().si(), 1e-9);
        assertEquals(6.324555, finding.capacity().orElseThrow().si(), 1e-6);
        assertEquals(List.of(314.0, 320.0), finding.inputs().stream().limit(2).map(input -> input.amount().si()).toList());
        assertEquals(1.0875, finding.inputs().get(3).amount().si(), 1e-12);
        assertEquals(-0.0100, finding.inputs().get(5).amount().si(), 1e-12);
    }

    @Test
    void cantSayWhenTheMassesLieFurtherApartThanIsKnown() {
        Finding finding = only(listed(313.6, 3, 1.0875, Source.MAKERS_SHEET));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.words().contains("the mass"), finding.words());
    }

    @Test
    void cantSayWhenTheBalancePointLiesElsewhere() {
        Finding finding = only(listed(320, 3, 1.15, Source.MAKERS_SHEET));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.words().contains("along the car"), finding.words());
        assertEquals(0.0625, finding.demand().orElseThrow().si(), 1e-12);
    }

    @Test
    void cantSayWhenAReadingLacksItsPlace() {
        VisitShop shop = listed(320, 3, 1.0875, Source.MAKERS_SHEET);
        shop.weighings.set(0, weighing("w", 2, "stage", List.of(readings().get(0),
                new Reading(Optional.empty(), Optional.of(new Value(88, 0.5, Source.WEIGHED))))));
        assertEquals(List.of("reading 2: where the scale touched"), only(shop).missing());
        shop.weighings.set(0, weighing("w", 2, "stage", List.of()));
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
    }

    @Test
    void theLastWeighingOfThisStageCounts() {
        VisitShop shop = listed(314, 3, 1.0875, Source.MAKERS_SHEET);
        shop.weighings.add(weighing("older", 1, "stage", List.of(reading(1, 0, 100))));
        shop.weighings.add(weighing("other", 9, "another stage", List.of(reading(1, 0, 100))));
        assertEquals("w", only(shop).objectId());
        assertEquals(Verdict.HOLDS, only(shop).verdict());
        shop.weighings.clear();
        assertEquals(List.of(), shop.ask(new WeighedCheck()));
    }

    @Test
    void aGuessThatTheScalesConfirmIsNoGuessAnyMore() {
        VisitShop guessed = listed(318, 50, 1.0875, Source.GUESSED);
        assertEquals(Verdict.HOLDS, guessed.ask(new GuessedMassCheck()).get(0).verdict());
        guessed.weighings.clear();
        assertEquals(Verdict.CANT_SAY, guessed.ask(new GuessedMassCheck()).get(0).verdict());
        VisitShop wrong = listed(200, 50, 1.0875, Source.GUESSED);
        assertEquals(Verdict.CANT_SAY, wrong.ask(new GuessedMassCheck()).get(0).verdict());
    }
}
