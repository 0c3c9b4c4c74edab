package cradlewright.mechanics.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.section.FoldedSection;
import cradlewright.mechanics.section.SectionProperties;
import cradlewright.mechanics.section.TorsionProperties;
import cradlewright.mechanics.verify.CheckValues;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class WarpingTorsionTest {

    private static final CheckValues VALUES = CheckValues.load("steel");
    private static final SectionProperties SECTION = FoldedSection.channel(0.100, 0.050, 0.004, 0).sharpCorners().properties();
    private static final TorsionProperties CHANNEL = SECTION.torsion();
    private static final int PARTS = 1200;

    private static TorquePoint cut(double distance, double torque) {
        return new TorquePoint(distance, torque);
    }

    private static WarpingTorsion.Member single(TorquePoint... cuts) {
        return WarpingTorsion.of(CHANNEL, Steel.E, Steel.G, List.of(List.of(cuts))).get(0);
    }

    /** In the middle of a line symmetric to it nothing warps whatever the ends do: free ends give the most there. */
    @Test
    void closedForms() {
        VALUES.check("twist.fork", single(cut(0, 15), cut(0.6, 15), cut(0.6, -15), cut(1.2, -15)).at().get(1).bimoment());
        VALUES.check("twist.fork-off", single(cut(0, 20), cut(0.4, 20), cut(0.4, -10), cut(1.2, -10)).at().get(1).bimoment());
        VALUES.check("twist.cantilever", single(cut(0, 15), cut(1.2, 15)).at().get(0).bimoment());
        double inch = 0.0254;
        double j = 1.39 * Math.pow(inch, 4);
        double iw = 2070 * Math.pow(inch, 6);
        TorsionProperties wide = new TorsionProperties(j, 1, iw, 0, 0, 1, 1);
        List<TorquePoint> halves = List.of(cut(0, 0.5), cut(90 * inch, 0.5), cut(90 * inch, -0.5), cut(180 * inch, -0.5));
        double ksi = 6.894757e6;
        VALUES.check("twist.guide", WarpingTorsion.of(wide, 29e3 * ksi, 11.2e3 * ksi, List.of(halves)).get(0).at().get(1).bimoment()
                / (62.1 * inch));
    }

    @Test
    void aSectionThatDoesNotWarpCarriesAllByTwist() {
        TorsionProperties angle = FoldedSection.angle(0.05, 0.04, 0.004, 0).sharpCorners().properties().torsion();
        WarpingTorsion.Member member = WarpingTorsion.of(angle, Steel.E, Steel.G, List.of(List.of(cut(0, 7), cut(1, -3)))).get(0);
        assertEquals(List.of(new TwistShares(7, 0, 0), new TwistShares(3, 0, 0)), member.at());
        assertEquals(List.of(0.0), member.between());
    }

    /** Differences for any stiffness against warping of ends and joints never give more, and the extremes are met. */
    @Test
    void differencesAgree() {
        Random random = new Random(7);
        for (int k = 0; k < 6; k++) {
            double a = 0.5;
            double b = 0.7;
            double[] t = random.doubles(4, -20, 20).toArray();
            List<TorquePoint> one = List.of(cut(0, t[0]), cut(a, t[1]));
            List<TorquePoint> two = List.of(cut(0, t[2]), cut(b, t[3]));
            DoubleUnaryOperator torque = x -> x < a ? t[0] + (t[1] - t[0]) * x / a : t[2] + (t[3] - t[2]) * (x - a) / b;
            List<WarpingTorsion.Member> found = WarpingTorsion.of(CHANNEL, Steel.E, Steel.G, List.of(one, two));
            double most = largest(found);
            double seen = 0;
            for (int i = 0; i < 27; i++) {
                double[] stiffness = {rank(i % 3), rank(i / 3 % 3), rank(i / 9)};
                double[] bimoments = differences(torque, a, a + b, stiffness);
                double here = 0;
                for (double value : bimoments) {
                    here = Math.max(here, Math.abs(value));
                }
                assertTrue(here <= most * 1.002 + 1e-6, here + " over " + most);
                seen = Math.max(seen, here);
            }
            assertEquals(most, seen, 0.004 * most, "the extreme is one of these states");
        }
    }

    private static double rank(int i) {
        return new double[] {0, 40, 1e9}[i];
    }

    private static double largest(List<WarpingTorsion.Member> members) {
        double most = 0;
        for (WarpingTorsion.Member member : members) {
            for (TwistShares shares : member.at()) {
                most = Math.max(most, shares.bimoment());
            }
            for (double peak : member.between()) {
                most = Math.max(most, peak);
            }
        }
        return most;
    }

    /** Linear elements for u; springs against warping at the start, at a and at the end. Returns E Iw u' of each. */
    private static double[] differences(DoubleUnaryOperator torque, double a, double length, double[] stiffness) {
        double h = length / PARTS;
        double d = Steel.E * CHANNEL.warping();
        double c = Steel.G * CHANNEL.constant();
        double[] diagonal = new double[PARTS + 1];
        double side = d / h - c * h / 6;
        double[] right = new double[PARTS + 1];
        for (int i = 0; i < PARTS; i++) {
            double half = torque.applyAsDouble((i + 0.5) * h) * h / 2;
            for (int p = 0; p < 2; p++) {
                right[i + p] += half;
                diagonal[i + p] += d / h + c * h / 3;
            }
        }
        int joint = (int) Math.round(a / h);
        diagonal[0] += stiffness[0] * d;
        diagonal[joint] += stiffness[1] * d;
        diagonal[PARTS] += stiffness[2] * d;
        for (int i = 1; i <= PARTS; i++) {
            diagonal[i] -= side * side / diagonal[i - 1];
            right[i] += right[i - 1] * side / diagonal[i - 1];
        }
        double[] bimoments = new double[PARTS];
        double beyond = right[PARTS] / diagonal[PARTS];
        for (int i = PARTS - 1; i >= 0; i--) {
            double u = (right[i] + side * beyond) / diagonal[i];
            bimoments[i] = d * (beyond - u) / h;
            beyond = u;
        }
        return bimoments;
    }

    /** A bimoment adds its normal stress, the torque by warping its shear stress. */
    @Test
    void stressesAddUp() {
        CrossSectionCheck check = new CrossSectionCheck(SECTION, 235e6, 1);
        MemberForces bent = new MemberForces(0, 0, 2e3, 0, 1500, 0);
        MemberForces twisted = bent.twisted(new TwistShares(3, 5, 12));
        double normal = 1500 / SECTION.elasticY() + 12 / CHANNEL.warpingModulus();
        double twist = 3 * 0.004 / CHANNEL.constant() + 5 / CHANNEL.warpingShear();
        double shear = 2e3 / SECTION.shearZ().elastic() + twist;
        assertEquals(Math.sqrt(normal * normal + 3 * shear * shear), check.yieldCriterion(twisted).demand(), 1);
        assertEquals(2e3 / check.shearResistanceZ() + twist * Math.sqrt(3) / 235e6, check.check(twisted).get(4).ratio(), 1e-9);
        assertEquals(new MemberForces(0, 0, 4e3, 6, 3000, 0, 10, 24), twisted.times(2));
    }

    @Test
    void refusesWhatIsNoMember() {
        assertThrows(IllegalArgumentException.class, () -> single(cut(0, 1)));
        assertThrows(IllegalArgumentException.class, () -> single(cut(0, 1), cut(0, 2)));
        assertThrows(IllegalArgumentException.class, () -> single(cut(0, 1), cut(0.8, 2), cut(0.5, 2), cut(1, 2)));
        assertThrows(IllegalArgumentException.class, () -> new MemberForces(0, 0, 0, 0, 0, 0, 0, Double.NaN));
    }
}
