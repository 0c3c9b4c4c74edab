package cradlewright.mechanics.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.verify.CheckValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class BearingTest {

    private static final CheckValues VALUES = CheckValues.load("joint");
    private static final double NONE = HolePosition.NONE;
    private static final HolePosition END = new HolePosition(0.020, 0.040, 0.018, 0.045);

    private static Bearing m10(HolePosition position, HoleKind hole) {
        return new Bearing(0.010, 0.011, 0.004, 360e6, 800e6, position, hole, 1.25);
    }

    private static Bearing m20(double thickness, double fu, BoltGrade grade, HolePosition position) {
        return new Bearing(0.020, 0.022, thickness, fu, grade.ultimateStrength(), position, HoleKind.NORMAL, 1.25);
    }

    private static Bearing sheet(double thickness) {
        HolePosition position = new HolePosition(0.020, NONE, 0.015, NONE);
        return new Bearing(0.008, 0.009, thickness, 360e6, 800e6, position, HoleKind.NORMAL, 1.25);
    }

    @Test
    void publishedBearing() {
        Bearing end = m20(0.008, 360e6, BoltGrade.G4_6, new HolePosition(0.0264, NONE, 0.0264, NONE));
        VALUES.check("published.M20.k1", end.k1());
        VALUES.check("published.M20.alpha-end", end.alphaB());
        Bearing inner = m20(0.008, 360e6, BoltGrade.G4_6, new HolePosition(NONE, 0.0484, NONE, 0.0528));
        VALUES.check("published.M20.k1", inner.k1());
        VALUES.check("published.M20.alpha-inner", inner.alphaB());
        finPlate("published.fin-plate.vertical", new HolePosition(0.040, 0.070, 0.050, 0.060));
        finPlate("published.fin-plate.horizontal", new HolePosition(0.050, 0.060, 0.040, 0.070));
    }

    private static void finPlate(String row, HolePosition position) {
        Bearing bearing = m20(0.010, 430e6, BoltGrade.G8_8, position);
        VALUES.check(row + ".k1", bearing.k1());
        VALUES.check(row + ".alpha", bearing.alphaB());
        VALUES.check(row, bearing.resistance() / 1e3);
    }

    /** Bearing of an 8.8 bolt in 5 mm of S355, distances in mm. */
    private static double bookBearing(int diameter, double e1, double e2, double p1, double p2) {
        HolePosition position = new HolePosition(e1 / 1e3, p1 / 1e3, e2 / 1e3, p2 / 1e3);
        return new Bearing(diameter / 1e3, (diameter + 2) / 1e3, 0.005, 470e6, 800e6, position, HoleKind.NORMAL, 1.25)
                .resistance() / 1e3;
    }

    /** Numbers printed by others than the source of the formula. */
    @Test
    void secondSources() {
        VALUES.check("second.bearing.M12-near", bookBearing(12, 25, 20, 35, 40));
        VALUES.check("second.bearing.M12-far", bookBearing(12, 40, 25, 50, 45));
        VALUES.check("second.bearing.M16-near", bookBearing(16, 35, 25, 50, 50));
        VALUES.check("second.bearing.M16-far", bookBearing(16, 50, 30, 65, 55));
        VALUES.check("second.bearing.M20-near", bookBearing(20, 40, 30, 60, 60));
        VALUES.check("second.bearing.M20-far", bookBearing(20, 60, 35, 80, 70));
        VALUES.check("second.bearing.oversize", HoleKind.OVERSIZE.bearingFactor());
        VALUES.check("second.bearing.slot", HoleKind.SLOT_ACROSS.bearingFactor());
        HolePosition far = new HolePosition(NONE, NONE, NONE, NONE);
        VALUES.check("second.single-lap",
                new Bearing(0.016, 0.018, 0.010, 470e6, 800e6, far, HoleKind.NORMAL, 1.25).singleLapLimit() / 1e3);
        VALUES.check("second.thin.1mm", m10Sheet(0.001, 0.012) / 1e3);
        VALUES.check("second.thin.2mm", m10Sheet(0.002, 0.040) / 1e3);
        BoltSpacing s = new BoltSpacing(0.022, 0.006, HoleKind.NORMAL, true);
        VALUES.check("second.spacing.e1", s.leastEnd() * 1e3);
        VALUES.check("second.spacing.e2", s.leastEdge() * 1e3);
        VALUES.check("second.spacing.p1", s.leastPitch() * 1e3);
        VALUES.check("second.spacing.p2", s.leastGauge() * 1e3);
        VALUES.check("second.spacing.e-max", s.largestEdge() * 1e3);
        VALUES.check("second.spacing.p-max", s.largestPitch() * 1e3);
    }

    private static double m10Sheet(double thickness, double e1) {
        HolePosition position = new HolePosition(e1, NONE, 0.020, NONE);
        return new Bearing(0.010, 0.011, thickness, 450e6, 800e6, position, HoleKind.NORMAL, 1.25).resistance();
    }

    @Test
    void bearingOfEndAndInnerBolts() {
        Bearing end = m10(END, HoleKind.NORMAL);
        VALUES.check("D4.end.alpha", end.alphaB());
        VALUES.check("D4.end.k1", end.k1());
        VALUES.check("D4.end", end.resistance() / 1e3);
        Bearing inner = m10(new HolePosition(NONE, 0.040, NONE, 0.045), HoleKind.NORMAL);
        VALUES.check("D4.inner.alpha", inner.alphaB());
        VALUES.check("D4.inner", inner.resistance() / 1e3);
        VALUES.check("D4.oversize", m10(END, HoleKind.OVERSIZE).resistance() / 1e3);
        VALUES.check("D4.slot-across", m10(END, HoleKind.SLOT_ACROSS).resistance() / 1e3);
        assertEquals(0, m10(END, HoleKind.SLOT_ALONG).resistance(), "a bolt slides along its slot");
        VALUES.check("bearing.full", m10(new HolePosition(NONE, NONE, NONE, NONE), HoleKind.NORMAL).resistance() / 1e3);
        VALUES.check("single-lap", end.singleLapLimit() / 1e3);
    }

    @Test
    void bearingOfThinSheet() {
        VALUES.check("D10.alpha", sheet(0.002).alphaB());
        VALUES.check("D10", sheet(0.002).resistance() / 1e3);
        VALUES.check("thin.kt", sheet(0.001).kT());
        VALUES.check("thin.strongest", Bearing.STRONGEST_SHEET / 1e6);
        assertEquals(1, sheet(0.00125).kT(), 1e-12, "the two branches meet at 1.25 mm");
        assertEquals(1, sheet(0.001251).kT(), 1e-12, "and no sheet bears more than in full");
        assertTrue(sheet(0.00299).thinSheet());
        assertFalse(sheet(0.003).thinSheet());
    }

    @Test
    void aSoftBoltGovernsAlpha() {
        HolePosition far = new HolePosition(0.05, NONE, 0.05, NONE);
        Bearing soft = new Bearing(0.010, 0.011, 0.004, 490e6, 400e6, far, HoleKind.NORMAL, 1.25);
        assertEquals(400.0 / 490, soft.alphaB(), 1e-12, "EN 1993-1-8 Table 3.4: f_ub/f_u");
    }

    @Test
    void countersinkTakesHalfItsDepth() {
        assertEquals(0.004, Bearing.countersunkThickness(0.006, 0.004), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Bearing.countersunkThickness(0.004, 0.005));
    }

    @Test
    void leastAndLargestDistances() {
        BoltSpacing s = new BoltSpacing(0.011, 0.004, HoleKind.NORMAL, true);
        VALUES.check("D6.e1-min", s.leastEnd() * 1e3);
        VALUES.check("D6.e2-min", s.leastEdge() * 1e3);
        VALUES.check("D6.p1-min", s.leastPitch() * 1e3);
        VALUES.check("D6.p2-min", s.leastGauge() * 1e3);
        VALUES.check("D6.p-max", s.largestPitch() * 1e3);
        VALUES.check("D6.e-max", s.largestEdge() * 1e3);
        VALUES.check("D6.slot-min", new BoltSpacing(0.011, 0.004, HoleKind.SLOT_ACROSS, true).leastEnd() * 1e3);
        VALUES.check("D6.slot-min", new BoltSpacing(0.011, 0.004, HoleKind.SLOT_ALONG, true).leastEdge() * 1e3);
        VALUES.check("D6.p-max-thick", new BoltSpacing(0.011, 0.020, HoleKind.NORMAL, true).largestPitch() * 1e3);
        BoltSpacing thin = new BoltSpacing(0.009, 0.002, HoleKind.NORMAL, false);
        VALUES.check("D6.thin.e1-min", thin.leastEnd() * 1e3);
        VALUES.check("D6.thin.e2-min", thin.leastEdge() * 1e3);
        VALUES.check("D6.thin.p-min", thin.leastPitch() * 1e3);
        VALUES.check("D6.thin.p-min", thin.leastGauge() * 1e3);
        assertEquals(Double.POSITIVE_INFINITY, thin.largestEdge(), "no limit where nothing is exposed");
    }

    @Test
    void everyBrokenRuleIsNamed() {
        BoltSpacing s = new BoltSpacing(0.011, 0.004, HoleKind.NORMAL, true);
        assertEquals(List.of(), s.check(new HolePosition(0.0132, 0.0242, 0.0132, 0.0264)), "the minima themselves are allowed");
        assertEquals(List.of(), s.check(new HolePosition(NONE, NONE, NONE, NONE)));
        List<BoltSpacing.Violation> close = s.check(new HolePosition(0.013, 0.024, 0.013, 0.026));
        assertEquals(List.of("end distance e1 too short (EN 1993-1-8 Table 3.3)", "pitch p1 too short (EN 1993-1-8 Table 3.3)",
                "edge distance e2 too short (EN 1993-1-8 Table 3.3)", "gauge p2 too short (EN 1993-1-8 Table 3.3)"),
                close.stream().map(BoltSpacing.Violation::rule).toList());
        assertEquals(0.013, close.get(0).found(), 1e-12);
        assertEquals(0.0132, close.get(0).limit(), 1e-12);
        HolePosition wide = new HolePosition(0.057, 0.057, 0.057, 0.057);
        assertEquals(4, s.check(wide).size(), "all four too long");
        assertEquals(2, new BoltSpacing(0.011, 0.004, HoleKind.NORMAL, false).check(wide).size(),
                "edges are free where nothing is exposed");
    }

    @Property(seed = "815", tries = 300)
    void bearingNeverGrowsWhenAHoleMovesToTheEdge(@ForAll @DoubleRange(min = 0.75, max = 12) double t,
            @ForAll @DoubleRange(min = 1, max = 60) double e1, @ForAll @DoubleRange(min = 1, max = 60) double e2,
            @ForAll @DoubleRange(min = 0.3, max = 1) double closer) {
        HolePosition far = new HolePosition(e1 / 1e3, 0.040, e2 / 1e3, 0.045);
        HolePosition near = new HolePosition(e1 * closer / 1e3, 0.040, e2 * closer / 1e3, 0.045);
        double wide = new Bearing(0.010, 0.011, t / 1e3, 360e6, 800e6, far, HoleKind.NORMAL, 1.25).resistance();
        double tight = new Bearing(0.010, 0.011, t / 1e3, 360e6, 800e6, near, HoleKind.NORMAL, 1.25).resistance();
        assertTrue(tight <= wide * (1 + 1e-12) && tight >= 0);
        assertTrue(wide <= 2.5 * 360e6 * 0.010 * t / 1e3 / 1.25 * (1 + 1e-12), "never above 2.5 f_u d t/gamma_M2");
    }

    @Test
    void limitsOfTheRange() {
        HolePosition far = new HolePosition(NONE, NONE, NONE, NONE);
        assertEquals(0.030, new Bearing(0.010, 0.030, 0.004, 360e6, 800e6, far, HoleKind.NORMAL, 10).holeDiameter(), 0);
        assertThrows(IllegalArgumentException.class,
                () -> new Bearing(0.010, 0.0301, 0.004, 360e6, 800e6, far, HoleKind.NORMAL, 1.25));
        assertThrows(IllegalArgumentException.class,
                () -> new Bearing(0.010, 0.011, 0.004, 360e6, 800e6, far, HoleKind.NORMAL, 10.05));
        BoltSpacing s = new BoltSpacing(0.011, 0.004, HoleKind.NORMAL, true);
        assertEquals(List.of(), s.check(new HolePosition(0.056, 0.056, 0.056, 0.056)), "the maxima themselves are allowed");
        assertEquals(4, s.check(new HolePosition(0.0562, 0.0562, 0.0562, 0.0562)).size());
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new HolePosition(0, NONE, NONE, NONE));
        assertThrows(IllegalArgumentException.class, () -> new HolePosition(Double.NaN, NONE, NONE, NONE));
        assertThrows(IllegalArgumentException.class, () -> sheet(0.0007));
        assertThrows(IllegalArgumentException.class,
                () -> new Bearing(0.008, 0.009, 0.002, 700e6, 800e6, END, HoleKind.NORMAL, 1.25), "sheet too strong");
        assertThrows(IllegalArgumentException.class,
                () -> new Bearing(0.010, 0.009, 0.004, 360e6, 800e6, END, HoleKind.NORMAL, 1.25), "hole smaller than the bolt");
        assertThrows(IllegalArgumentException.class, () -> m10(null, HoleKind.NORMAL));
        assertThrows(IllegalArgumentException.class, () -> new BoltSpacing(0.011, 0.004, null, true));
    }
}
