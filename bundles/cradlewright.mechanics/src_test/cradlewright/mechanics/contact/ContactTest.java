package cradlewright.mechanics.contact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.verify.CheckValues;

/** Contact forces, bounds, tipping limits and paths against the check values. */
class ContactTest {

    private static final CheckValues VALUES = CheckValues.load("contact");
    private static final String[] CORNERS = {"FL", "FR", "RR", "RL"};

    /** Rectangle 1.8 by 1.0 m: front at x -0.9; balance point 0.2 m forward, 0.05 m to the right. */
    private static final RigidTable TABLE = RigidTable.rectangle(1.8, 1.0, 1e6);

    private static void corners(String row, ContactSolution solution, double unit) {
        for (int i = 0; i < 4; i++) {
            VALUES.check(row + "." + CORNERS[i], solution.force(i) / unit);
        }
    }

    @Test
    void threeSupportsFollowFromStatics() {
        RigidTable table = new RigidTable(new double[] {0, 0, 1.8}, new double[] {-0.6, 0.6, -0.1},
                new double[] {1e6, 3e5, 1e7}, new double[] {0.004, 0, 0.002});
        ContactSolution solution = table.solve(6000, 0.75, -0.05);
        VALUES.check("B1.left", solution.force(0));
        VALUES.check("B1.right", solution.force(1));
        VALUES.check("B1.rear", solution.force(2));
    }

    @Test
    void rectangleOnEqualSprings() {
        corners("B2", TABLE.solve(4000, -0.2, 0.05), 1);
    }

    @Test
    void oneShortShimWarps() {
        corners("B3.1mm", TABLE.low(0, 0.001).solve(4000, 0, 0), 1);
        RigidTable shimmed = TABLE.low(0, 0.001);
        VALUES.check("B3.energy", shimmed.problem(4000, 0, 0).energy(shimmed.solve(4000, 0, 0).forces()));
        corners("B3.4mm", TABLE.low(0, 0.004).solve(4000, 0, 0), 1);
        LoadPath path = LoadPath.follow(TABLE.problem(4000, 0, 0), new double[3], new double[] {1, 0, 0, 0}, 0.02);
        VALUES.check("B3.lift-off", path.goesLight(0).orElseThrow());
    }

    @Test
    void anotherSupportThanTheShortOneLifts() {
        corners("B4", TABLE.low(0, 0.006).solve(4000, -0.2, 0.05), 1);
        corners("B4b", TABLE.low(0, 0.012).solve(4000, -0.2, -0.12), 1);
    }

    @Test
    void liftPadsOfUnequalStiffness() {
        RigidTable pads = new RigidTable(new double[] {-0.9, -0.9, 0.9, 0.9}, new double[] {-0.45, 0.45, 0.5, -0.5},
                new double[] {4e5, 4e5, 2.5e5, 2.5e5}, new double[4]);
        double weight = 748 * Constants.GRAVITY;
        corners("G11.level", pads.solve(weight, 0.131, 0), Constants.GRAVITY);
        corners("G11.8mm", pads.low(0, 0.008).solve(weight, 0.131, 0), Constants.GRAVITY);
        corners("G11.20mm", pads.low(0, 0.020).solve(weight, 0.131, 0), Constants.GRAVITY);
    }

    /** Published readings of four sling legs: equal springs with the gap that makes up their warp give them back. */
    @Test
    void slingLegsOfARigidLoadCarryOnTheDiagonal() {
        double[] readings = {348, 23, 303, 18};
        double sum = 692;
        double warp = VALUES.expected("B6.warp");
        double x = (-readings[0] - readings[1] + readings[2] + readings[3]) / sum;
        double y = (-readings[0] + readings[1] + readings[2] - readings[3]) / sum;
        RigidTable load = RigidTable.rectangle(2, 2, 1);
        ContactSolution slack = load.low(1, 4 * warp).solve(sum, x, y);
        assertArrayEquals(readings, slack.forces(), 0.5);
        VALUES.check("B6.diagonal", (slack.force(0) + slack.force(2)) / sum);
        ContactSolution even = load.solve(sum, x, y);
        VALUES.check("B6.warp", slack.force(0) - even.force(0));
        StaticsBounds bounds = StaticsBounds.of(load.problem(sum, x, y));
        for (int i = 0; i < 4; i++) {
            assertTrue(bounds.least(i) <= readings[i] && readings[i] <= bounds.largest(i));
        }
    }

