package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Castors at the corners of a rhombus: (0, 0), (2, -1), (2, 1), (4, 0). With the balance point on the line of the middle two
 * they carry it
 * alone, so off it by 0.2 m one has (1 + 0.2)/2 of the weight; at the corners of the box, 0.5 m before and behind, it has 0.475
 * (statics).
 */
class WorstCastorsTest {

    private static final DollyFacts DOLLY = new DollyFacts("d", "d", DollyFacts.Build.OWN, Optional.empty(), Optional.empty(),
            Optional.empty(),
            SupportShop.examined(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    private static DollyLoad.Wheel wheel(double x, double y) {
        return new DollyLoad.Wheel(new CastorFacts("c", "c", Optional.empty(), Optional.empty(), true, CastorFacts.Brake.NONE),
                new Vec3(x, y, 0), Optional.empty());
    }

    @Test
    void theWorstPlaceMayLieOnAnEdgeOfTheBox() {
        DollyLoad along = new DollyLoad(DOLLY, List.of(wheel(0, 0), wheel(2, -1), wheel(2, 1), wheel(4, 0)), 80, 80, 100, 110,
                new Vec3(2, 0, 1), new Vec3(0.5, 0.2, 0));
        assertEquals(0.6 * 110 * 9.80665, WorstCastors.of(along).get(1), 1e-9);
        DollyLoad across = new DollyLoad(DOLLY, List.of(wheel(0, 0), wheel(-1, 2), wheel(1, 2), wheel(0, 4)), 80, 80, 100, 110,
                new Vec3(0, 2, 1), new Vec3(0.2, 0.5, 0));
        assertEquals(0.6 * 110 * 9.80665, WorstCastors.of(across).get(1), 1e-9);
    }
}
