package cradlewright.mechanics.mass;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

class RigidFitTest {

    private static final List<Vec3> MARKS = List.of(new Vec3(0, -0.5, 0.1), new Vec3(0.1, 0.5, 0.1), new Vec3(2.3, 0.6, 0.3),
            new Vec3(2.4, -0.6, 0.3), new Vec3(1.2, 0, 1.1));

    @Property(seed = "41", tries = 200)
    void returnsTheMotion(@ForAll @DoubleRange(min = -3, max = 3) double yaw,
            @ForAll @DoubleRange(min = -3, max = 3) double pitch,
            @ForAll @DoubleRange(min = -3, max = 3) double roll, @ForAll @DoubleRange(min = -5, max = 5) double shift) {
        RigidTransform truth = turned(yaw, pitch, roll, new Vec3(shift, -2 * shift, 1));
        for (int n = 3; n <= 5; n++) {
            List<Vec3> from = MARKS.subList(0, n);
            RigidFit.Fit fit = RigidFit.of(from, from.stream().map(truth::apply).toList());
            assertEquals(0, fit.rootMeanSquare(), 1e-10);
            Vec3 elsewhere = new Vec3(-1, 2, 3);
            assertEquals(0, fit.transform().apply(elsewhere).minus(truth.apply(elsewhere)).norm(), 1e-9);
            assertEquals(0, fit.transform().inverse().apply(truth.apply(elsewhere)).minus(elsewhere).norm(), 1e-9);
        }
    }

    @Test
    void noSmallMotionFitsBetter() {
        Random random = new Random(9);
        List<Vec3> to = new ArrayList<>();
        RigidTransform truth = turned(0.4, -0.1, 0.05, new Vec3(1, 2, 0.3));
        for (Vec3 p : MARKS) {
            to.add(truth.apply(p).plus(new Vec3(random.nextGaussian(), random.nextGaussian(),
                    random.nextGaussian()).times(0.004)));
        }
        RigidFit.Fit fit = RigidFit.of(MARKS, to);
        double best = sum(fit.transform(), to);
        assertEquals(best, MARKS.size() * fit.rootMeanSquare() * fit.rootMeanSquare(), 1e-15);
        for (int i = 0; i < 500; i++) {
            RigidTransform nudge = turned(1e-4 * random.nextGaussian(), 1e-4 * random.nextGaussian(), 1e-4
                    * random.nextGaussian(),
                    new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(1e-4));
            double other = 0;
            for (int k = 0; k < to.size(); k++) {
                Vec3 d = to.get(k).minus(nudge.apply(fit.transform().apply(MARKS.get(k))));
                other += d.dot(d);
            }
            assertTrue(other >= best);
        }
    }

    @Test
    void aTurnInPlan() {
        RigidTransform truth = turned(Math.toRadians(30), 0, 0, new Vec3(1, 2, 0.3));
        Vec3 moved = RigidFit.of(MARKS, MARKS.stream().map(truth::apply).toList()).transform().apply(new Vec3(1, 0, 0));
        CheckValues values = CheckValues.load("mass");
        values.check("fit.turn", moved.x());
        values.check("fit.side", moved.y());
        values.check("fit.limit", 1000 * RigidFit.MARK_LIMIT);
    }

    @Test
    void aTwistedMarkIsNamed() {
        List<Vec3> to = new ArrayList<>(MARKS);
        to.set(2, to.get(2).plus(new Vec3(0, 0, 0.012)));
        RigidFit.Fit fit = RigidFit.of(MARKS, to);
        assertEquals(2, fit.worstMark());
        assertTrue(fit.doubtfulMarks().contains(2));
        assertTrue(RigidFit.of(MARKS, MARKS).doubtfulMarks().isEmpty());
    }

    @Test
    void aMirrorImageIsNotTakenForAMotion() {
        List<Vec3> mirrored = MARKS.stream().map(p -> new Vec3(p.x(), -p.y(), p.z())).toList();
        RigidFit.Fit fit = RigidFit.of(MARKS, mirrored);
        assertTrue(fit.rootMeanSquare() > 0.05);
        Vec3 x = fit.transform().turn(new Vec3(1, 0, 0));
        Vec3 y = fit.transform().turn(new Vec3(0, 1, 0));
        Vec3 z = fit.transform().turn(Vec3.UP);
        assertEquals(1, x.cross(y).dot(z), 1e-9);
    }

    @Test
    void refusesMarksInALine() {
        List<Vec3> line = List.of(Vec3.ZERO, new Vec3(1, 1, 0), new Vec3(2, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> RigidFit.of(line, line));
        assertThrows(IllegalArgumentException.class, () -> RigidFit.of(MARKS.subList(0, 2), MARKS.subList(0, 2)));
        assertThrows(IllegalArgumentException.class, () -> RigidFit.of(MARKS, MARKS.subList(0, 4)));
        double[][] reflection = {{1, 0, 0}, {0, 1, 0}, {0, 0, -1}};
        assertThrows(IllegalArgumentException.class, () -> new RigidTransform(reflection, Vec3.ZERO));
        double[][] stretch = {{2, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        assertThrows(IllegalArgumentException.class, () -> new RigidTransform(stretch, Vec3.ZERO));
    }

    private static double sum(RigidTransform t, List<Vec3> to) {
        double sum = 0;
        for (int k = 0; k < to.size(); k++) {
            Vec3 d = to.get(k).minus(t.apply(MARKS.get(k)));
            sum += d.dot(d);
        }
        return sum;
    }

    private static RigidTransform turned(double yaw, double pitch, double roll, Vec3 shift) {
        double cy = Math.cos(yaw);
        double sy = Math.sin(yaw);
        double cp = Math.cos(pitch);
        double sp = Math.sin(pitch);
        double cr = Math.cos(roll);
        double sr = Math.sin(roll);
        return new RigidTransform(new double[][] {{cy * cp, cy * sp * sr - sy * cr, cy * sp * cr + sy * sr},
                {sy * cp, sy * sp * sr + cy * cr, sy * sp * cr - cy * sr}, {-sp, cp * sr, cp * cr}}, shift);
    }
}
