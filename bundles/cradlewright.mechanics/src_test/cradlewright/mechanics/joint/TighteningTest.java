package cradlewright.mechanics.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.verify.CheckValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TighteningTest {

    private static final CheckValues VALUES = CheckValues.load("joint");
    private static final double FOOT_POUND_FORCE = 1.3558179483314;

    @Test
    void torqueFactor() {
        double proof = Tightening.proofLoad(BoltSize.M10, BoltGrade.G8_8);
        VALUES.check("D7b.proof", proof / 1e3);
        VALUES.check("D7.proof.published-8.8", proof / 1e3);
        VALUES.check("D7.proof.published-10.9", Tightening.proofLoad(BoltSize.M10, BoltGrade.G10_9) / 1e3);
        double preload = Tightening.reusedPreload(BoltSize.M10, BoltGrade.G8_8);
        VALUES.check("D7b.preload", preload / 1e3);
        VALUES.check("D7b.torque", Tightening.torque(Tightening.K_DRY, preload, 0.010));
        VALUES.check("D7.k-dry", Tightening.K_DRY);
        VALUES.check("D7.k-oiled", Tightening.K_LUBRICATED);
    }

    /** Numbers printed by others than the source of the formula. */
    @Test
    void secondSources() {
        for (BoltGrade grade : BoltGrade.values()) {
            for (BoltSize size : BoltSize.values()) {
                VALUES.check("second.proof." + size + "-" + grade.label(), Tightening.proofLoad(size, grade) / 1e3);
            }
        }
        for (BoltSize size : new BoltSize[] {BoltSize.M10, BoltSize.M12, BoltSize.M16}) {
            double preload = Tightening.reusedPreload(size, BoltGrade.G8_8);
            VALUES.check("second.torque." + size + ".dry",
                    Tightening.torque(Tightening.K_DRY, preload, size.diameter()) / FOOT_POUND_FORCE);
            VALUES.check("second.torque." + size + ".oiled",
                    Tightening.torque(Tightening.K_LUBRICATED, preload, size.diameter()) / FOOT_POUND_FORCE);
        }
    }

    @Test
    void frictionForm() {
        for (BoltSize size : BoltSize.values()) {
            double preload = Tightening.yieldPreload(size, BoltGrade.G8_8, 0.12);
            double torque = Tightening.torque(size, preload, 0.12, 0.12);
            VALUES.check("D9." + size + ".preload", preload / 1e3);
            VALUES.check("D9." + size + ".torque", torque);
            if (size != BoltSize.M14) {
                VALUES.check("D9." + size + ".published", torque);
            }
        }
    }

    /** Another route: the exact screw, wedge of 60 degree flanks, in place of the linear form; the two agree to first order. */
    @Test
    void frictionFormAgreesWithTheWedge() {
        for (BoltSize size : BoltSize.values()) {
            double d2 = size.pitchDiameter();
            double lead = Math.atan(size.pitch() / (Math.PI * d2));
            double friction = Math.atan(0.12 / Math.cos(Math.toRadians(30)));
            double wedge = d2 / 2 * Math.tan(lead + friction) + size.meanFrictionDiameter() / 2 * 0.12;
            assertEquals(wedge, Tightening.torque(size, 1, 0.12, 0.12), 0.01 * wedge, size + " against the wedge formula");
        }
    }

    @Property(seed = "99", tries = 200)
    void moreFrictionMoreTorqueLessPreload(@ForAll BoltSize size, @ForAll BoltGrade grade,
            @ForAll @DoubleRange(min = 0.04, max = 0.2) double mu, @ForAll @DoubleRange(min = 1.01, max = 2) double more) {
        assertTrue(Tightening.yieldPreload(size, grade, mu * more) < Tightening.yieldPreload(size, grade, mu));
        assertTrue(Tightening.torque(size, 1e4, mu * more, mu) > Tightening.torque(size, 1e4, mu, mu));
        assertTrue(Tightening.torque(size, 1e4, mu, mu * more) > Tightening.torque(size, 1e4, mu, mu));
        assertTrue(Tightening.yieldPreload(size, grade, mu) < 0.9 * grade.yieldStrength() * size.shankArea());
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Tightening.torque(0.502, 1e4, 0.01));
        assertEquals(5, Tightening.torque(0.05, 1e4, 0.01), 1e-9, "the least torque factor");
        assertThrows(IllegalArgumentException.class, () -> Tightening.yieldPreload(BoltSize.M8, BoltGrade.G8_8, 0.603));
        assertThrows(IllegalArgumentException.class, () -> Tightening.torque(0.2, -1, 0.01));
        assertThrows(IllegalArgumentException.class, () -> Tightening.yieldPreload(BoltSize.M8, BoltGrade.G8_8, -0.1));
        assertThrows(IllegalArgumentException.class, () -> Tightening.torque(BoltSize.M8, 1e4, 0.12, Double.NaN));
    }
}
