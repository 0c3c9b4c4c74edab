package cradlewright.mechanics.contact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** What must hold for every table: the invariants of supports. */
class ContactPropertyTest {

    private static ContactProblem random(long seed) {
        Random random = new Random(seed);
        ContactProblem problem = RandomTables.next(random);
        while (!ContactSolver.solve(problem).isOk()) {
            problem = RandomTables.next(random);
        }
        return problem;
    }

    private static ContactProblem rebuild(ContactProblem p, double[] gap, double[][] rows, double[] load) {
        return new ContactProblem(RandomTables.compliance(p), gap, rows, load, p.kinds());
    }

    @Property(seed = "11", tries = 300)
    void balancesTheLoadAndPushesOnly(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem problem = random(seed);
        ContactSolution solution = ContactSolver.solve(problem);
        double[][] rows = problem.equilibrium();
        double weight = problem.load()[0];
        for (int k = 0; k < rows.length; k++) {
            assertEquals(problem.load()[k], Dense.dot(rows[k], solution.forces()), 1e-9 * weight * 3);
        }
        for (int i = 0; i < problem.size(); i++) {
            assertTrue(solution.force(i) >= 0 && solution.gap(i) >= 0 && solution.force(i) * solution.gap(i) == 0);
        }
        assertTrue(solution.residuals().largest() <= ContactSolver.RESIDUAL_TOLERANCE);
    }

    @Property(seed = "12", tries = 200)
    void mirrorAndShiftChangeNothing(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        double[] f = ContactSolver.solve(p).forces();
        double[][] e = p.equilibrium();
        double[] w = p.load();
        double[][] mirrored = {e[0], e[1], negative(e[2])};
        double[] other = ContactSolver.solve(rebuild(p, p.gap(), mirrored, new double[] {w[0], w[1], -w[2]})).forces();
        assertArrayEquals(f, other, 1e-8 * w[0]);
        double[][] moved = p.equilibrium();
        Dense.addTimes(moved[1], 7.5, e[0]);
        Dense.addTimes(moved[2], -3.25, e[0]);
        double[] shifted = ContactSolver.solve(rebuild(p, p.gap(), moved,
                new double[] {w[0], w[1] + 7.5 * w[0], w[2] - 3.25 * w[0]})).forces();
        assertArrayEquals(f, shifted, 1e-7 * w[0]);
    }

    private static double[] negative(double[] v) {
        return Arrays.stream(v).map(x -> -x).toArray();
    }

    @Property(seed = "13", tries = 200)
    void forcesScaleWithLoadAndGaps(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        double[] f = ContactSolver.solve(p).forces();
        double s = 1.7;
        double[] scaled = ContactSolver.solve(p.withLoad(times(p.load(), s)).withGap(times(p.gap(), s))).forces();
        assertArrayEquals(times(f, s), scaled, 1e-8 * p.load()[0]);
    }

    private static double[] times(double[] v, double s) {
        return Arrays.stream(v).map(x -> s * x).toArray();
    }

    @Property(seed = "14", tries = 200)
    void aPlaneOfShimsChangesNoForce(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        double[] gap = p.gap();
        double[][] e = p.equilibrium();
        Dense.addTimes(gap, 0.003, e[0]);
        Dense.addTimes(gap, -0.002, e[1]);
        Dense.addTimes(gap, 0.004, e[2]);
        double[] f = ContactSolver.solve(p).forces();
        assertArrayEquals(f, ContactSolver.solve(p.withGap(gap)).forces(), 1e-7 * p.load()[0]);
    }

    /** One more support lowers the complementary energy or leaves it, which raises the potential or leaves it. */
    @Property(seed = "15", tries = 200)
    void oneMoreSupportNeverLowersThePotential(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        int n = p.size();
        Random random = new Random(seed + 1);
        double[][] c = new double[n + 1][n + 1];
        for (int i = 0; i < n; i++) {
            System.arraycopy(RandomTables.compliance(p)[i], 0, c[i], 0, n);
        }
        c[n][n] = 1e-6;
        double[] gap = Arrays.copyOf(p.gap(), n + 1);
        gap[n] = 0.008 * random.nextDouble();
        double[][] e = p.equilibrium();
        double[][] wide = new double[e.length][];
        double[] column = {1, 3 * random.nextDouble(), random.nextDouble()};
        for (int k = 0; k < e.length; k++) {
            wide[k] = Arrays.copyOf(e[k], n + 1);
            wide[k][n] = column[k];
        }
        ContactProblem more = new ContactProblem(c, gap, wide, p.load(), Collections.nCopies(n + 1, ContactKind.UNILATERAL));
        double before = p.energy(ContactSolver.solve(p).forces());
        double after = more.energy(ContactSolver.solve(more).forces());
        assertTrue(after <= before + 1e-9 * Math.abs(before), before + " " + after);
    }

