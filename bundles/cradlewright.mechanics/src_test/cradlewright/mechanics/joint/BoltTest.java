package cradlewright.mechanics.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.joint.BoltResistance.ShearPlane;
import cradlewright.mechanics.verify.CheckValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class BoltTest {

    private static final CheckValues VALUES = CheckValues.load("joint");
    private static final double KN = 1e-3;
    private static final double MPA = 1e-6;
    private static final double MM2 = 1e6;

    @Test
    void resistancesOfTheSizeTable() {
        for (BoltSize size : new BoltSize[] {BoltSize.M6, BoltSize.M8, BoltSize.M10, BoltSize.M12, BoltSize.M16}) {
            for (BoltGrade grade : new BoltGrade[] {BoltGrade.G8_8, BoltGrade.G10_9}) {
                BoltResistance bolt = BoltResistance.of(size, grade, BoltResistance.GAMMA_M2);
                String row = "D1." + size + "-" + grade.label();
                VALUES.check(row + ".shear-threads", bolt.shear(ShearPlane.THREADS) * KN);
                VALUES.check(row + ".tension", bolt.tension() * KN);
                VALUES.check(row + ".shear-shank", bolt.shear(ShearPlane.SHANK) * KN);
            }
        }
    }

    @Test
    void publishedResistances() {
        VALUES.check("D1.gamma-M2", BoltResistance.GAMMA_M2);
        VALUES.check("D1.published.M16-8.8", shear(BoltSize.M16, BoltGrade.G8_8));
        VALUES.check("shear.4.6", shear(BoltSize.M10, BoltGrade.G4_6));
        VALUES.check("shear.5.6", shear(BoltSize.M10, BoltGrade.G5_6));
        VALUES.check("D1.published.M16-10.9", shear(BoltSize.M16, BoltGrade.G10_9));
        BoltResistance wide = BoltResistance.inTwoMillimetreClearance(BoltSize.M12, BoltGrade.G8_8, BoltResistance.GAMMA_M2);
        VALUES.check("D1.published.M12-8.8-clearance", wide.shear(ShearPlane.THREADS) * KN);
        VALUES.check("D1.clearance", wide.shear(ShearPlane.THREADS) * KN);
        BoltResistance m20 = BoltResistance.ofAreas(245e-6, 314.159e-6, BoltGrade.G4_6, 1.25);
        VALUES.check("published.M20.shear", m20.shear(ShearPlane.THREADS) * KN);
        VALUES.check("published.M20.tension", m20.tension() * KN);
        VALUES.check("published.M20.punching", BoltResistance.punching(0.030, 0.008, 360e6, 1.25) * KN);
    }

    /** Numbers printed by others than the source of the formula. */
    @Test
    void secondSources() {
        BoltResistance strong = BoltResistance.ofAreas(245e-6, 314.159265e-6, BoltGrade.G8_8, 1.25);
        VALUES.check("second.M20-8.8.shear-threads", strong.shear(ShearPlane.THREADS) * KN);
        VALUES.check("second.M20-8.8.tension", strong.tension() * KN);
        VALUES.check("second.M20-8.8.countersunk", strong.countersunkTension() * KN);
        BoltResistance brittle = BoltResistance.ofAreas(245e-6, 314.159265e-6, BoltGrade.G10_9, 1.25);
        VALUES.check("second.M20-10.9.shear-threads", brittle.shear(ShearPlane.THREADS) * KN);
        VALUES.check("second.M20-10.9.shear-shank", brittle.shear(ShearPlane.SHANK) * KN);
        VALUES.check("second.punching", BoltResistance.punching(0.0324, 0.010, 360e6, 1.25) * KN);
        VALUES.check("second.combined", BoltResistance.combined(50e3, 94.08e3, 30e3, 141.12e3));
        BoltResistance wide = BoltResistance.inTwoMillimetreClearance(BoltSize.M12, BoltGrade.G10_9, 1.25);
        VALUES.check("second.clearance.10.9", wide.shear(ShearPlane.THREADS) * KN);
    }

    private static double shear(BoltSize size, BoltGrade grade) {
        return BoltResistance.of(size, grade, BoltResistance.GAMMA_M2).shear(ShearPlane.THREADS) * KN;
    }

    @Test
    void countersunkPunchingAndCombined() {
        BoltResistance bolt = BoltResistance.of(BoltSize.M10, BoltGrade.G8_8, 1.25);
        VALUES.check("D1.countersunk", bolt.countersunkTension() * KN);
        VALUES.check("D5", BoltResistance.punching(BoltSize.M10.meanHeadWidth(), 0.004, 360e6, 1.25) * KN);
        VALUES.check("D3u", BoltResistance.combined(1500, bolt.shear(ShearPlane.THREADS), 4411.765, bolt.tension()));
    }

    @Test
    void areasAndStrengthsAreThoseOfTheStandards() {
        for (BoltSize size : BoltSize.values()) {
            VALUES.check("D1.As." + size, BoltSize.stressArea(size.diameter(), size.pitch()) * MM2);
            VALUES.check("D1.As-table." + size, size.stressArea() * MM2);
        }
        for (BoltGrade grade : BoltGrade.values()) {
            VALUES.check("grade." + grade.label() + ".fub", grade.ultimateStrength() * MPA);
            VALUES.check("grade." + grade.label() + ".fyb", grade.yieldStrength() * MPA);
            VALUES.check("grade." + grade.label() + ".proof", grade.proofStress() * MPA);
        }
    }

    @Test
    void strengthClassMarkTellsTheStrengths() {
        for (BoltGrade grade : BoltGrade.values()) {
            String[] mark = grade.label().split("\\.");
            double ultimate = Integer.parseInt(mark[0]) * 100e6;
            assertEquals(ultimate, grade.ultimateStrength(), 1, "first number of the mark");
            assertEquals(ultimate * Integer.parseInt(mark[1]) / 10, grade.yieldStrength(), 1, "second number of the mark");
        }
    }

    @Test
    void headsAreHexagons() {
        for (BoltSize size : BoltSize.values()) {
            double corners = 2 * size.meanHeadWidth() - size.acrossFlats();
            VALUES.check("head." + size + ".corners", corners * 1e3);
            assertEquals(2 / Math.sqrt(3), corners / size.acrossFlats(), 0.05, size + ": corners over flats of a hexagon");
            assertTrue(size.meanFrictionDiameter() > size.diameter() && size.meanFrictionDiameter() < size.acrossFlats());
        }
    }

    @Test
    void holesOfNormalAndWiderClearance() {
        for (BoltSize size : BoltSize.values()) {
            VALUES.check("hole." + size, size.holeDiameter() * 1e3);
        }
        assertEquals(0.014, BoltSize.M12.widerHoleDiameter(), 1e-12);
        assertEquals(shear(BoltSize.M16, BoltGrade.G8_8), BoltResistance
                .inTwoMillimetreClearance(BoltSize.M16, BoltGrade.G8_8, 1.25).shear(ShearPlane.THREADS) * KN, 1e-9,
                "2 mm is the normal clearance of M16");
        assertThrows(IllegalArgumentException.class,
                () -> BoltResistance.inTwoMillimetreClearance(BoltSize.M10, BoltGrade.G8_8, 1.25));
    }

    @Test
    void widerHolesOnlyWhereBearingGoverns() {
        BoltResistance wide = BoltResistance.inTwoMillimetreClearance(BoltSize.M12, BoltGrade.G8_8, 1.25);
        assertTrue(wide.clearanceAllowed(27.0e3, ShearPlane.THREADS));
        assertFalse(wide.clearanceAllowed(28.0e3, ShearPlane.THREADS));
        assertTrue(BoltResistance.of(BoltSize.M12, BoltGrade.G8_8, 1.25).clearanceAllowed(99e3, ShearPlane.THREADS));
    }

    @Test
    void theGoverningUseIsTheLargest() {
        BoltCapacity capacity = new BoltCapacity(20e3, 10e3, 30e3, 25e3);
        BoltUse use = capacity.use(new BoltForce(3e3, 4e3, 5e3));
        assertEquals(0.25, use.shear(), 1e-12);
        assertEquals(0.5, use.bearing(), 1e-12);
        assertEquals(5.0 / 30, use.tension(), 1e-12);
        assertEquals(0.2, use.punching(), 1e-12);
        assertEquals(0.25 + 5.0 / 42, use.combined(), 1e-12);
        assertEquals(0.5, use.governing(), 1e-12);
        BoltUse thicker = new BoltCapacity(20e3, 20e3, 30e3, 25e3).use(new BoltForce(3e3, 4e3, 5e3));
        assertEquals(use.combined(), thicker.governing(), 1e-12);
    }

    @Property(seed = "4711", tries = 200)
    void resistancesFallWithThePartialFactor(@ForAll @DoubleRange(min = 1, max = 3) double gamma,
            @ForAll @DoubleRange(min = 1.01, max = 2) double more, @ForAll BoltSize size, @ForAll BoltGrade grade) {
        BoltResistance low = BoltResistance.of(size, grade, gamma * more);
        BoltResistance high = BoltResistance.of(size, grade, gamma);
        for (ShearPlane plane : ShearPlane.values()) {
            assertEquals(high.shear(plane) / more, low.shear(plane), 1e-9 * high.shear(plane));
        }
        assertEquals(high.tension() / more, low.tension(), 1e-9 * high.tension());
        assertTrue(high.shear(ShearPlane.SHANK) > high.shear(ShearPlane.THREADS));
        assertTrue(high.countersunkTension() < high.tension());
    }

    @Property(seed = "4712", tries = 200)
    void combinedUseIsLinearInTheLoad(@ForAll @DoubleRange(min = 0, max = 1e4) double v,
            @ForAll @DoubleRange(min = 0, max = 1e4) double t, @ForAll @DoubleRange(min = 0, max = 5) double factor) {
        double once = BoltResistance.combined(v, 2e4, t, 3e4);
        assertEquals(factor * once, BoltResistance.combined(factor * v, 2e4, factor * t, 3e4), 1e-12 + 1e-12 * once);
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.of(BoltSize.M8, BoltGrade.G8_8, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.of(BoltSize.M8, BoltGrade.G8_8, 0.9));
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.of(BoltSize.M8, BoltGrade.G8_8, 10.05));
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.punching(0.016, 0.004, 360e6, 10.05));
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.punching(0.016, -0.004, 360e6, 1.25));
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.combined(-1, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> BoltResistance.ofAreas(2e-5, 1e-5, BoltGrade.G8_8, 1.25));
        assertThrows(IllegalArgumentException.class, () -> new BoltCapacity(1, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new BoltForce(0, 0, -1));
        assertThrows(IllegalArgumentException.class, () -> BoltSize.stressArea(0.001, 0.002));
    }

    @Test
    void formulasAreListedOnce() {
        assertEquals(JointFormulas.all().size(), JointFormulas.all().stream().map(f -> f.id()).distinct().count());
    }
}
