package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Castors at the corners of a rhombus: (0, 0), (2, -1), (2, 1), (4, 0), with the balance point near the line of the middle two, which
 * then carry it alone: off it by y one of them has (1 + y)/2 of the weight (statics).
 */
class WorstCastorsTest {

    private static final DollyFacts DOLLY = new DollyFacts("d", "d", DollyFacts.Build.OWN, Optional.empty(), Optional.empty(),
            Optional.empty(),
            SupportShop.examined(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    private static DollyLoad.Wheel wheel(double x, double y) {
        return new DollyLoad.Wheel(new CastorFacts("c", "c", Optional.empty(), Optional.empty(), true, CastorFacts.Brake.NONE),
                new Vec3(x, y, 0), Optional.empty());
    }

    private static DollyLoad rhombus(EstimatedBalance load) {
        return new DollyLoad(DOLLY, List.of(wheel(0, 0), wheel(2, -1), wheel(2, 1), wheel(4, 0)), load, load);
    }

    private static EstimatedBalance load(double x, double y, double[][] covariance) {
        return new EstimatedBalance(new Balance(100, new Vec3(x, y, 1)), covariance);
    }

    private static double[][] apart(double mass, double x, double y) {
        double[][] covariance = new double[4][4];
        covariance[0][0] = mass * mass;
        covariance[1][1] = x * x;
        covariance[2][2] = y * y;
        return covariance;
    }

    @Test
    void theWorstPlaceMayLieOnTheLineOfTwoCastors() {
        // 0.2 m off the line of the middle two, twice 0.1 m, is (1 + 0.2)/2; 0.5 m before or behind it the others would take a share.
        assertEquals(0.6 * 100 * 9.80665, WorstCastors.of(rhombus(load(2, 0, apart(0, 0.25, 0.1)))).get(2), 1e-9);
        assertEquals(0.6 * 100 * 9.80665, WorstCastors.of(rhombus(load(2, 0, apart(0, 0, 0.1)))).get(1), 1e-9);
    }

    @Test
    void massAndPlaceAreNotAtTheirEndsTogether() {
        // Half of the weight grows by 0.5 x 5 kg with the mass and by 100 kg/2 per m x 0.1 m with the place, sqrt(2.5^2 + 5^2) = 5.590 kg.
        double most = WorstCastors.of(rhombus(load(2, 0, apart(5, 0.01, 0.1)))).get(2) / 9.80665;
        assertEquals((100 + 10 * 2.5 / 5.5902) * (1 + 0.2 * 5 / 5.5902) / 2, most, 1e-3);
        assertTrue(most < 110 * 0.6);
    }

    /** Independent method: a search over the ellipsoid, with each triangle of castors solved by the rule of levers. */
    @Test
    void isTheGreatestOverTheWholeEllipsoid() {
        double[][] covariance = apart(3, 0.2, 0.08);
        covariance[0][1] = 0.5 * 3 * 0.2;
        covariance[1][0] = covariance[0][1];
        covariance[1][2] = -0.4 * 0.2 * 0.08;
        covariance[2][1] = covariance[1][2];
        for (double x : new double[] {1.5, 1.9, 2, 2.4}) {
            List<Double> ours = WorstCastors.of(rhombus(load(x, 0.1, covariance)));
            for (int castor = 0; castor < 4; castor++) {
                double searched = search(castor, x, 0.1);
                // The gradient is that of the middle; over this give or take the product of mass and place bends it by under 0.5 %.
                assertEquals(searched, ours.get(castor), 0.005 * searched, "castor " + castor + " at " + x);
            }
        }
    }

    private static double search(int castor, double x, double y) {
        // Lower triangle of the covariance above: 3 kg; 0.2 m half with the mass; y -0.4 with x, not with the mass.
        double ofMass = 0.5;
        double ofRest = Math.sqrt(1 - ofMass * ofMass);
        double yRest = -0.4 / ofRest;
        double yOwn = Math.sqrt(1 - yRest * yRest);
        double most = 0;
        for (int i = 0; i <= 180; i++) {
            double lean = Math.PI * i / 180;
            for (int j = 0; j < 360; j++) {
                double a = 2 * Math.cos(lean);
                double b = 2 * Math.sin(lean) * Math.cos(Math.toRadians(j));
                double c = 2 * Math.sin(lean) * Math.sin(Math.toRadians(j));
                most = Math.max(most, (100 + 3 * a) * 9.80665 * share(castor, x + 0.2 * (ofMass * a + ofRest * b),
                        y + 0.08 * (yRest * b + yOwn * c)));
            }
        }
        return most;
    }

    private static double share(int castor, double x, double y) {
        double[][] at = {{0, 0}, {2, -1}, {2, 1}, {4, 0}};
        double most = 0;
        for (int left = 0; left < 4; left++) {
            List<double[]> three = new ArrayList<>(List.of(at));
            three.remove(left);
            double[] a = at[castor];
            if (left == castor) {
                continue;
            }
            three.remove(a);
            double[] b = three.get(0);
            double[] c = three.get(1);
            double whole = area(a, b, c);
            double[] p = {x, y};
            double ofA = area(p, b, c) / whole;
            if (ofA >= 0 && area(a, p, c) / whole >= 0 && area(a, b, p) / whole >= 0) {
                most = Math.max(most, ofA);
            }
        }
        return most;
    }

    private static double area(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }
}
