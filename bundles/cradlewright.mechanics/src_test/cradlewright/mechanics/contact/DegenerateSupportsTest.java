package cradlewright.mechanics.contact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.contact.SupportRank.Hold;
import cradlewright.mechanics.contact.SupportRank.Pair;
import cradlewright.mechanics.contact.SupportRank.Place;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;

/** No support, one, two, lines, doubled supports, balance points on and outside the edge. Expected values: plane geometry. */
class DegenerateSupportsTest {

    private static final double[] STIFF = {1e6, 1e6, 1e6, 1e6};

    private static Vec3 at(double x, double y) {
        return new Vec3(x, y, 0.3 * x);
    }

    private static RigidTable table(double... xy) {
        int n = xy.length / 2;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] k = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = xy[2 * i];
            y[i] = xy[2 * i + 1];
            k[i] = STIFF[i % 4];
        }
        return new RigidTable(x, y, k, new double[n]);
    }

    @Test
    void ranksOfSupports() {
        assertEquals(Hold.NONE, SupportRank.of(List.of(), at(0, 0)).hold());
        assertEquals(Hold.ONE, SupportRank.of(List.of(at(1, 1)), at(0, 0)).hold());
        SupportRank doubled = SupportRank.of(List.of(at(1, 1), at(1, 1)), at(1, 1));
        assertEquals(Hold.ONE, doubled.hold());
        assertEquals(List.of(new Pair(0, 1)), doubled.coincident());
        SupportRank two = SupportRank.of(List.of(at(0, 0), at(2, 0), at(0, 0)), at(1, 0));
        assertEquals(Hold.TWO, two.hold());
        assertEquals(0, two.margin());
        assertEquals(new Pair(0, 1), two.line());
        assertEquals(List.of(new Pair(0, 2)), two.coincident());
        SupportRank line = SupportRank.of(List.of(at(0.3, 0.1), at(0.6, 0.2), at(0.9, 0.3), at(0, 0)), at(0.5, 0.5));
        assertEquals(Hold.COLLINEAR, line.hold());
        assertEquals(new Pair(2, 3), line.line());
        assertEquals(-0.35 / Math.hypot(1, 1.0 / 3), SupportRank.of(List.of(at(0, 0), at(0.9, 0.3), at(0.3, 0.1)),
                at(0.45, 0.5)).margin(), 1e-12);
        assertEquals(Hold.HELD, SupportRank.of(List.of(at(0, 0), at(1, 0), at(2, 1e-6)), at(1, 0)).hold());
        assertEquals(Hold.COLLINEAR, SupportRank.of(List.of(at(0, 0), at(1, 0), at(2, 1e-9)), at(1, 0)).hold());
    }

    @Test
    void marginOfTheBalancePoint() {
        List<Vec3> castors = List.of(at(0.8, 0.4), at(-0.8, 0.4), at(0.8, -0.4), at(-0.8, -0.4), at(0, 0), at(0, 0.4));
        SupportRank inside = SupportRank.of(castors, at(0.15, 0.05));
        CheckValues.load("contact").check("R.margin", inside.margin());
        assertEquals(Place.INSIDE, inside.place());
        assertEquals(new Pair(0, 1), inside.edge());
        assertNull(inside.line());
        SupportRank edge = SupportRank.of(castors, at(0.8, 0.1));
        assertEquals(Place.ON_EDGE, edge.place());
        assertEquals(0, edge.margin());
        SupportRank outside = SupportRank.of(castors, at(0.9, 0.1));
        assertEquals(Place.OUTSIDE, outside.place());
        assertEquals(-0.1, outside.margin(), 1e-12);
    }

    @Test
    void solverOnSupportsThatCannotHold() {
        assertEquals(SolveStatus.NO_EQUILIBRIUM, table().solve(1000, 0, 0).status());
        assertTrue(table().solve(0, 0, 0).isOk());
        assertEquals(SolveStatus.NO_EQUILIBRIUM, table(0, 0).solve(1000, 0.1, 0).status());
        assertEquals(1000, table(0.5, 0).solve(1000, 0.5, 0).force(0), 1e-9);
        ContactSolution line = table(0, 0, 1, 0, 2, 0).solve(900, 1, 0);
        assertEquals(300, line.force(1), 1e-9);
        assertEquals(SolveStatus.NO_EQUILIBRIUM, table(0, 0, 1, 0, 2, 0).solve(900, 1, 0.01).status());
        ContactSolution doubled = table(0, 0, 0, 0, 2, 1, 2, -1).solve(1000, 1, 0);
        assertEquals(250, doubled.force(0), 1e-9);
        assertEquals(250, doubled.force(1), 1e-9);
        ContactSolution onEdge = RigidTable.rectangle(2, 1, 1e6).solve(1000, -1, 0.1);
        assertEquals(400, onEdge.force(0), 1e-6);
        assertEquals(600, onEdge.force(1), 1e-6);
        assertEquals(0, onEdge.force(2), 1e-6);
        assertEquals(SolveStatus.NO_EQUILIBRIUM, RigidTable.rectangle(2, 1, 1e6).solve(1000, -1.001, 0).status());
    }

    @Test
    void boundsAndLimitsOfWhatFalls() {
        ContactProblem outside = RigidTable.rectangle(2, 1, 1e6).problem(1000, -1.2, 0);
        assertEquals(SolveStatus.NO_EQUILIBRIUM, StaticsBounds.of(outside).status());
        TipLimit more = TipLimit.of(outside, RigidTable.load(100, -2, 0), new double[4]);
        assertEquals(SolveStatus.NO_EQUILIBRIUM, more.status());
        assertEquals(0, more.lambda());
        assertFalse(more.standsWithoutAction());
        assertFalse(more.staysShut(2));
        TipLimit counter = TipLimit.of(outside, RigidTable.load(100, 2, 0), new double[4]);
        assertEquals(SolveStatus.OK, counter.status());
        // 1000 (1.2 - 1) = lambda 100 (2 + 1) and 1000 (1 + 1.2) = lambda 100 (2 - 1), by moments about either edge
        assertEquals(200 / 300.0, counter.least(), 1e-9);
        assertEquals(22, counter.lambda(), 1e-9);
        assertFalse(counter.standsWithoutAction());
        TipLimit safe = TipLimit.of(RigidTable.rectangle(2, 1, 1e6).problem(1000, 0, 0), RigidTable.load(100, 0.5, 0),
                new double[4]);
        assertEquals(Double.POSITIVE_INFINITY, safe.lambda());
        assertEquals(FallMotion.Kind.STAYS, safe.motionOf(0, 1, true).kind());
        LoadPath none = LoadPath.follow(outside, RigidTable.load(1, 0, 0), new double[4], 1);
        assertEquals(LoadPath.End.FAILED, none.ending());
        assertEquals(SolveStatus.NO_EQUILIBRIUM, none.status());
    }
}
