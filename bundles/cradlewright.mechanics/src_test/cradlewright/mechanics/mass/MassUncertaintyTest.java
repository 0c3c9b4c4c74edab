package cradlewright.mechanics.mass;

import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.MASS;
import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.X;
import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.Y;
import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.Z;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MassUncertaintyTest {

    private static final int DRAWS = 100_000;

    private final CheckValues values = CheckValues.load("mass");

    @Test
    void unrelatedErrors() {
        EstimatedBalance e = MassUncertainty.of(SmallCar.ALL);
        values.check("A2.ux", 1000 * e.standard(X));
        values.check("A2.ux.mc", 1000 * e.standard(X));
        values.check("A2.um", e.standard(MASS));
        values.check("A2.um.mc", e.standard(MASS));
        values.check("A2.uz.mc", 1000 * e.standard(Z));
        assertEquals(2 * e.standard(X), e.expanded(X), 1e-15);
        values.check("A2.rect", 1000 * MassUncertainty.ofLimits(0.003));
    }

    @Test
    void errorsOfOneScaleGoTogether() {
        EstimatedBalance e = MassUncertainty.of(SmallCar.ALL.stream().map(p -> SmallCar.onScale(p, "bay scale")).toList());
        values.check("A2.corr.ux.mc", 1000 * e.standard(X));
        values.check("A2.corr.um", e.standard(MASS));
    }

    @Test
    void wholeCovarianceAgreesWithDraws() {
        List<MassPoint> parts = new ArrayList<>();
        for (int i = 0; i < SmallCar.ALL.size(); i++) {
            MassPoint p = SmallCar.ALL.get(i);
            // an error of 5 kg each, so that a common scale does not cancel; uneven places
            String scale = i < 3 ? "crane" : i < 5 ? "floor" : MassPoint.NO_COMMON_SCALE;
            parts.add(new MassPoint(p.mass(), p.position(), 5, new Vec3(0.02, 0.01 + 0.002 * i, 0.03), scale));
        }
        compareWithDraws(MassUncertainty.of(parts), r -> Composition.of(draw(parts, r)));
    }

    @Test
    void removalFromAWeighedWholeAgreesWithDraws() {
        EstimatedBalance whole = MassUncertainty.of(SmallCar.ALL);
        MassPoint engine = SmallCar.ENGINE;
        compareWithDraws(MassUncertainty.without(whole, engine), r -> Composition.of(draw(SmallCar.ALL, r))
                .minus(draw(List.of(engine), r).get(0).balance()));
        MassPoint box = SmallCar.part(180, 3.9, 0.4, 0.9);
        compareWithDraws(MassUncertainty.with(whole, box), r -> Composition.of(draw(SmallCar.ALL, r))
                .plus(draw(List.of(box), r).get(0).balance()));
    }

    @Test
    void onePartOfUnknownMassByHand() {
        EstimatedBalance exact = MassUncertainty.of(List.of(MassPoint.exact(100, Vec3.ZERO)));
        MassPoint part = new MassPoint(20, new Vec3(1, 0, 0), 2, Vec3.ZERO, MassPoint.NO_COMMON_SCALE);
        values.check("off.um", MassUncertainty.without(exact, part).standard(MASS));
        values.check("off.ux", MassUncertainty.without(exact, part).standard(X));
        values.check("off.um", MassUncertainty.with(exact, part).standard(MASS));
        values.check("on.ux", MassUncertainty.with(exact, part).standard(X));
    }

    @Test
    void aWholeOfUnknownMassByHand() {
        double[][] covariance = new double[4][4];
        covariance[0][0] = 10 * 10;
        EstimatedBalance whole = new EstimatedBalance(new Balance(1000, new Vec3(1.2, 0, 0)), covariance);
        MassPoint part = MassPoint.exact(200, new Vec3(0.2, 0, 0));
        EstimatedBalance rest = MassUncertainty.without(whole, part);
        values.check("off.whole.um", rest.standard(MASS));
        values.check("off.whole.ux", rest.standard(X));
        values.check("off.whole.cov", rest.covariance(MASS, X));
        values.check("on.whole.ux", MassUncertainty.with(whole, part).standard(X));
    }

    @Test
    void worstPointIsTheFurthestOfTheEllipsoid() {
        EstimatedBalance e = MassUncertainty.of(SmallCar.ALL);
        // moment about a line 0.4 m ahead of the balance point: W (x - x0) with gradient (x - x0, m, 0, 0)
        double arm = 0.4;
        double m = e.balance().mass();
        Balance worst = e.worst(arm, new Vec3(m, 0, 0));
        double rise = arm * (worst.mass() - m) + m * (worst.point().x() - e.balance().point().x());
        double best = 0;
        for (int i = 0; i < 3600; i++) {
            double a = Math.toRadians(i / 10.0);
            double um = e.standard(MASS);
            double c = e.covariance(MASS, X) / um;
            double ux = Math.sqrt(e.covariance(X, X) - c * c);
            double dm = 2 * um * Math.cos(a);
            double dx = 2 * (c * Math.cos(a) + ux * Math.sin(a));
            best = Math.max(best, arm * dm + m * dx);
        }
        assertEquals(best, rise, 1e-5 * best);
        Balance other = e.worst(-arm, new Vec3(-m, 0, 0));
        assertEquals(2 * m, worst.mass() + other.mass(), 1e-9);
    }

    @Test
    void worstPointOfUnrelatedErrors() {
        MassPoint part = new MassPoint(100, new Vec3(2, 0, 0), 3, new Vec3(0.04, 0, 0), MassPoint.NO_COMMON_SCALE);
        Balance worst = MassUncertainty.of(List.of(part)).worst(1, new Vec3(100, 0, 0));
        values.check("worst.x", worst.point().x());
        values.check("worst.m", worst.mass());
    }

    @Test
    void withAScaleThatNobodyNamedTheWiderOfBothCounts() {
        List<MassPoint> parts = SmallCar.ALL.stream().map(p -> SmallCar.onScale(p, "some scale")).toList();
        EstimatedBalance e = MassUncertainty.ofPerhapsOneScale(parts);
        // The mass as on one scale, 2 % of the sum; the balance point as on seven, since equal shares of error cancel there.
        values.check("A2.corr.um", e.standard(MASS));
        values.check("A2.ux", 1000 * e.standard(X));
        // Errors that are no equal shares: 5 kg on a part of 100 kg at -1 m, 1 kg on one of 100 kg at 1 m. On one scale the balance point
        // is off by (-5 + 1)/200 m, on two by hypot(5, 1)/200 m. With both on one side of the common balance point, (5 + 1)/400 m is wider.
        EstimatedBalance uneven = MassUncertainty.ofPerhapsOneScale(List.of(at(-1, 5), at(1, 1)));
        assertEquals(6, uneven.standard(MASS), 1e-12);
        assertEquals(Math.hypot(5, 1) / 200, uneven.standard(X), 1e-12);
        MassPoint counter = MassPoint.exact(200, new Vec3(-1, 0, 0));
        EstimatedBalance together = MassUncertainty.ofPerhapsOneScale(List.of(at(1, 5), at(1, 1), counter));
        assertEquals(6.0 / 400, together.standard(X), 1e-12);
    }

    private static MassPoint at(double x, double u) {
        return new MassPoint(100, new Vec3(x, 0, 0), u, Vec3.ZERO, "some scale");
    }

    @Test
    void worstPointInAPlane() {
        // Ellipsoid m 100 give or take 6, x 2 give or take 0.08, y 0 give or take 0.02. In the plane y = 0.012 what is left of it is
        // sqrt(1 - 0.6^2) = 0.8 as wide: x 2.064 for a result that grows with x alone (circle of radius 1, own derivation).
        EstimatedBalance e = MassUncertainty.of(List.of(new MassPoint(100, new Vec3(2, 0, 0), 3, new Vec3(0.04, 0.01, 0),
                MassPoint.NO_COMMON_SCALE)));
        Balance worst = e.worstIn(0, new Vec3(1, 0, 0), new Vec3(0, 5, 0), new Vec3(7, 0.012, 3)).orElseThrow();
        assertEquals(2.064, worst.point().x(), 1e-12);
        assertEquals(0.012, worst.point().y(), 1e-12);
        assertEquals(100, worst.mass(), 1e-12);
        assertTrue(e.worstIn(0, new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0.021, 0)).isEmpty());
        // Nothing is uncertain along z: the estimate lies in the plane z = 0 and no other.
        assertEquals(2.08, e.worstIn(0, new Vec3(1, 0, 0), Vec3.UP, Vec3.ZERO).orElseThrow().point().x(), 1e-12);
        assertTrue(e.worstIn(0, new Vec3(1, 0, 0), Vec3.UP, new Vec3(0, 0, 0.001)).isEmpty());
    }

    @Test
    void turningTheAxesTurnsTheEllipsoid() {
        RigidTransform turn = new RigidTransform(new double[][] {{0.6, -0.8, 0}, {0.8, 0.6, 0}, {0, 0, 1}}, new Vec3(5, -2, 1));
        EstimatedBalance e = MassUncertainty.of(List.of(new MassPoint(100, new Vec3(2, 0, 0), 3, new Vec3(0.04, 0.01, 0),
                MassPoint.NO_COMMON_SCALE), new MassPoint(50, new Vec3(-1, 1, 0), 5, new Vec3(0, 0, 0.03), MassPoint.NO_COMMON_SCALE)));
        Vec3 g = new Vec3(3, -7, 2);
        Balance here = e.worst(0.1, g);
        Balance there = e.moved(turn).worst(0.1, turn.turn(g));
        assertEquals(here.mass(), there.mass(), 1e-9);
        assertEquals(0, turn.apply(here.point()).minus(there.point()).norm(), 1e-12);
    }

    @Test
    void exactPartsHaveNoGiveOrTake() {
        EstimatedBalance e = MassUncertainty.of(List.of(MassPoint.exact(10, new Vec3(1, 2, 3))));
        assertEquals(0, e.standard(MASS));
        assertEquals(e.balance(), e.worst(1, Vec3.UP));
    }

    @Test
    void refusesNonsense() {
        Balance b = new Balance(1, Vec3.ZERO);
        assertThrows(IllegalArgumentException.class, () -> new EstimatedBalance(b, new double[3][3]));
        assertThrows(IllegalArgumentException.class, () -> new EstimatedBalance(b, new double[4][3]));
        double[][] skew = new double[4][4];
        skew[0][0] = 1;
        skew[1][1] = 1;
        skew[0][1] = 0.5;
        assertThrows(IllegalArgumentException.class, () -> new EstimatedBalance(b, skew));
        skew[0][1] = 2;
        skew[1][0] = 2;
        assertThrows(IllegalArgumentException.class, () -> new EstimatedBalance(b, skew));
        skew[0][1] = 1.005;
        skew[1][0] = 1.005;
        assertThrows(IllegalArgumentException.class, () -> new EstimatedBalance(b, skew), "a correlation above 1");
        double[][] wide = new double[4][4];
        wide[0][0] = 9;
        EstimatedBalance vague = new EstimatedBalance(b, wide);
        assertThrows(IllegalArgumentException.class, () -> vague.worst(-1, Vec3.ZERO));
        assertThrows(IllegalArgumentException.class, () -> MassUncertainty.ofLimits(-1));
    }

    private interface Draw {
        Balance next(Random random);
    }

    /** Variances within 2 %, correlations within 0.02: six standard deviations of the draws. */
    private static void compareWithDraws(EstimatedBalance e, Draw draw) {
        Random random = new Random(20_240_611);
        double[] sum = new double[4];
        double[][] square = new double[4][4];
        for (int n = 0; n < DRAWS; n++) {
            Balance b = draw.next(random);
            double[] v = {b.mass() - e.balance().mass(), b.point().x() - e.balance().point().x(),
                    b.point().y() - e.balance().point().y(), b.point().z() - e.balance().point().z()};
            for (int i = 0; i < 4; i++) {
                sum[i] += v[i] / DRAWS;
                for (int j = 0; j < 4; j++) {
                    square[i][j] += v[i] * v[j] / DRAWS;
                }
            }
        }
        EstimatedBalance.Quantity[] q = {MASS, X, Y, Z};
        for (int i = 0; i < 4; i++) {
            double ui = Math.sqrt(square[i][i] - sum[i] * sum[i]);
            assertEquals(ui, e.standard(q[i]), 0.01 * ui, "u of " + q[i]);
            for (int j = 0; j < i; j++) {
                double uj = Math.sqrt(square[j][j] - sum[j] * sum[j]);
                double r = (square[i][j] - sum[i] * sum[j]) / (ui * uj);
                assertEquals(r, e.covariance(q[i], q[j]) / (e.standard(q[i]) * e.standard(q[j])), 0.02, q[i] + " with " + q[j]);
            }
        }
    }

    private static List<MassPoint> draw(List<MassPoint> parts, Random random) {
        double crane = random.nextGaussian();
        double floor = random.nextGaussian();
        List<MassPoint> drawn = new ArrayList<>();
        for (MassPoint p : parts) {
            double own = random.nextGaussian();
            double error = switch (p.scale()) {
                case "crane" -> crane;
                case "floor" -> floor;
                default -> own;
            };
            Vec3 u = p.positionUncertainty();
            Vec3 off = new Vec3(u.x() * random.nextGaussian(), u.y() * random.nextGaussian(), u.z() * random.nextGaussian());
            drawn.add(MassPoint.exact(p.mass() + error * p.massUncertainty(), p.position().plus(off)));
        }
        return drawn;
    }
}
