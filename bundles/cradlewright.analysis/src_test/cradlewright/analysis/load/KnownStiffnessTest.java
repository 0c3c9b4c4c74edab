package cradlewright.analysis.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A carried piece whose torsional stiffness is stated: one range of stiffness for the listed loads and for every doubt. Expected values
 * by four equations of their own (own derivation): forces and both moments in balance, and the roll of the front pair against the rear
 * pair as large as the torque between them makes it.
 */
class KnownStiffnessTest {

    private static final double G = 9.80665;
    private static final double K = 1e6;
    private static final double DEGREE = Math.PI / 180;
    private static final double MASS = 400;
    /** Half length and half width of the rectangle FL, FR, RR, RL, m. */
    private static final double A = 0.9;
    private static final double B = 0.5;
    private static final double[] X = {-A, -A, A, A};
    private static final double[] Y = {-B, B, B, -B};

    private static VisitShop stands(Value mass, Vec3 at, double u, Value torsion, double[] gaps, double[] gapsU) {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("body", mass, at, u);
        shop.torsion = Optional.of(torsion);
        String[] names = {"FL", "FR", "RR", "RL"};
        for (int i = 0; i < names.length; i++) {
            shop.touch(names[i]).at(X[i], Y[i], 0).stiff(K).low(gaps[i], gapsU[i]);
        }
        return shop;
    }

    private static Value perDegree(double torsion, double u) {
        return new Value(torsion / DEGREE, u / DEGREE, Source.MEASURED);
    }

    private static Value exactly(double mass) {
        return new Value(mass, 0, Source.WEIGHED);
    }

    private static List<Carried> carried(VisitShop shop) {
        Loads loads = shop.read(new LoadsKey("car", "visit", Situation.atRest(), false));
        assertEquals(Loads.Outcome.FOUND, loads.outcome(), loads.reason());
        return loads.supports();
    }

    /**
     * Four stands under a piece that twists about the line along it through {@code y = axis}; each corner settles by force / K + gap.
     *
     * @param torsion N*m/rad
     */
    private static double[] byFourEquations(double mass, double x, double y, double axis, double torsion, double[] gaps) {
        double w = mass * G;
        double[][] m = new double[4][5];
        double before = (x + A) / (2 * A);
        for (int i = 0; i < 4; i++) {
            m[0][i] = 1;
            m[1][i] = X[i];
            m[2][i] = Y[i];
            // Front pair rolls with its settling over the width, the rear pair against it; the torque is that of the front pair.
            double roll = (i < 2 ? -1 : 1) * Math.signum(Y[i]) / (2 * B);
            m[3][i] = roll / K - (i < 2 ? (Y[i] - axis) / torsion : 0);
            m[3][4] -= roll * gaps[i];
        }
        m[0][4] = w;
        m[1][4] = w * x;
        m[2][4] = w * y;
        // Behind the load the torque is less by what the load beside the axis makes.
        m[3][4] -= w * (y - axis) * (1 - before) / torsion;
        return eliminated(m);
    }

    private static double[] eliminated(double[][] m) {
        int n = m.length;
        for (int p = 0; p < n; p++) {
            int best = p;
            for (int r = p + 1; r < n; r++) {
                best = Math.abs(m[r][p]) > Math.abs(m[best][p]) ? r : best;
            }
            double[] pivot = m[best];
            m[best] = m[p];
            m[p] = pivot;
            for (int r = 0; r < n; r++) {
                double factor = r == p ? 0 : m[r][p] / pivot[p];
                for (int c = p; c <= n; c++) {
                    m[r][c] -= factor * pivot[c];
                }
            }
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = m[i][n] / m[i][i];
        }
        return x;
    }

    @Test
    void whatIsListedIsSolvedAtTheStatedStiffness() {
        // Balance point off the middle both ways, one gap of 0.4 mm known exactly, nothing else in doubt.
        double[] gaps = {0, 0, 0.0004, 0};
        List<Carried> carried = carried(stands(exactly(MASS), new Vec3(-0.2, 0.05, 0.4), 0, perDegree(4000, 0), gaps, new double[4]));
        double[] expected = byFourEquations(MASS, -0.2, 0.05, 0.05, 4000 / DEGREE, gaps);
        for (int i = 0; i < 4; i++) {
            assertEquals(expected[i], carried.get(i).force(), 1e-3);
            assertEquals(expected[i], carried.get(i).low(), 1e-3);
            assertEquals(expected[i], carried.get(i).high(), 1e-3);
        }
        // 1 mm / (4/k + b^2/K) per millimetre of gap (own derivation): 0.4 mm take 47.83 N from RR.
        double even = byFourEquations(MASS, -0.2, 0.05, 0.05, 4000 / DEGREE, new double[4])[2];
        assertEquals(even - 0.4e-3 / (4 / K + 4 * B * B * DEGREE / 4000), carried.get(2).force(), 1e-3);
    }