    @Test
    void rigidLegsCarryAnythingUpToHalf() {
        StaticsBounds bounds = StaticsBounds.of(TABLE.problem(4000, 0, 0));
        for (int i = 0; i < 4; i++) {
            VALUES.check("legs.least", bounds.least(i));
            VALUES.check("legs.largest", bounds.largest(i));
        }
    }

    @Test
    void overhangUnloadsTheFront() {
        RigidTable table = new RigidTable(new double[] {0, 0, 1.8, 1.8}, new double[] {-0.5, 0.5, 0.5, -0.5},
                new double[] {1e6, 1e6, 1e6, 1e6}, new double[4]);
        ContactProblem problem = table.problem(3500, 0.9, 0);
        ContactSolution before = ContactSolver.solve(problem);
        VALUES.check("B10.front", before.force(0) + before.force(1));
        double[] person = RigidTable.load(1, 1.8 + 1.1, 0);
        LoadPath path = LoadPath.follow(problem, person, new double[4], 5000);
        assertEquals(LoadPath.End.FALLS, path.ending());
        VALUES.check("B10.first-light", path.firstLight().orElseThrow());
        assertEquals(path.reached(), path.firstLight().orElseThrow(), 1e-6);
        TipLimit limit = TipLimit.of(problem, RigidTable.load(98 * Constants.GRAVITY, 2.9, 0), new double[4]);
        VALUES.check("B10.ratio", limit.lambda());
        assertFalse(limit.staysShut(0));
        assertTrue(limit.staysShut(2) && limit.staysShut(3));
    }

    private static double overhangRatio(double edge, double person) {
        RigidTable dolly = new RigidTable(new double[] {-0.8, -0.8, edge, edge}, new double[] {-0.4, 0.4, 0.4, -0.4},
                new double[] {1e6, 1e6, 1e6, 1e6}, new double[4]);
        return TipLimit.of(dolly.problem(450 * Constants.GRAVITY, 0.1, 0), RigidTable.load(person * Constants.GRAVITY, 1.9, 0),
                new double[4]).lambda();
    }

    @Test
    void personOnAnOverhang() {
        VALUES.check("F4.ratio", overhangRatio(0.8, 98));
        VALUES.check("F4.two-people", overhangRatio(0.8, 196));
        VALUES.check("F10.one", overhangRatio(0.543216, 98));
        VALUES.check("F10.two", overhangRatio(0.811290, 196));
    }

    @Test
    void doubtfulMassAndBalancePoint() {
        double weight = 4000;
        double[][] slopes = {{1, 0, 0}, {0, weight, 0}, {0, 0, weight}};
        double[][] covariance = {{80 * 80, 0, 0}, {0, 0.02 * 0.02, 0}, {0, 0, 0.01 * 0.01}};
        GradientBounds bounds = GradientBounds.of(TABLE.problem(weight, 0, 0), slopes, new double[4][3], covariance, 2);
        for (int i = 0; i < 4; i++) {
            VALUES.check("U.standard", bounds.bound(i).standardUncertainty());
            VALUES.check("U.upper", bounds.bound(i).high());
            assertEquals(2000, bounds.bound(i).low() + bounds.bound(i).high(), 1e-6);
        }
    }

    @Test
    void everyFormulaIsNamedOnce() {
        Set<String> ids = new HashSet<>();
        for (Formula formula : ContactFormulas.all()) {
            assertTrue(formula.id().startsWith("contact.") && ids.add(formula.id()), formula.id());
        }
    }

    @Test
    void refusesImpossibleInput() {
        List<ContactKind> one = List.of(ContactKind.UNILATERAL);
        double[][] row = {{1}};
        assertThrows(IllegalArgumentException.class,
                () -> new ContactProblem(new double[][] {{1e-10}}, new double[1], row, new double[1], one));
        assertThrows(IllegalArgumentException.class,
                () -> new ContactProblem(new double[][] {{1e-6}}, new double[] {Double.NaN}, row, new double[1], one));
        assertThrows(IllegalArgumentException.class,
                () -> new ContactProblem(new double[][] {{1e-6}}, new double[2], row, new double[1], one));
        assertThrows(IllegalArgumentException.class, () -> new ContactProblem(new double[][] {{1e-6, 1e-7}, {2e-7, 1e-6}},
                new double[2], new double[][] {{1, 1}}, new double[1], Collections.nCopies(2, ContactKind.UNILATERAL)));
        ContactSolution none = TABLE.solve(4000, 2, 0);
        assertEquals(SolveStatus.NO_EQUILIBRIUM, none.status());
        assertThrows(IllegalStateException.class, () -> none.force(0));
    }
}