    @Property(seed = "16", tries = 60)
    void forcesLieWithinTheStaticsBounds(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        ContactSolution solution = ContactSolver.solve(p);
        StaticsBounds bounds = StaticsBounds.of(p);
        assertEquals(SolveStatus.OK, bounds.status());
        double slack = 1e-7 * p.load()[0];
        for (int i = 0; i < p.size(); i++) {
            assertTrue(solution.force(i) >= bounds.least(i) - slack && solution.force(i) <= bounds.largest(i) + slack);
        }
    }

    /** Independent: bisection on whether the contact problem has an answer. */
    @Property(seed = "17", tries = 60)
    void tippingLimitEqualsBisection(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        Random random = new Random(seed + 2);
        double[] dw = RigidTable.load(500, -2 + 7 * random.nextDouble(), -2 + 4 * random.nextDouble());
        TipLimit limit = TipLimit.of(p, dw, new double[p.size()]);
        assertEquals(SolveStatus.OK, limit.status());
        assertTrue(limit.standsWithoutAction());
        double low = 0;
        double high = 1e5;
        if (stands(p, dw, high)) {
            assertEquals(Double.POSITIVE_INFINITY, limit.lambda());
            return;
        }
        for (int i = 0; i < 70; i++) {
            double middle = 0.5 * (low + high);
            if (stands(p, dw, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(low, limit.lambda(), 1e-6 * Math.max(1, low));
    }

    private static boolean stands(ContactProblem p, double[] dw, double lambda) {
        double[] w = p.load();
        Dense.addTimes(w, lambda, dw);
        return ContactSolver.solve(p.withLoad(w)).status() != SolveStatus.NO_EQUILIBRIUM;
    }

    /** Independent: solving afresh at points of the path, between breakpoints and close to them. */
    @Property(seed = "18", tries = 200)
    void pathEqualsFreshSolves(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        Random random = new Random(seed + 3);
        double[] dw = random.nextInt(4) == 0 ? new double[3]
                : RigidTable.load(random.nextBoolean() ? 800 : -100, 3 * random.nextDouble(), 1.2 * random.nextDouble());
        double[] dg = new double[p.size()];
        dg[random.nextInt(dg.length)] = 0.01 * (random.nextDouble() - 0.3);
        LoadPath path = LoadPath.follow(p, dw, dg, 1.5);
        assertEquals(SolveStatus.OK, path.status());
        for (int k = 0; k <= 40; k++) {
            double t = Math.min(path.reached(), path.reached() * k / 40);
            double[] w = p.load();
            double[] g = p.gap();
            Dense.addTimes(w, t, dw);
            Dense.addTimes(g, t, dg);
            ContactSolution fresh = ContactSolver.solve(p.withLoad(w).withGap(g));
            if (k == 40 && path.ending() == LoadPath.End.FALLS && !fresh.isOk()) {
                continue;
            }
            assertArrayEquals(fresh.forces(), path.forcesAt(t), 1e-6 * p.load()[0]);
        }
        if (path.ending() == LoadPath.End.FALLS) {
            double[] w = p.load();
            Dense.addTimes(w, path.reached() * 1.0001 + 1e-6, dw);
            assertEquals(SolveStatus.NO_EQUILIBRIUM, ContactSolver.solve(p.withLoad(w)).status());
        } else {
            assertEquals(1.5, path.reached());
        }
    }

    /** Independent: the largest force over many points of the ellipse, each solved. */
    @Property(seed = "19", tries = 60)
    void unfavourableEndsCoverTheEllipse(@ForAll @LongRange(max = 1_000_000) long seed) {
        ContactProblem p = random(seed);
        double weight = p.load()[0];
        double[] centre = {p.load()[1] / weight, p.load()[2] / weight};
        double[][] slopes = {{1, 0, 0}, {centre[0], weight, 0}, {centre[1], 0, weight}};
        double[][] covariance = {{400, 0, 0}, {0, 1e-6, 2e-7}, {0, 2e-7, 1e-6}};
        double[][] root = Dense.cholesky(covariance, 1e-12);
        GradientBounds bounds = GradientBounds.of(p, slopes, new double[p.size()][3], covariance, 2);
        Random random = new Random(seed);
        for (int trial = 0; trial < 40; trial++) {
            double[] z = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            double size = 2 / Dense.norm(z);
            double[] w = p.load();
            for (int a = 0; a < 3; a++) {
                double shift = size * Dense.dot(root[a], z);
                for (int k = 0; k < 3; k++) {
                    w[k] += slopes[k][a] * shift;
                }
            }
            ContactSolution at = ContactSolver.solve(p.withLoad(w));
            for (int i = 0; i < p.size() && at.isOk() && bounds.endStatus() == SolveStatus.OK; i++) {
                double width = bounds.bound(i).high() - bounds.bound(i).low();
                double slack = 0.1 * width + 0.002 * weight;
                assertTrue(at.force(i) <= bounds.bound(i).high() + slack, "above " + i);
                assertTrue(at.force(i) >= bounds.bound(i).low() - slack, "below " + i);
            }
        }
    }
}
