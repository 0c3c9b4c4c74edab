package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.testshop.FrameShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Rails of flat 60 x 10 on edge, I = 10 x 60^3/12 = 180 000 mm4, 2 m between their feet, a quarter of the shell 0.5 m from either end.
 * Sag at the middle P a (3 L2 - 4 a2)/(24 E I) (beam tables, any text on strength of materials, from memory), E = 210 GPa.
 */
class DollyShapeKeyTest {

    private static final double EI = 210e9 * 1.8e-7;
    private static final double A = FrameShop.ARM;
    private static final double L = 2;

    private static FrameShop shop(double kilograms) {
        return new FrameShop(FrameShop.flat("flat 60x10", 0.060, 0.010), 235e6, 360e6).weighs(kilograms);
    }

    private static DollyShape shape(FrameShop shop) {
        return shop.read(new DollyShapeKey("car", "visit", Situation.atRest())).orElseThrow();
    }

    private static DollyShape.Moved middle(DollyShape shape, String member) {
        return shape.members().stream().filter(bent -> bent.memberId().equals(member)).findFirst().orElseThrow().points().get(4);
    }

    @Test
    void theMiddleOfARailSagsAsABeamOnTwoSupports() {
        double p = 500 * 9.80665 / 4;
        double sag = p * A * (3 * L * L - 4 * A * A) / (24 * EI);
        for (String rail : new String[] {"left-1", "right-1"}) {
            DollyShape.Moved middle = middle(shape(shop(500)), rail);
            assertEquals(1, middle.at().x(), 1e-12);
            // 1 % for shear, the twisting of the members across and the weight of the dolly itself
            assertEquals(-sag, middle.by().z(), 0.01 * sag);
        }
        assertEquals(sag, shape(shop(500)).largest(), 0.01 * sag);
    }

    @Test
    void whatStandsOnTheFloorStaysWhereItIs() {
        DollyShape shape = shape(shop(500));
        Vec3 corner = shape.members().get(0).points().get(0).by();
        assertEquals(0, corner.z(), 1e-9);
        assertFalse(shop(500).read(new DollyShapeKey("car", "other", Situation.atRest())).isPresent());
        assertEquals(Optional.empty(), new FrameShop(FrameShop.flat("flat", 0.06, 0.01), 235e6, 360e6)
                .read(new DollyShapeKey("car", "visit", Situation.atRest())), "the mass is missing");
    }

    /** Twice the load, twice the sag, the dolly's own 1 kg left out. */
    @Test
    void itGrowsWithTheLoad() {
        double once = middle(shape(shop(300)), "left-1").by().z();
        double twice = middle(shape(shop(600)), "left-1").by().z();
        assertEquals(2, twice / once, 0.01);
        assertTrue(once < 0);
    }
}
