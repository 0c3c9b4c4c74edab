package cradlewright.mechanics.lifting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.lifting.HungOnLegs.Leg;
import cradlewright.mechanics.verify.CheckValues;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Worked values of the rules for two, three and four legs, and the least energy of a body on stiff springs as an independent route. */
class HungOnLegsTest {

    private static final List<Integer> TWO = List.of(0, 1);
    private static final List<Integer> THREE = List.of(0, 1, 2);

    private final CheckValues values = CheckValues.load("lifting");

    private static Leg leg(Vec3 hook, double x, double y, double z) {
        Vec3 point = new Vec3(x, y, z);
        return new Leg(point, hook.minus(point).norm());
    }

    @Test
    void threeLegsAsWorkedOutFromTheHook() {
        Vec3 hook = new Vec3(0.4 / 3, 0, 1.6);
        HungOnLegs hung = HungOnLegs.of(9000, new Vec3(0.4 / 3, 0, 0),
                List.of(leg(hook, 0.9, -0.5, 0), leg(hook, 0.9, 0.5, 0), leg(hook, -1.1, 0, 0)), THREE).orElseThrow();
        assertEquals(0, hung.tilt(), 1e-7);
        assertEquals(0, hung.hook().minus(hook).norm(), 1e-12);
        for (int i = 0; i < 3; i++) {
            // The same rows as those of three legs below a hook that is given.
            values.check("G6." + (i + 1), hung.pulls().get(i) / 1000);
        }
    }

    @Test
    void twoLegsAsWorkedOutFromTheHook() {
        Vec3 hook = new Vec3(0, 0, 1.5);
        // The balance point lies below the line of both points; straight below the hook that changes nothing.
        HungOnLegs hung = HungOnLegs.of(8000, new Vec3(0, 0, -0.4), List.of(leg(hook, -0.8, 0, 0), leg(hook, 1.4, 0, 0)), TWO)
                .orElseThrow();
        assertEquals(0, hung.tilt(), 1e-7);
        values.check("G5.T1", hung.pulls().get(0) / 1000);
        values.check("G5.T2", hung.pulls().get(1) / 1000);
    }

    @Test
    void twoOfFourLegsCarryAll() {
        double height = 1.2;
        double out = height * Math.tan(Math.toRadians(30)) / Math.sqrt(2);
        Vec3 hook = new Vec3(0, 0, height);
        List<Leg> legs = List.of(leg(hook, -out, -out, 0), leg(hook, -out, out, 0), leg(hook, out, out, 0), leg(hook, out, -out, 0));
        HungOnLegs hung = HungOnLegs.of(700, new Vec3(0, 0, -0.2), legs, List.of(0, 2)).orElseThrow();
        values.check("G7.two", hung.pulls().get(0));
        assertEquals(List.of(0.0, 0.0), List.of(hung.pulls().get(1), hung.pulls().get(3)));
        assertEquals(0, hung.overlong(), 1e-12);
        assertEquals(Math.toRadians(30), hung.leans().get(1), 1e-12);
        assertEquals(10, HungOnLegs.sets(4).size());
    }

    @Test
    void theBalancePointSwingsBelowTheHook() {
        Vec3 hook = new Vec3(0, 0, 1.4);
        HungOnLegs hung = HungOnLegs.of(5000, new Vec3(0.12, 0, 0),
                List.of(leg(hook, 0.9, -0.6, 0), leg(hook, 0.9, 0.6, 0), leg(hook, -0.9, 0, 0)), THREE).orElseThrow();
        values.check("hung.tilt", Math.toDegrees(hung.tilt()));
    }

    @Test
    void nothingWhereItCannotHangSo() {
        Vec3 hook = new Vec3(0, 0, 1);
        List<Leg> legs = List.of(leg(hook, 0.5, -0.5, 0), leg(hook, 0.5, 0.5, 0), leg(hook, -0.5, 0, 0));
        assertEquals(Optional.empty(), HungOnLegs.of(1000, new Vec3(0.9, 0, 0), legs, THREE), "beside the points: the rear leg would push");
        assertEquals(Optional.empty(), HungOnLegs.of(1000, Vec3.ZERO,
                List.of(new Leg(new Vec3(-1, 0, 0), 0.9), new Leg(new Vec3(1, 0, 0), 0.9)), TWO), "legs that do not meet");
        assertEquals(Optional.empty(), HungOnLegs.of(1000, Vec3.ZERO,
                List.of(new Leg(new Vec3(-1, 0, 0), 2), new Leg(new Vec3(1, 0, 0), 2)), TWO), "as well upside down");
        assertEquals(Math.PI, HungOnLegs.of(1000, new Vec3(0, 0, 0.3),
                List.of(new Leg(new Vec3(-1, 0, 0), 2), new Leg(new Vec3(1, 0, 0), 2)), TWO).orElseThrow().tilt(), 1e-9,
                "above the line of two points it rolls over");
        assertThrows(IllegalArgumentException.class, () -> HungOnLegs.sets(5));
        assertThrows(IllegalArgumentException.class, () -> new Leg(Vec3.ZERO, 0));
    }

    @Property(seed = "63", tries = 60)
    void leastEnergyOfStiffSprings(@ForAll @DoubleRange(min = -0.25, max = 0.25) double x,
            @ForAll @DoubleRange(min = -0.15, max = 0.15) double y, @ForAll @DoubleRange(min = 0.9, max = 1.1) double first,
            @ForAll @DoubleRange(min = 0.9, max = 1.1) double second) {
        Vec3 hook = new Vec3(0, 0, 1.6);
        List<Leg> level = List.of(leg(hook, 0.9, -0.5, 0.1), leg(hook, 0.9, 0.5, 0), leg(hook, -1.1, 0, -0.1));
        List<Leg> legs = List.of(new Leg(level.get(0).point(), level.get(0).length() * first),
                new Leg(level.get(1).point(), level.get(1).length() * second), level.get(2));
        agrees(new Vec3(x, y, -0.3), legs, THREE);
        agrees(new Vec3(x, y, -0.3), List.of(new Leg(new Vec3(-0.8, 0, 0), 1.7 * first), new Leg(new Vec3(1.4, 0, 0), 2.05 * second)),
                TWO);
    }

