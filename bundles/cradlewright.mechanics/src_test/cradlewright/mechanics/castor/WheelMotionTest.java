package cradlewright.mechanics.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoublePredicate;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.verify.CheckValues;

/** Rolling resistance from the pressure in the contact, and the way over a step marched in time. */
class WheelMotionTest {

    private static final CheckValues VALUES = CheckValues.load("castor");
    private static final double G = Constants.GRAVITY;
    private static final double RADIUS = 0.0625;

    /** A pressure that is higher in front holds the wheel back: moments of its strips about the axle, balanced by the push. */
    @Test
    void pushFromTheSkewedPressure() {
        double weight = 7000;
        double length = 0.020;
        double ahead = 0.003;
        int strips = 20_000;
        // pressure linear along the contact; its slope follows from where the whole force is to act
        double slope = 12 * ahead / (length * length);
        double force = 0;
        double moment = 0;
        for (int i = 0; i < strips; i++) {
            double x = ((i + 0.5) / strips - 0.5) * length;
            double strip = weight / strips * (1 + slope * x);
            force += strip;
            moment += strip * x;
        }
        assertEquals(weight, force, 1e-6 * weight);
        double push = moment / RADIUS;
        VALUES.check("roll.skewed-pressure", push);
        assertEquals(push, Rolling.leverArmForce(weight, ahead, RADIUS), 1e-6 * push);
    }

    @Test
    void speedOverAStepMarchedInTime() {
        double turning = leastSpeed(speed -> turnsOver(speed, 0.005));
        VALUES.check("march.energy", turning);
        assertEquals(turning, StepClimb.energySpeed(0.005), 1e-4 * turning);
        double low = leastSpeed(speed -> hitsAndClimbs(speed, 0.005));
        VALUES.check("march.hit", low);
        assertEquals(low, StepClimb.plasticHitSpeed(RADIUS, 0.005), 5e-3 * low);
        double high = leastSpeed(speed -> hitsAndClimbs(speed, 0.020));
        VALUES.check("march.hit-high", high);
        assertEquals(high, StepClimb.plasticHitSpeed(RADIUS, 0.020), 5e-3 * high);
    }

    private static double leastSpeed(DoublePredicate over) {
        double low = 0;
        double high = 3;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (over.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** The mass at the axle turns about the corner from the floor with a speed along its arc; true when it comes over the top. */
    private static boolean turnsOver(double speed, double step) {
        double lean = Math.acos((RADIUS - step) / RADIUS);
        double rate = -speed / RADIUS;
        double dt = 2e-5;
        while (lean > 0 && rate < 0) {
            // fourth-order steps of lean'' = g sin(lean)/r
            double k1 = G * Math.sin(lean) / RADIUS;
            double k2 = G * Math.sin(lean + rate * dt / 2) / RADIUS;
            double k3 = G * Math.sin(lean + rate * dt / 2 + k1 * dt * dt / 4) / RADIUS;
            double k4 = G * Math.sin(lean + rate * dt + k2 * dt * dt / 2) / RADIUS;
            lean += rate * dt + dt * dt / 6 * (k1 + k2 + k3);
            rate += dt / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        return lean <= 0;
    }

    /** One kilogram at the axle runs along the floor into a stiff corner that gives nothing back; true when it comes over. */
    private static boolean hitsAndClimbs(double speed, double step) {
        double stiffness = 1e8;
        // twenty times critical: with less the corner throws part of the speed back
        double damping = 40 * Math.sqrt(stiffness);
        double dt = 1e-6;
        double x = -Math.sqrt(step * (2 * RADIUS - step)) - 1e-6;
        double z = RADIUS;
        double vx = speed;
        double vz = 0;
        for (int i = 0; i < 1_000_000; i++) {
            double distance = Math.hypot(x, z - step);
            double nx = x / distance;
            double nz = (z - step) / distance;
            double corner = Math.max(0, stiffness * (RADIUS - distance) - damping * (vx * nx + vz * nz));
            if (distance >= RADIUS) {
                corner = 0;
            }
            double floor = z < RADIUS ? Math.max(0, stiffness * (RADIUS - z) - damping * vz) : 0;
            vx += corner * nx * dt;
            vz += (corner * nz + floor - G) * dt;
            x += vx * dt;
            z += vz * dt;
            if (x >= 0) {
                return true;
            }
            if (vx < 0) {
                return false;
            }
        }
        throw new IllegalStateException("neither over nor back at " + speed + " m/s");
    }
}
