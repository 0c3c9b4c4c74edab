package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlaneFitTest {

    private static PlaneFit four(double[][] at, double... z) {
        return new PlaneFit(List.of(new Vec3(at[0][0], at[0][1], z[0]), new Vec3(at[1][0], at[1][1], z[1]), new Vec3(at[2][0],
                at[2][1], z[2]),
                new Vec3(at[3][0], at[3][1], z[3])));
    }

    @Test
    void rectangle() {
        PlaneFit fit = four(new double[][] {{0.9, -0.5}, {0.9, 0.5}, {-0.9, 0.5}, {-0.9, -0.5}}, 12.0, 9.5, 11.0, 10.9);
        // Residuals +-0.65 by another least-squares routine; off the plane of the other three 12 - (9.5 + 10.9 - 11) = 2.6 by hand.
        assertEquals(0.65, fit.residual(0), 1e-9);
        assertEquals(-0.65, fit.residual(1), 1e-9);
        assertEquals(2.6, fit.offTheOthers(0).orElseThrow(), 1e-9);
        assertEquals(-2.6, fit.offTheOthers(3).orElseThrow(), 1e-9);
    }

    @Test
    void irregular() {
        // Residuals by another least-squares routine: 0.791366, -0.863779, 0.656886, -0.584473.
        PlaneFit fit = four(new double[][] {{1.2, -0.45}, {1.1, 0.45}, {-0.8, 0.60}, {-0.9, -0.60}}, 12.0, 9.5, 11.0, 10.9);
        assertEquals(0.791366, fit.residual(0), 1e-6);
        assertEquals(-0.863779, fit.residual(1), 1e-6);
        assertEquals(0.656886, fit.residual(2), 1e-6);
        assertEquals(-0.584473, fit.residual(3), 1e-6);
        // Plane through the other three at the place of the first, by Cramer's rule: null vector times heights over its first entry.
        assertEquals(1.464746 / 0.540275, fit.offTheOthers(0).orElseThrow(), 1e-5);
        assertEquals(1.464746 / -0.589712, fit.offTheOthers(1).orElseThrow(), 1e-5);
    }

    @Test
    void aPlaneIsNoTwist() {
        PlaneFit fit = four(new double[][] {{1.2, -0.45}, {1.1, 0.45}, {-0.8, 0.60}, {-0.9, -0.60}}, 5 + 1.2 - 0.9, 5 + 1.1
                + 0.9, 5 - 0.8 + 1.2,
                5 - 0.9 - 1.2);
        for (int i = 0; i < 4; i++) {
            assertEquals(0, fit.offTheOthers(i).orElseThrow(), 1e-12);
        }
    }

    @Test
    void noPlaneThroughOthersOnOneLine() {
        PlaneFit fit = four(new double[][] {{-1, 0}, {0, 0}, {1, 0}, {0, 1}}, 0, 1, 0, 7);
        assertTrue(fit.offTheOthers(3).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> four(new double[][] {{-1, 0}, {0, 0}, {1, 0}, {2, 0}}, 0, 1, 0, 7));
    }
}
