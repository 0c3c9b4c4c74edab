package cradlewright.mechanics.contact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
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

    /** Independent: the simplex solver of Hipparchus, on tables without doubled supports, where it can be trusted. */
    @Test
    void boundsAgreeWithAnotherSimplexSolver() {
        Random random = new Random(SEED + 3);
        int compared = 0;
        for (int trial = 0; trial < 300; trial++) {
            ContactProblem problem = RandomTables.next(random);
            if (isDoubled(problem.equilibrium())) {
                continue;
            }
            StaticsBounds bounds = StaticsBounds.of(problem);
            if (bounds.status() != SolveStatus.OK) {
                continue;
            }
            double weight = problem.load()[0];
            for (int i = 0; i < problem.size(); i++) {
                compared++;
                String where = "seed " + (SEED + 3) + " case " + trial + " support " + i;
                assertEquals(extreme(problem, i, GoalType.MINIMIZE), bounds.least(i) / weight, 1e-8, where);
                assertEquals(extreme(problem, i, GoalType.MAXIMIZE), bounds.largest(i) / weight, 1e-8, where);
            }
        }
        assertTrue(compared > 500, "compared " + compared);
    }

    private static boolean isDoubled(double[][] rows) {
        for (int i = 0; i < rows[1].length; i++) {
            for (int j = 0; j < i; j++) {
                if (rows[1][i] == rows[1][j] && rows[2][i] == rows[2][j]) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double extreme(ContactProblem problem, int support, GoalType goal) {
        double[] objective = new double[problem.size()];
        objective[support] = 1;
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int k = 0; k < problem.rowCount(); k++) {
            constraints.add(new LinearConstraint(problem.equilibrium()[k], Relationship.EQ,
                    problem.load()[k] / problem.load()[0]));
        }
        return new SimplexSolver().optimize(new LinearObjectiveFunction(objective, 0), new LinearConstraintSet(constraints), goal,
                new NonNegativeConstraint(true)).getValue();
    }

    /** Two supports at one place share nothing that statics can tell apart: each carries 0 to the whole of their place. */
    @Test
    void doubledSupportsHaveTheSameBounds() {
        RigidTable table = new RigidTable(new double[] {0, 0, 2, 2}, new double[] {0, 0, 1, -1},
                new double[] {1e6, 1e6, 1e6, 1e6}, new double[4]);
        StaticsBounds bounds = StaticsBounds.of(table.problem(1000, 1, 0));
        for (int i = 0; i < 2; i++) {
            assertEquals(0, bounds.least(i), 1e-9);
            assertEquals(500, bounds.largest(i), 1e-9);
        }
        assertEquals(250, bounds.least(2), 1e-9);
        assertEquals(250, bounds.largest(3), 1e-9);
    }
}
