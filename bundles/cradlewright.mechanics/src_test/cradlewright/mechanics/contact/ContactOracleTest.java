package cradlewright.mechanics.contact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;

/** The solver against every contact set tried one by one, and against a general quadratic solver. */
class ContactOracleTest {

    private static final long SEED = 20260117L;
    private static final int CASES = 20_000;

    /** Independent: all contact sets (own derivation). The seed stands in every message. */
    @Test
    void agreesWithAllContactSetsTriedOneByOne() {
        Random random = new Random(SEED);
        int none = 0;
        int lifted = 0;
        for (int trial = 0; trial < CASES; trial++) {
            ContactProblem problem = RandomTables.next(random);
            String where = "seed " + SEED + " case " + trial;
            double[] expected = BruteForce.solve(RandomTables.compliance(problem), problem.gap(), problem.equilibrium(),
                    problem.load());
            ContactSolution solution = ContactSolver.solve(problem);
            if (expected == null) {
                none++;
                assertEquals(SolveStatus.NO_EQUILIBRIUM, solution.status(), where);
                continue;
            }
            assertEquals(SolveStatus.OK, solution.status(), where);
            double weight = problem.load()[0];
            for (int i = 0; i < expected.length; i++) {
                assertEquals(expected[i], solution.force(i), 1e-6 * weight, where + " support " + i);
                lifted += solution.isShut(i) ? 0 : 1;
            }
        }
        assertTrue(none > 100 && none < CASES / 5, "cases without equilibrium: " + none);
        assertTrue(lifted > CASES, "lifted supports: " + lifted);
    }

    /** Independent: the general convex solver of ojAlgo. */
    @Test
    void agreesWithAGeneralQuadraticSolver() {
        Random random = new Random(SEED + 1);
        int compared = 0;
        for (int trial = 0; trial < 400; trial++) {
            ContactProblem problem = RandomTables.next(random);
            ContactSolution solution = ContactSolver.solve(problem);
            if (!solution.isOk()) {
                continue;
            }
            double weight = problem.load()[0];
            double[] other = general(problem, weight);
            if (other == null) {
                continue;
            }
            compared++;
            for (int i = 0; i < other.length; i++) {
                assertEquals(other[i], solution.force(i) / weight, 1e-6, "seed " + (SEED + 1) + " case " + trial);
            }
        }
        assertTrue(compared > 250, "compared " + compared);
    }

    private static double[] general(ContactProblem problem, double weight) {
        int n = problem.size();
        double soft = problem.compliance(0, 0);
        double[][] c = RandomTables.compliance(problem);
        R064Store q = R064Store.FACTORY.make(n, n);
        R064Store minusG = R064Store.FACTORY.make(n, 1);
        R064Store below = R064Store.FACTORY.make(n, n);
        double[][] rows = problem.equilibrium();
        R064Store e = R064Store.FACTORY.make(rows.length, n);
        R064Store w = R064Store.FACTORY.make(rows.length, 1);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                q.set(i, j, c[i][j] / soft);
            }
            minusG.set(i, 0, -problem.gap()[i] / soft / weight);
            below.set(i, i, -1);
            for (int k = 0; k < rows.length; k++) {
                e.set(k, i, rows[k][i]);
            }
        }
        for (int k = 0; k < rows.length; k++) {
            w.set(k, 0, problem.load()[k] / weight);
        }
        Optimisation.Result result = ConvexSolver.newBuilder().objective(q, minusG).equalities(e, w)
                .inequalities(below, R064Store.FACTORY.make(n, 1)).build().solve();
        if (!result.getState().isOptimal() || Double.isNaN(result.doubleValue(0))) {
            return null;
        }
        double[] force = new double[n];
        for (int i = 0; i < n; i++) {
            force[i] = result.doubleValue(i);
        }
        return force;
    }

    /** The same bits from the right guess, from wrong guesses and from none. */
    @Test
    void warmStartGivesTheSameBits() {
        Random random = new Random(SEED + 2);
        for (int trial = 0; trial < 3000; trial++) {
            ContactProblem problem = RandomTables.next(random);
            ContactSolution cold = ContactSolver.solve(problem);
            boolean[] guess = new boolean[problem.size()];
            for (int i = 0; i < guess.length; i++) {
                guess[i] = random.nextBoolean();
            }
            ContactSolution odd = ContactSolver.solve(problem, guess);
            assertEquals(cold.status(), odd.status());
            if (cold.isOk()) {
                ContactSolution warm = ContactSolver.solve(problem, cold.shut());
                assertArrayEquals(cold.forces(), warm.forces(), 0.0, "seed " + (SEED + 2) + " case " + trial);
                assertArrayEquals(cold.gaps(), warm.gaps(), 0.0);
                assertArrayEquals(cold.multipliers(), warm.multipliers(), 0.0);
                assertArrayEquals(cold.forces(), odd.forces(), 0.0, "seed " + (SEED + 2) + " case " + trial);
                assertArrayEquals(cold.shut(), warm.shut());
            }
        }
    }
}
