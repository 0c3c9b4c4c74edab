package cradlewright.analysis.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.quantity.Source;
import org.junit.jupiter.api.Test;

/** What is carried, and how well it is known (JCGM 100, 5.2.2; from memory: errors of one scale add linearly). */
class WeightKeyTest {

    private static EstimatedBalance ask(Source source, double guess) {
        VisitShop shop = new VisitShop(CarrierKind.FLOOR).part("body", new Value(300, 3, source), new Vec3(-1, 0, 0), 0)
                .part("engine", new Value(400, 4, source), new Vec3(1, 0, 0), 0)
                .part("boxes", new Value(50, guess, Source.GUESSED), new Vec3(1.0 / 7, 0, 0), 0);
        return shop.read(new WeightKey("car", "visit")).estimate().orElseThrow();
    }

    @Test
    void weighedPartsMayAllComeFromOneScale() {
        assertEquals(7, ask(Source.WEIGHED, 0).standard(Quantity.MASS), 1e-12);
        assertEquals(5, ask(Source.MAKERS_SHEET, 0).standard(Quantity.MASS), 1e-12);
        assertEquals(Math.hypot(7, 24), ask(Source.WEIGHED, 24).standard(Quantity.MASS), 1e-12);
    }

    @Test
    void theBalancePointIsAsUncertainAsOnTwoScales() {
        // Common balance point 1/7 m: 3 kg x (8/7)/750 m and 4 kg x (6/7)/750 m; on one scale they would cancel.
        assertEquals(Math.hypot(3 * 8 / 7.0, 4 * 6 / 7.0) / 750, ask(Source.WEIGHED, 0).standard(Quantity.X), 1e-12);
    }
}