    @Test
    void theEndsAreTheWorstOverTheStiffnessThatIsKnown() {
        double[] gaps = {0, 0.0001, 0.0008, 0};
        double[] gapsU = {0.0001, 0.0002, 0.0003, 0.0001};
        Vec3 at = new Vec3(-0.2, 0.05, 0.4);
        List<Carried> carried = carried(stands(new Value(MASS, 4, Source.WEIGHED), at, 0.01, perDegree(4000, 800), gaps, gapsU));
        for (int i = 0; i < 4; i++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double torsion : new double[] {2400, 4000, 5600}) {
                double force = byFourEquations(MASS, at.x(), at.y(), at.y(), torsion / DEGREE, gaps)[i];
                double off = 2 * uncertainty(i, at, torsion / DEGREE, gaps, gapsU);
                low = Math.min(low, force - off);
                high = Math.max(high, force + off);
            }
            assertEquals(low, carried.get(i).low(), 0.05, "least of " + i);
            assertEquals(high, carried.get(i).high(), 0.05, "most of " + i);
            assertTrue(carried.get(i).low() > 0, "nobody lifts, so the equations hold");
        }
    }

    /** Root of the sum of squares of what each doubt does (JCGM 100, 5.1.2; from memory), by differences. */
    private static double uncertainty(int i, Vec3 at, double torsion, double[] gaps, double[] gapsU) {
        double force = byFourEquations(MASS, at.x(), at.y(), at.y(), torsion, gaps)[i];
        double sum = Math.pow((byFourEquations(MASS + 4, at.x(), at.y(), at.y(), torsion, gaps)[i] - force), 2)
                + Math.pow((byFourEquations(MASS, at.x() + 1e-4, at.y(), at.y(), torsion, gaps)[i] - force) / 1e-4 * 0.01, 2)
                + Math.pow((byFourEquations(MASS, at.x(), at.y() + 1e-4, at.y(), torsion, gaps)[i] - force) / 1e-4 * 0.01, 2);
        for (int a = 0; a < 4; a++) {
            double[] there = gaps.clone();
            there[a] += gapsU[a];
            sum += Math.pow(byFourEquations(MASS, at.x(), at.y(), at.y(), torsion, there)[i] - force, 2);
        }
        return Math.sqrt(sum);
    }

    @Test
    void aGapKnownExactlyIsNoWorseThanOneThatMayBeThere() {
        // 0.4 mm for sure, or none give or take twice 0.2 mm: the least that stands there is the same.
        Vec3 middle = new Vec3(0, 0, 0.4);
        Value torsion = perDegree(4000, 800);
        Carried sure = carried(stands(exactly(MASS), middle, 0, torsion, new double[] {0, 0, 0.0004, 0}, new double[4])).get(2);
        Carried maybe = carried(stands(exactly(MASS), middle, 0, torsion, new double[4], new double[] {0, 0, 0.0002, 0})).get(2);
        assertEquals(maybe.low(), sure.low(), 1e-6);
        assertEquals(MASS * G / 4 - 0.4e-3 / (4 / K + 4 * B * B * DEGREE / 5600), sure.low(), 1e-3);
    }

    @Test
    void onePieceOfUnknownStiffnessMakesAllRigid() {
        Vec3 middle = new Vec3(0, 0, 0.4);
        VisitShop shop = stands(exactly(MASS), middle, 0, perDegree(4000, 800), new double[] {0, 0, 0.0004, 0}, new double[4]);
        shop.carried.add("chassis");
        Carried carried = carried(shop).get(2);
        // A rigid body: k/4 for each millimetre.
        assertEquals(MASS * G / 4 - 0.4e-3 * K / 4, carried.force(), 1e-6);
        assertEquals(carried.force(), carried.low(), 1e-6);
    }

    @Test
    void bendingThatNobodyStatedCountsFromAnEstimateToRigid() {
        // Three pairs 1.8 m apart in all, the load over the middle one: it settles by a third when rigid; a beam of E I = 2e6 N m2 sags
        // between the outer ones by (W - R) L^3 / (48 E I) (textbooks of strength of materials), so R/2k = (W - R)/4k + that.
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("body", MASS, 0, 0, 0.4);
        shop.torsion = Optional.of(perDegree(4000, 800));
        for (int i = 0; i < 6; i++) {
            shop.touch("S" + i).at((i / 2 - 1) * A, i % 2 == 0 ? -B : B, 0).stiff(K);
        }
        Carried middle = carried(shop).get(2);
        double sag = Math.pow(2 * A, 3) / 48;
        assertEquals(ofMiddle(sag / 2e8), middle.force(), 0.01);
        assertEquals(ofMiddle(sag / 2e8), middle.low(), 0.01);
        assertEquals(ofMiddle(sag / 2e6), middle.high(), 0.01);
    }

    /** Half of what the middle pair carries; compliance of the beam in m/N. */
    private static double ofMiddle(double beam) {
        double outer = 1 / (4 * K) + beam;
        return MASS * G * outer / (1 / (2 * K) + outer) / 2;
    }
}
