package cradlewright.mechanics.mass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AxleMethodsTest {

    private static final CornerScales SCALES = new CornerScales(285, 275, 248, 262, 2.600, 1.400, 1.380);

    private final CheckValues values = CheckValues.load("mass");

    @Test
    void cornerScales() {
        values.check("A3.m", SCALES.mass());
        values.check("A3.x", SCALES.behindFrontAxle());
        values.check("A3.y", SCALES.toTheRight());
        values.check("A3.cross", SCALES.crossShare());
    }

    @Test
    void cornerScalesAgreeWithTheSumOfFourPoints() {
        List<CellReading> cells = new ArrayList<>();
        double[][] at = {{0, -0.7, 285}, {0, 0.7, 275}, {2.6, 0.69, 248}, {2.6, -0.69, 262}};
        for (double[] c : at) {
            cells.add(new CellReading(new Vec3(c[0], c[1], 0), c[2], 0.8, 0));
        }
        PoseWeighing.Level level = PoseWeighing.level(cells);
        assertEquals(level.x(), SCALES.behindFrontAxle(), 1e-12);
        assertEquals(level.y(), SCALES.toTheRight(), 1e-12);
        assertEquals(level.massUncertainty(), SCALES.massUncertainty(0.8), 1e-12);
        assertEquals(level.xUncertainty(), SCALES.behindFrontAxleUncertainty(0.8), 1e-12);
        assertEquals(level.yUncertainty(), SCALES.toTheRightUncertainty(0.8), 1e-12);
    }

    @Property(seed = "21", tries = 100)
    void preloadMovesTheCrossShareOnly(@ForAll @DoubleRange(min = -200, max = 200) double warp) {
        CornerScales even = new CornerScales(285, 275, 248, 262, 2.6, 1.4, 1.4);
        CornerScales tensed = new CornerScales(285 - warp, 275 + warp, 248 - warp, 262 + warp, 2.6, 1.4, 1.4);
        assertEquals(even.behindFrontAxle(), tensed.behindFrontAxle(), 1e-12);
        assertEquals(even.toTheRight(), tensed.toTheRight(), 1e-12);
        assertEquals(even.crossShare() + 2 * warp / 1070, tensed.crossShare(), 1e-12);
    }

    @Test
    void equalRadii() {
        AxleLift lift = new AxleLift(2.600, 1070, 0.310, 0.310);
        List<AxleLift.Step> steps = List.of(new AxleLift.Step(0, 560), new AxleLift.Step(0.600, 593));
        AxleLift.Height h = lift.height(steps, 1, 0);
        values.check("A4.theta", Math.toDegrees(lift.inclination(0.600)));
        values.check("A4.c", h.aboveCentres());
        values.check("A4.h", h.aboveFloor());
        values.check("A4.u", 1000 * h.aboveCentresUncertainty());
        double withSine = 2.600 * 33 / (1070 * Math.sin(lift.inclination(0.600)));
        values.check("A4.sine-error", 1000 * (withSine - h.aboveCentres()));
        assertEquals(0, h.scatter());
    }

    @Test
    void unequalRadii() {
        double[] forward = readings(1.250, 0.540, 2.600, 1000, 0.300, 0.330, 0, 0.500);
        values.check("A5.F0", forward[0]);
        values.check("A5.F1", forward[1]);
        AxleLift.Height h = new AxleLift(2.600, 1000, 0.300, 0.330).height(
                List.of(new AxleLift.Step(0, values.expected("A5.F0")), new AxleLift.Step(0.500, values.expected("A5.F1"))), 1,
                        0);
        values.check("A5.c", h.aboveCentres());
        values.check("A5.xa", h.alongCentres());
        values.check("A5.h", h.aboveFloor());
    }

    @Property(seed = "22", tries = 300)
    void severalStepsEitherWayRoundReturnTheTruth(@ForAll @DoubleRange(min = 0.6, max = 2) double x,
            @ForAll @DoubleRange(min = 0.2, max = 1.0) double height, @ForAll @DoubleRange(min = 0.2, max = 0.45) double front,
            @ForAll @DoubleRange(min = 0.2, max = 0.45) double rear) {
        double[] lifts = {0, 0.2, 0.4, 0.6, 0.4};
        double[] read = readings(x, height, 2.6, 900, front, rear, lifts);
        AxleLift.Height h = new AxleLift(2.6, 900, front, rear).height(steps(lifts, read), 0.5, 0);
        assertEquals(height, h.aboveFloor(), 1e-9);
        // seen from behind: the rear axle on the scale, the front raised
        double levelBase = Math.sqrt(2.6 * 2.6 - (front - rear) * (front - rear));
        double[] mirrored = readings(levelBase - x, height, 2.6, 900, rear, front, lifts);
        assertEquals(height, new AxleLift(2.6, 900, rear, front).height(steps(lifts, mirrored), 0.5, 0).aboveFloor(), 1e-9);
    }

    @Test
    void uncertaintyOfTheFitAgreesWithDraws() {
        double[] lifts = {0, 0.25, 0.5, 0.65};
        double[] exact = readings(1.2, 0.55, 2.6, 1000, 0.3, 0.3, lifts);
        AxleLift.Height stated = new AxleLift(2.6, 1000, 0.3, 0.3).height(steps(lifts, exact), 1.2, 15);
        Random random = new Random(5);
        double square = 0;
        int draws = 40_000;
        for (int n = 0; n < draws; n++) {
            double[] read = exact.clone();
            for (int i = 0; i < read.length; i++) {
                read[i] += 1.2 * random.nextGaussian();
            }
            double c = new AxleLift(2.6, 1000 + 15 * random.nextGaussian(), 0.3, 0.3).height(steps(lifts, read), 0,
                    0).aboveCentres();
            square += (c - 0.25) * (c - 0.25) / draws;
        }
        assertEquals(Math.sqrt(square), stated.aboveCentresUncertainty(), 0.02 * stated.aboveCentresUncertainty());
    }

    @Test
    void theStepThatDoesNotFitIsNamedAndItsScatterCounts() {
        double[] lifts = {0, 0.2, 0.4, 0.6, 0.7};
        double[] read = readings(1.2, 0.55, 2.6, 1000, 0.3, 0.3, lifts);
        read[2] += 6;
        AxleLift.Height h = new AxleLift(2.6, 1000, 0.3, 0.3).height(steps(lifts, read), 0.5, 0);
        assertEquals(2, h.worstStep());
        // one error of 6 among five readings: scatter 6 sqrt((1 - leverage)/3), leverage near 1/5
        assertEquals(6 * Math.sqrt(0.8 / 3), h.scatter(), 0.06);
        double low = new AxleLift(2.6, 1000, 0.3, 0.3).height(steps(lifts, readings(1.2, 0.55, 2.6, 1000, 0.3, 0.3, lifts)), 0.5,
                0)
                .aboveCentresUncertainty();
        assertEquals(low * h.scatter() / 0.5, h.aboveCentresUncertainty(), 1e-9);
    }

    @Test
    void refusesNonsense() {
        AxleLift lift = new AxleLift(2.6, 1000, 0.3, 0.3);
        assertThrows(IllegalArgumentException.class, () -> lift.inclination(2.6));
        assertThrows(IllegalArgumentException.class, () -> lift.height(steps(new double[] {0, 0}, new double[] {500, 500}), 1,
                0));
        assertThrows(IllegalArgumentException.class, () -> lift.height(steps(new double[] {0, 0.5}, new double[] {500, 1500}), 1,
                0));
        assertThrows(IllegalArgumentException.class, () -> lift.height(List.of(), 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new AxleLift(0.2, 1000, 0.5, 0.2));
        assertThrows(IllegalArgumentException.class, () -> new CornerScales(0, 0, 0, 0, 2.6, 1.4, 1.4));
        assertThrows(IllegalArgumentException.class, () -> new CornerScales(1, 1, 1, Double.NaN, 2.6, 1.4, 1.4));
    }

    private static List<AxleLift.Step> steps(double[] lifts, double[] readings) {
        List<AxleLift.Step> steps = new ArrayList<>();
        for (int i = 0; i < lifts.length; i++) {
            steps.add(new AxleLift.Step(lifts[i], readings[i]));
        }
        return steps;
    }

    /** Forward model: turns the body about the front wheel centre and takes moments about the front contact. */
    private static double[] readings(double x, double height, double base, double mass, double front, double rear,
            double... lifts) {
        double rest = Math.asin((rear - front) / base);
        double[] result = new double[lifts.length];
        for (int i = 0; i < lifts.length; i++) {
            double raised = Math.asin((lifts[i] + rear - front) / base);
            double turn = raised - rest;
            double atX = x * Math.cos(turn) - (height - front) * Math.sin(turn);
            result[i] = mass * (1 - atX / (base * Math.cos(raised)));
        }
        return result;
    }
}
