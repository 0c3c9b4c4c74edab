package cradlewright.mechanics.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

import cradlewright.mechanics.geometry.Vec3;

/** A rigid shell on a rigid dolly on an uneven floor, against the other way round: unknown movements instead of forces. */
class TwoBodyPropertyTest {

    private static final int SHELL_PADS = 5;
    private static final int CASTORS = 4;

    private record Setting(List<Body> bodies, List<Contact> contacts) {

        CoupledProblem problem() {
            return new CoupledProblem(bodies, contacts);
        }
    }

    private static Setting setting(long seed, int side, Vec3 shift) {
        Random random = new Random(seed);
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < SHELL_PADS + CASTORS; i++) {
            boolean pad = i < SHELL_PADS;
            double x = pad ? 0.3 + 2.2 * (i / 2) / 2 + 0.2 * random.nextDouble() : i % 2 * 3;
            double y = (i / (pad ? 1 : 2) % 2 == 0 ? -0.5 : 0.5) + 0.05 * random.nextGaussian();
            contacts.add(Contact.rests("contact " + i, pad ? "shell" : "dolly", pad ? "dolly" : Contact.GROUND,
                    new Vec3(x, side * y, pad ? 0.6 : 0).plus(shift), 1e-7 + 1e-6 * random.nextDouble())
                    .withGap(0.004 * random.nextDouble()));
        }
        Body shell = Body.rigid("shell", Body.weight(300, new Vec3(1.2 + 0.3 * random.nextDouble(),
                side * 0.1 * random.nextGaussian(), 1).plus(shift)));
        Body dolly = Body.rigid("dolly", Body.weight(90, new Vec3(1.5, side * 0.05, 0.3).plus(shift)));
        return new Setting(List.of(shell, dolly), contacts);
    }

    /**
     * Independent: least potential over heave, roll and pitch of both bodies by Newton steps with halving; springs that push
     * only. Shares nothing with the solver.
     */
    @Property(seed = "31", tries = 150)
    void equalsTheDisplacementMethod(@ForAll @LongRange(max = 1_000_000) long seed) {
        Setting setting = setting(seed, 1, Vec3.ZERO);
        CoupledSolution solution = setting.problem().solve();
        double[] expected = displacementMethod(setting);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], solution.force("contact " + i), 1e-3, "seed " + seed + " contact " + i);
        }
    }

    @Property(seed = "32", tries = 100)
    void mirrorAndShiftChangeNothing(@ForAll @LongRange(max = 1_000_000) long seed) {
        CoupledSolution here = setting(seed, 1, Vec3.ZERO).problem().solve();
        CoupledSolution mirrored = setting(seed, -1, Vec3.ZERO).problem().solve();
        CoupledSolution moved = setting(seed, 1, new Vec3(4, -2.5, 0.7)).problem().solve();
        for (int i = 0; i < SHELL_PADS + CASTORS; i++) {
            assertEquals(here.force("contact " + i), mirrored.force("contact " + i), 1e-5);
            assertEquals(here.force("contact " + i), moved.force("contact " + i), 1e-4);
        }
        for (String body : List.of("shell", "dolly")) {
            assertTrue(here.unbalanced(body).force().norm() < 1e-9 * 4000 && here.unbalanced(body).moment().norm() < 1e-8 * 4000);
        }
    }

    private static double[] displacementMethod(Setting setting) {
        int n = setting.contacts.size();
        double[][] rows = new double[n][6];
        for (int i = 0; i < n; i++) {
            Contact c = setting.contacts.get(i);
            boolean pad = c.above().equals("shell");
            double[] lowering = {-1, -c.point().x(), -c.point().y()};
            for (int k = 0; k < 3; k++) {
                rows[i][pad ? k : 3 + k] = lowering[k];
                rows[i][3 + k] -= pad ? lowering[k] : 0;
            }
        }
        double[] load = new double[6];
        for (int b = 0; b < 2; b++) {
            Body body = setting.bodies.get(b);
            load[3 * b] = body.loads().force().z();
            load[3 * b + 1] = -body.loads().moment().y();
            load[3 * b + 2] = body.loads().moment().x();
        }
        double[] u = new double[6];
        for (int step = 0; step < 400; step++) {
            double[] gradient = gradient(setting, rows, load, u);
            if (norm(gradient) < 1e-9) {
                break;
            }
            double[] move = newton(setting, rows, u, gradient);
            double length = 1;
            while (length > 1e-9 && potential(setting, rows, load, moved(u, move, length)) > potential(setting, rows, load, u)) {
                length /= 2;
            }
            u = moved(u, move, length);
        }
        double[] force = new double[n];
        for (int i = 0; i < n; i++) {
            force[i] = press(setting, rows, u, i) / setting.contacts.get(i).compliance();
        }
        return force;
    }

    private static double press(Setting setting, double[][] rows, double[] u, int i) {
        double sum = -setting.contacts.get(i).gap();
        for (int k = 0; k < 6; k++) {
            sum += rows[i][k] * u[k];
        }
        return Math.max(0, sum);
    }

    private static double potential(Setting setting, double[][] rows, double[] load, double[] u) {
        double sum = 0;
        for (int i = 0; i < rows.length; i++) {
            double p = press(setting, rows, u, i);
            sum += 0.5 * p * p / setting.contacts.get(i).compliance();
        }
        for (int k = 0; k < 6; k++) {
            sum -= load[k] * u[k];
        }
        return sum;
    }

    private static double[] gradient(Setting setting, double[][] rows, double[] load, double[] u) {
        double[] g = new double[6];
        for (int k = 0; k < 6; k++) {
            g[k] = -load[k];
            for (int i = 0; i < rows.length; i++) {
                g[k] += rows[i][k] * press(setting, rows, u, i) / setting.contacts.get(i).compliance();
            }
        }
        return g;
    }

    /** Newton direction with a touch of stiffness everywhere, so that a body in the air comes down. */
    private static double[] newton(Setting setting, double[][] rows, double[] u, double[] gradient) {
        double[][] h = new double[6][7];
        for (int i = 0; i < rows.length; i++) {
            double k = press(setting, rows, u, i) > 0 ? 1 / setting.contacts.get(i).compliance() : 0;
            for (int a = 0; a < 6; a++) {
                for (int b = 0; b < 6; b++) {
                    h[a][b] += k * rows[i][a] * rows[i][b];
                }
            }
        }
        for (int a = 0; a < 6; a++) {
            h[a][a] += 1;
            h[a][6] = -gradient[a];
        }
        return eliminate(h);
    }

    private static double[] eliminate(double[][] h) {
        int n = h.length;
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                double factor = i == k ? 0 : h[i][k] / h[k][k];
                for (int j = k; j <= n; j++) {
                    h[i][j] -= factor * h[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = h[i][n] / h[i][i];
        }
        return x;
    }

    private static double[] moved(double[] u, double[] move, double length) {
        double[] result = u.clone();
        for (int k = 0; k < result.length; k++) {
            result[k] += length * move[k];
        }
        return result;
    }

    private static double norm(double[] v) {
        double sum = 0;
        for (double x : v) {
            sum += x * x;
        }
        return Math.sqrt(sum);
    }
}
