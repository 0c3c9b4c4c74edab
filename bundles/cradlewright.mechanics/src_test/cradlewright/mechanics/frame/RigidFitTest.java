package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The rigid part of movements: by hand on a square, and against a rigid motion that is known. */
class RigidFitTest {

    private static final CheckValues VALUES = CheckValues.load("frame");
    private static final List<Vec3> SQUARE = List.of(new Vec3(1, 1, 0.3), new Vec3(-1, 1, 0.3), new Vec3(1, -1, 0.3),
            new Vec3(-1, -1, 0.3));

    /** One corner of a square goes up by 4 mm: the nearest plane is 1 + x + y mm, so 3 of them are rigid and 1 is twist. */
    @Test
    void aLiftedCornerIsThreePartsTiltAndOnePartTwist() {
        RigidFit fit = RigidFit.of(SQUARE, List.of(new Vec3(0, 0, 0.004), Vec3.ZERO, Vec3.ZERO, Vec3.ZERO));
        VALUES.check("R1.corner", 1000 * fit.at(SQUARE.get(0)).translation().z());
        VALUES.check("R1.opposite", 1000 * fit.at(SQUARE.get(3)).translation().z());
    }

    @Test
    void aRigidMotionIsFoundAgain() {
        Motion about = new Motion(new Vec3(0.01, -0.02, 0.03), new Vec3(1e-3, -2e-3, 3e-3));
        List<Vec3> moved = SQUARE.stream().map(p -> about.at(p).translation()).toList();
        Vec3 far = new Vec3(3, -4, 5);
        Vec3 error = RigidFit.of(SQUARE, moved).at(far).translation().minus(about.at(far).translation());
        assertEquals(0, error.norm(), 1e-14);
    }

    /** Least squares: no other rigid motion leaves less. */
    @Test
    void nothingNearbyIsNearer() {
        Random random = new Random(20261125L);
        List<Vec3> moved = new ArrayList<>();
        SQUARE.forEach(p -> moved.add(new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble())));
        RigidFit fit = RigidFit.of(SQUARE, moved);
        double least = rest(fit, moved, new Motion(Vec3.ZERO, Vec3.ZERO));
        for (int i = 0; i < 100; i++) {
            Motion off = new Motion(small(random), small(random));
            assertEquals(least, Math.min(least, rest(fit, moved, off)), 0, off.toString());
        }
    }

    private static Vec3 small(Random random) {
        return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(0.01);
    }

    private static double rest(RigidFit fit, List<Vec3> moved, Motion off) {
        double sum = 0;
        for (int i = 0; i < SQUARE.size(); i++) {
            Vec3 rest = moved.get(i).minus(fit.at(SQUARE.get(i)).translation()).minus(off.at(SQUARE.get(i)).translation());
            sum += rest.dot(rest);
        }
        return sum;
    }

    /** Three points on a line leave the turn about the line open: it is none. */
    @Test
    void whatTheLineLeavesOpenDoesNotTurn() {
        List<Vec3> line = List.of(new Vec3(0, 0, 0), new Vec3(1, 0, 0), new Vec3(2, 0, 0));
        RigidFit fit = RigidFit.of(line, List.of(Vec3.ZERO, new Vec3(0, 0, 0.001), new Vec3(0, 0, 0.002)));
        assertEquals(0, fit.at(Vec3.ZERO).rotation().x(), 1e-12);
        assertEquals(-0.001, fit.at(Vec3.ZERO).rotation().y(), 1e-12, "the rear goes up: a turn about y below zero");
        assertThrows(IllegalArgumentException.class, () -> RigidFit.of(line, List.of(Vec3.ZERO)));
        assertThrows(IllegalArgumentException.class, () -> RigidFit.of(List.of(), List.of()));
    }
}