    private static void agrees(Vec3 balance, List<Leg> legs, List<Integer> taut) {
        Optional<HungOnLegs> hung = HungOnLegs.of(8000, balance, legs, taut);
        Springs springs = new Springs(8000, balance, legs);
        springs.settle();
        if (hung.isEmpty()) {
            assertTrue(legs.stream().anyMatch(leg -> springs.pull(leg) < 1), "a leg of the springs is slack as well");
            return;
        }
        for (int i = 0; i < legs.size(); i++) {
            assertEquals(springs.pull(legs.get(i)), hung.get().pulls().get(i), 8);
        }
        assertEquals(Math.acos(springs.turn[2][2]), hung.get().tilt(), 1e-3);
    }

    /** A stiff body on springs from a hook at the origin that moves to the place of least energy by Newton steps, damped. */
    private static final class Springs {
        private static final double STIFFNESS = 5e7;
        private final double weight;
        private final Vec3 balance;
        private final List<Leg> legs;
        private double[][] turn = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        private Vec3 shift = new Vec3(0, 0, -1.8);

        Springs(double weight, Vec3 balance, List<Leg> legs) {
            this.weight = weight;
            this.balance = balance;
            this.legs = legs;
        }

        private static Vec3 turned(double[][] by, Vec3 v) {
            return new Vec3(by[0][0] * v.x() + by[0][1] * v.y() + by[0][2] * v.z(), by[1][0] * v.x() + by[1][1] * v.y() + by[1][2] * v.z(),
                    by[2][0] * v.x() + by[2][1] * v.y() + by[2][2] * v.z());
        }

        double pull(Leg leg) {
            return STIFFNESS * Math.max(0, turned(turn, leg.point()).plus(shift).norm() - leg.length());
        }

        double energy() {
            double sum = weight * turned(turn, balance).plus(shift).z();
            for (Leg leg : legs) {
                sum += pull(leg) * pull(leg) / (2 * STIFFNESS);
            }
            return sum;
        }

        /** Slope of the energy with a move and a turn about the origin of the body. */
        double[] slope() {
            Vec3 force = new Vec3(0, 0, weight);
            Vec3 moment = turned(turn, balance).cross(force);
            for (Leg leg : legs) {
                Vec3 arm = turned(turn, leg.point());
                Vec3 pull = arm.plus(shift).unit().times(pull(leg));
                force = force.plus(pull);
                moment = moment.plus(arm.cross(pull));
            }
            return new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
        }

        private void move(double[] by) {
            shift = shift.plus(new Vec3(by[0], by[1], by[2]));
            Vec3 axis = new Vec3(by[3], by[4], by[5]);
            double angle = axis.norm();
            if (angle > 0) {
                Vec3 k = axis.unit();
                double c = Math.cos(angle);
                double s = Math.sin(angle);
                double[][] step = {{c + k.x() * k.x() * (1 - c), k.x() * k.y() * (1 - c) - k.z() * s, k.x() * k.z() * (1 - c) + k.y() * s},
                    {k.y() * k.x() * (1 - c) + k.z() * s, c + k.y() * k.y() * (1 - c), k.y() * k.z() * (1 - c) - k.x() * s},
                    {k.z() * k.x() * (1 - c) - k.y() * s, k.z() * k.y() * (1 - c) + k.x() * s, c + k.z() * k.z() * (1 - c)}};
                turn = new Array2DRowRealMatrix(step).multiply(new Array2DRowRealMatrix(turn)).getData();
            }
        }

        void settle() {
            double damping = 1e3;
            for (int step = 0; step < 3000; step++) {
                double before = energy();
                double[][] turnBefore = turn;
                Vec3 shiftBefore = shift;
                double[] slope = slope();
                if (new ArrayRealVector(slope).getNorm() < 1e-3) {
                    return;
                }
                RealMatrix curve = curve().add(new Array2DRowRealMatrix(diagonal(damping)));
                move(new LUDecomposition(curve).getSolver().solve(new ArrayRealVector(slope)).mapMultiply(-1).toArray());
                if (energy() > before + 1e-9) {
                    turn = turnBefore;
                    shift = shiftBefore;
                    damping *= 4;
                } else {
                    damping = Math.max(1, damping / 3);
                }
            }
        }

        private static double[][] diagonal(double value) {
            double[][] matrix = new double[6][6];
            for (int i = 0; i < 6; i++) {
                matrix[i][i] = value;
            }
            return matrix;
        }

        private RealMatrix curve() {
            double step = 1e-6;
            double[][] curve = new double[6][6];
            double[][] turnBefore = turn;
            Vec3 shiftBefore = shift;
            for (int i = 0; i < 6; i++) {
                double[] by = new double[6];
                by[i] = step;
                move(by);
                double[] above = slope();
                turn = turnBefore;
                shift = shiftBefore;
                by[i] = -step;
                move(by);
                double[] below = slope();
                turn = turnBefore;
                shift = shiftBefore;
                for (int j = 0; j < 6; j++) {
                    curve[j][i] = (above[j] - below[j]) / (2 * step);
                }
            }
            RealMatrix whole = new Array2DRowRealMatrix(curve);
            return whole.add(whole.transpose()).scalarMultiply(0.5);
        }
    }
}
