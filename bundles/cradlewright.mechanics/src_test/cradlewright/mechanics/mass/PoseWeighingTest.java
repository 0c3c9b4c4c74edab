package cradlewright.mechanics.mass;

import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.MASS;
import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.X;
import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.Y;
import static cradlewright.mechanics.mass.EstimatedBalance.Quantity.Z;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PoseWeighingTest {

    private static final Vec3[] CELLS = {new Vec3(0.30, -0.55, 0.05), new Vec3(0.30, 0.55, 0.05), new Vec3(2.10, 0.50, 0.12),
            new Vec3(2.10, -0.50, 0.12)};
    private static final Vec3 TRUTH = new Vec3(1.080, -0.010, 0.420);

    private final CheckValues values = CheckValues.load("mass");

    @Test
    void level() {
        double[] read = {92, 88, 69, 71};
        List<CellReading> cells = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            cells.add(new CellReading(CELLS[i], read[i], 0.2, 0.003));
        }
        PoseWeighing.Level level = PoseWeighing.level(cells);
        values.check("A6.m", level.mass());
        values.check("A6.x", level.x());
        values.check("A6.y", level.y());
        assertEquals(0.4, level.massUncertainty(), 1e-12);
    }

    @Test
    void twoAttitudesReturnTheTruth() {
        PoseWeighing.Result r = PoseWeighing.solve(List.of(pose(0, 0, 320, 0.003), pose(Math.toRadians(8), 0, 320, 0.003)));
        values.check("A7.m", r.estimate().balance().mass());
        values.check("A7.x", r.estimate().balance().point().x());
        values.check("A7.y", r.estimate().balance().point().y());
        values.check("A7.z", r.estimate().balance().point().z());
        assertEquals(2, r.degreesOfFreedom());
        assertEquals(0, r.chiSquare(), 1e-12);
        assertTrue(r.suspects().isEmpty());
    }

    @Test
    void pitchedRowsAreThoseOfThePlaneFormula() {
        // sum R X = m x cos theta - m z sin theta with X = x cos theta - z sin theta
        double theta = Math.toRadians(8);
        Pose p = pose(theta, 0, 320, 0);
        double sum = 0;
        for (CellReading c : p.cells()) {
            sum += c.mass() * (c.position().x() * Math.cos(theta) - c.position().z() * Math.sin(theta));
        }
        assertEquals(320 * (TRUTH.x() * Math.cos(theta) - TRUTH.z() * Math.sin(theta)), sum, 1e-9);
        assertEquals(Math.sin(theta), p.up().x(), 1e-15);
    }

    @Property(seed = "31", tries = 150)
    void anySlopesReturnTheTruth(@ForAll @DoubleRange(min = 0.05, max = 0.3) double along,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double across, @ForAll @DoubleRange(min = -40, max = 40) double preload) {
        List<Pose> poses = List.of(pose(0, 0, 320, 0.003), tensed(pose(along, across, 320, 0.003), preload), pose(0, -0.1, 320,
                0));
        Balance b = PoseWeighing.solve(poses).estimate().balance();
        assertEquals(320, b.mass(), 1e-8);
        assertEquals(0, b.point().minus(TRUTH).norm(), 1e-8);
    }

    @Test
    void covarianceAgreesWithDraws() {
        List<Pose> exact = List.of(pose(0, 0, 320, 0.004), pose(Math.toRadians(10), 0, 320, 0.004));
        EstimatedBalance stated = PoseWeighing.solve(exact).estimate();
        Random random = new Random(77);
        int draws = 6000;
        double[] square = new double[4];
        for (int n = 0; n < draws; n++) {
            List<Pose> drawn = new ArrayList<>();
            for (Pose p : exact) {
                // the true attitude is off by the drawn angle, so the readings are those of another attitude
                double off = p.angleUncertainty() * random.nextGaussian();
                double offAcross = p.angleUncertainty() * random.nextGaussian();
                Pose real = pose(Math.asin(p.up().x()) + off, offAcross, 320, 0);
                List<CellReading> cells = new ArrayList<>();
                for (int i = 0; i < 4; i++) {
                    cells.add(new CellReading(CELLS[i], real.cells().get(i).mass() + 0.2 * random.nextGaussian(), 0.2, 0.002));
                }
                drawn.add(new Pose(p.up(), cells, p.angleUncertainty()));
            }
            Balance b = PoseWeighing.solve(drawn).estimate().balance();
            double[] v = {b.mass() - 320, b.point().x() - TRUTH.x(), b.point().y() - TRUTH.y(), b.point().z() - TRUTH.z()};
            for (int i = 0; i < 4; i++) {
                square[i] += v[i] * v[i] / draws;
            }
        }
        EstimatedBalance withoutPlace = PoseWeighing.solve(exact.stream().map(p -> new Pose(p.up(), p.cells().stream()
                .map(c -> new CellReading(c.position(), c.mass(), 0.2, 0)).toList(), p.angleUncertainty())).toList()).estimate();
        assertEquals(Math.sqrt(square[0]), withoutPlace.standard(MASS), 0.04 * withoutPlace.standard(MASS));
        assertEquals(Math.sqrt(square[1]), withoutPlace.standard(X), 0.04 * withoutPlace.standard(X));
        assertEquals(Math.sqrt(square[2]), withoutPlace.standard(Y), 0.04 * withoutPlace.standard(Y));
        assertEquals(Math.sqrt(square[3]), withoutPlace.standard(Z), 0.04 * withoutPlace.standard(Z));
        assertTrue(stated.standard(Z) > withoutPlace.standard(Z));
    }

    @Test
    void uncertainPlacesCountAgainstDraws() {
        List<Pose> exact = List.of(pose(0, 0, 320, 0), pose(Math.toRadians(10), 0, 320, 0));
        EstimatedBalance stated = PoseWeighing.solve(exact).estimate();
        Random random = new Random(78);
        int draws = 6000;
        double square = 0;
        for (int n = 0; n < draws; n++) {
            List<Pose> drawn = new ArrayList<>();
            for (Pose p : exact) {
                drawn.add(new Pose(p.up(), p.cells().stream().map(c -> new CellReading(c.position().plus(new Vec3(
                        0.002 * random.nextGaussian(), 0.002 * random.nextGaussian(), 0.002 * random.nextGaussian())),
                        c.mass() + 0.2 * random.nextGaussian(), 0.2, 0.002)).toList(), 0));
            }
            double z = PoseWeighing.solve(drawn).estimate().balance().point().z() - TRUTH.z();
            square += z * z / draws;
        }
        assertEquals(Math.sqrt(square), stated.standard(Z), 0.04 * stated.standard(Z));
    }

    @Test
    void theReadingThatDoesNotFitIsNamed() {
        List<Pose> poses = new ArrayList<>(List.of(pose(0, 0, 320, 0), pose(0.15, 0, 320, 0), pose(0, 0.12, 320, 0),
                pose(-0.1, -0.1, 320, 0)));
        Pose wrong = poses.get(1);
        List<CellReading> cells = new ArrayList<>(wrong.cells());
        CellReading c = cells.get(2);
        cells.set(2, new CellReading(c.position(), c.mass() + 7, c.massUncertainty(), c.positionUncertainty()));
        poses.set(1, new Pose(wrong.up(), cells, 0));
        PoseWeighing.Result r = PoseWeighing.solve(poses);
        assertFalse(r.suspects().isEmpty());
        PoseWeighing.Misfit worst = r.suspects().get(0);
        assertEquals(1, worst.pose());
        assertEquals(2, worst.cell());
        assertEquals(7, worst.error(), 1e-6);
        assertTrue(worst.normalised() > 10);
        values.check("suspect", PoseWeighing.SUSPECT);
        assertTrue(r.chiSquare() > r.degreesOfFreedom());
    }

    @Test
    void normalisedMisfitsOfPureNoiseHaveUnitSpread() {
        Random random = new Random(3);
        List<Pose> exact = List.of(pose(0, 0, 320, 0), pose(0.15, 0, 320, 0), pose(0, 0.12, 320, 0));
        double square = 0;
        double chi = 0;
        int draws = 2000;
        for (int n = 0; n < draws; n++) {
            List<Pose> drawn = exact.stream().map(p -> new Pose(p.up(), p.cells().stream().map(c -> new CellReading(c.position(),
                    c.mass() + 0.2 * random.nextGaussian(), 0.2, 0)).toList(), 0)).toList();
            PoseWeighing.Result r = PoseWeighing.solve(drawn);
            for (PoseWeighing.Misfit m : r.misfits()) {
                square += m.normalised() * m.normalised() / (12.0 * draws);
            }
            chi += r.chiSquare() / draws;
        }
        assertEquals(1, square, 0.06);
        assertEquals(5, chi, 0.25);
    }

    /** Each reading changed a little, the answer worked out anew: squares of the changes are the variance of exact attitudes. */
    @Test
    void covarianceFollowsFromChangedReadings() {
        List<Pose> poses = List.of(pose(0, 0, 320, 0), pose(Math.toRadians(10), 0.05, 320, 0)).stream().map(p -> new Pose(p.up(),
                p.cells().stream().map(c -> new CellReading(c.position(), c.mass(), 0.2, 0)).toList(), 0)).toList();
        EstimatedBalance stated = PoseWeighing.solve(poses).estimate();
        double[] square = new double[4];
        for (int k = 0; k < 8; k++) {
            double[] up = changed(poses, k, 1e-3);
            double[] down = changed(poses, k, -1e-3);
            for (int i = 0; i < 4; i++) {
                square[i] += Math.pow((up[i] - down[i]) / 2e-3 * 0.2, 2);
            }
        }
        assertEquals(Math.sqrt(square[0]), stated.standard(MASS), 1e-5 * stated.standard(MASS));
        assertEquals(Math.sqrt(square[1]), stated.standard(X), 1e-5 * stated.standard(X));
        assertEquals(Math.sqrt(square[2]), stated.standard(Y), 1e-5 * stated.standard(Y));
        assertEquals(Math.sqrt(square[3]), stated.standard(Z), 1e-5 * stated.standard(Z));
    }

    private static double[] changed(List<Pose> poses, int which, double by) {
        List<Pose> changed = new ArrayList<>();
        for (int p = 0; p < poses.size(); p++) {
            List<CellReading> cells = new ArrayList<>(poses.get(p).cells());
            if (which / 4 == p) {
                CellReading c = cells.get(which % 4);
                cells.set(which % 4, new CellReading(c.position(), c.mass() + by, 0.2, 0));
            }
            changed.add(new Pose(poses.get(p).up(), cells, 0));
        }
        Balance b = PoseWeighing.solve(changed).estimate().balance();
        return new double[] {b.mass(), b.point().x(), b.point().y(), b.point().z()};
    }

    @Test
    void slopesUpToUpright() {
        List<CellReading> cells = pose(0, 0, 320, 0.003).cells();
        assertEquals(Math.cos(1.56), Pose.tilted(1.56, 0, cells, 0).up().z(), 1e-9);
        assertEquals(Math.cos(1.56), Pose.tilted(0, -1.56, cells, 0).up().z(), 1e-9);
        assertEquals(Math.cos(1.56), Pose.tilted(-1.56, 0, cells, 0).up().z(), 1e-9);
        assertEquals(Math.cos(1.56), Pose.tilted(0, 1.56, cells, 0).up().z(), 1e-9);
    }

    @Test
    void refusesWeighingsThatCannotTellTheHeight() {
        Pose flat = pose(0, 0, 320, 0.003);
        assertThrows(IllegalArgumentException.class, () -> PoseWeighing.solve(List.of(flat)));
        assertThrows(IllegalArgumentException.class, () -> PoseWeighing.solve(List.of(flat, flat)));
        List<CellReading> line = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            line.add(new CellReading(new Vec3(i, 0, 0), 100, 1, 0));
        }
        Pose inLine = Pose.tilted(0.1, 0, line, 0);
        assertThrows(IllegalArgumentException.class, () -> PoseWeighing.solve(List.of(flat, inLine)));
        assertThrows(IllegalArgumentException.class, () -> Pose.tilted(1.2, 1.2, flat.cells(), 0));
        assertThrows(IllegalArgumentException.class, () -> new Pose(Vec3.UP, line.subList(0, 2), 0));
        assertThrows(IllegalArgumentException.class, () -> new CellReading(Vec3.ZERO, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> PoseWeighing.level(List.of()));
    }

    /** Readings of a stiff body: the even share of the spring model, found from force and moments about the balance point. */
    private static Pose pose(double noseDown, double rightDown, double mass, double angleUncertainty) {
        double x = Math.sin(noseDown);
        double y = -Math.sin(rightDown);
        Vec3 up = new Vec3(x, y, Math.sqrt(1 - x * x - y * y));
        Vec3 e1 = new Vec3(1, 0, 0).minus(up.times(x)).unit();
        Vec3 e2 = up.cross(e1);
        double[][] n = new double[3][4];
        for (Vec3 p : CELLS) {
            double[] t = {1, p.minus(TRUTH).dot(e1), p.minus(TRUTH).dot(e2)};
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    n[i][j] += t[i] * t[j];
                }
            }
        }
        n[0][3] = mass;
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                if (k != i) {
                    double f = n[k][i] / n[i][i];
                    for (int j = i; j < 4; j++) {
                        n[k][j] -= f * n[i][j];
                    }
                }
            }
        }
        List<CellReading> cells = new ArrayList<>();
        for (Vec3 p : CELLS) {
            double r = n[0][3] / n[0][0] + n[1][3] / n[1][1] * p.minus(TRUTH).dot(e1) + n[2][3] / n[2][2]
                    * p.minus(TRUTH).dot(e2);
            cells.add(new CellReading(p, r, 0.2, 0.002));
        }
        return Pose.tilted(noseDown, rightDown, cells, angleUncertainty);
    }

    /** The same weight shared otherwise: four forces added that balance each other in any attitude. */
    private static Pose tensed(Pose p, double preload) {
        List<CellReading> cells = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            // front pair pushes one way round, rear pair the other: equal moments about the long axis
            double sign = i == 0 || i == 2 ? 1 : -1;
            double side = i < 2 ? 0.50 : 0.55;
            CellReading c = p.cells().get(i);
            cells.add(new CellReading(c.position(), c.mass() + preload * sign * side, c.massUncertainty(),
                    c.positionUncertainty()));
        }
        return new Pose(p.up(), cells, p.angleUncertainty());
    }
}
