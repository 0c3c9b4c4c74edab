package cradlewright.mechanics.lifting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LiftTest {

    private final CheckValues values = CheckValues.load("lifting");

    @Test
    void sharesAndLimits() {
        TwoPostShare whole = new TwoPostShare(1005, 1.95, 1.15, 2.95);
        values.check("G1.front", whole.front());
        values.check("G1.rear", whole.rear());
        values.check("G1.ratio", whole.ratio().getAsDouble());
        assertTrue(whole.within(ShareLimits.general(3500)));
        TwoPostShare engineOut = new TwoPostShare(748, 2.25, 1.15, 2.95);
        values.check("G1.engine-out.front", engineOut.front());
        values.check("G1.engine-out.rear", engineOut.rear());
        values.check("G1.engine-out.ratio", engineOut.ratio().getAsDouble());
        assertFalse(engineOut.within(ShareLimits.general(3500)));
        assertTrue(engineOut.within(ShareLimits.general(3501)));
        values.check("limits.light", ShareLimits.general(3500).highest());
        values.check("limits.heavy", ShareLimits.general(3501).highest());
        assertEquals(1, ShareLimits.general(3500).highest() * ShareLimits.general(3500).lowest(), 1e-12);
        assertEquals(1, ShareLimits.general(4000).highest() * ShareLimits.general(4000).lowest(), 1e-12);
        TwoPostShare.Window light = TwoPostShare.window(1.15, 2.95, ShareLimits.general(3500));
        values.check("G1.win.light.from", light.from());
        values.check("G1.win.light.to", light.to());
        TwoPostShare.Window heavy = TwoPostShare.window(1.15, 2.95, ShareLimits.general(4000));
        values.check("G1.win.heavy.from", heavy.from());
        values.check("G1.win.heavy.to", heavy.to());
    }

    @Property(seed = "51", tries = 300)
    void theWindowIsWhereTheShareHolds(@ForAll @DoubleRange(min = 0.5, max = 3.5) double x) {
        TwoPostShare share = new TwoPostShare(900, x, 1.15, 2.95);
        TwoPostShare.Window window = TwoPostShare.window(1.15, 2.95, ShareLimits.general(3000));
        if (Math.min(Math.abs(x - window.from()), Math.abs(x - window.to())) > 1e-9) {
            assertEquals(x > window.from() && x < window.to(), share.within(ShareLimits.general(3000)));
        }
        // equilibrium of moments about the balance point
        assertEquals(0, share.front() * (1.15 - x) + share.rear() * (2.95 - x), 1e-9);
        assertEquals(x <= 1.15 || x >= 2.95, share.goesOver());
        assertEquals(share.goesOver(), share.ratio().isEmpty());
    }

    @Test
    void heavierEndOnShorterArms() {
        TwoPostShare nose = new TwoPostShare(1000, 1.8, 1.15, 2.95);
        assertTrue(nose.heavierEndOnShorterArms(0.8, 1.2));
        assertFalse(nose.heavierEndOnShorterArms(1.2, 0.8));
        assertTrue(nose.heavierEndOnShorterArms(1, 1));
    }

    @Test
    void reach() {
        ArmReach arm = new ArmReach(new Vec3(0, 1.40, 0), 0.8, 1.35, -Math.PI, Math.PI, 0.1, 0.3);
        ArmReach.Reach front = arm.to(new Vec3(0.85, 0.45, 0.2));
        values.check("G2.front", front.distance());
        assertTrue(front.fits());
        ArmReach.Reach rear = arm.to(new Vec3(-1.05, 0.50, 0.2));
        values.check("G2.rear", rear.distance());
        assertFalse(rear.lengthFits());
        assertTrue(rear.swingFits());
        assertFalse(arm.to(new Vec3(0.85, 2.3, 0.2)).swingFits());
        assertFalse(arm.to(new Vec3(0.85, 0.45, 0.31)).heightFits());
        assertFalse(arm.to(new Vec3(0.85, 0.45, 0.09)).heightFits());
        assertFalse(arm.to(new Vec3(0.1, 1.4, 0.2)).lengthFits());
    }

    @Test
    void swingMayPassTheBackOfTheCircle() {
        ArmReach arm = new ArmReach(Vec3.ZERO, 0.5, 2, Math.toRadians(150), Math.toRadians(60), 0, 1);
        for (int degrees = -180; degrees < 180; degrees++) {
            double a = Math.toRadians(degrees);
            boolean inside = degrees >= 150 || degrees <= -150;
            assertEquals(inside, arm.to(new Vec3(Math.cos(a), Math.sin(a), 0.5)).swingFits(), degrees + " degrees");
        }
        ArmReach round = new ArmReach(Vec3.ZERO, 0.5, 2, 1, 2 * Math.PI, 0, 1);
        assertTrue(round.to(new Vec3(-1, -1, 0.5)).swingFits());
    }

    /** Another route: the arm is swung and pulled out by small steps, and every place that its end meets is marked. */
    @Test
    void reachBySweepingTheArm() {
        ArmReach arm = new ArmReach(new Vec3(0, 1.40, 0), 0.8, 1.35, Math.toRadians(-100), Math.toRadians(120), 0.1, 0.3);
        double nearest = Double.POSITIVE_INFINITY;
        double length = Double.NaN;
        for (double pulled = 0.8; pulled <= 1.35; pulled += 0.0002) {
            for (double turned = 0; turned <= Math.toRadians(120); turned += 0.0005) {
                double direction = Math.toRadians(-100) + turned;
                double off = Math.hypot(pulled * Math.cos(direction) - 0.85, 1.40 + pulled * Math.sin(direction) - 0.45);
                if (off < nearest) {
                    nearest = off;
                    length = pulled;
                }
            }
        }
        values.check("reach.swept", length);
        assertEquals(length, arm.to(new Vec3(0.85, 0.45, 0.2)).distance(), 2e-4);
        Random random = new Random(20260205);
        int met = 0;
        for (int trial = 0; trial < 300; trial++) {
            Vec3 pad = new Vec3(random.nextDouble(-1.6, 1.6), random.nextDouble(-0.2, 3), 0.2);
            // places within two centimetres of the border are left to the other tests
            boolean surely = meets(pad, -0.02);
            if (surely == meets(pad, 0.02)) {
                met += surely ? 1 : 0;
                assertEquals(surely, arm.to(pad).fits(), "trial " + trial + " " + pad);
            }
        }
        assertTrue(met > 30 && met < 270, "places met: " + met);
    }

    /** Whether the arm meets the pad to 6 mm when its range of lengths and its swing are widened at both ends. */
    private static boolean meets(Vec3 pad, double wider) {
        for (double pulled = 0.8 - wider; pulled <= 1.35 + wider; pulled += 0.005) {
            for (double turned = -wider; turned <= Math.toRadians(120) + wider; turned += 0.005) {
                double direction = Math.toRadians(-100) + turned;
                if (Math.hypot(pulled * Math.cos(direction) - pad.x(), 1.40 + pulled * Math.sin(direction) - pad.y()) < 0.006) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void armStiffness() {
        values.check("G15", ArmStiffness.ratio(1.275, 1.383));
        values.check("G15.k", ArmStiffness.uniform(210e9, 2.54e-7, 1.2));
        values.check("stepped.book", ArmStiffness.stepped(2e11, 3e-6, 1, 1.5e-6, 1));
        values.check("G15.stepped", ArmStiffness.stepped(210e9, 4e-6, 0.7, 1.5e-6, 0.5));
        assertEquals(ArmStiffness.uniform(210e9, 2e-6, 1.2), ArmStiffness.stepped(210e9, 2e-6, 0.7, 2e-6, 0.5), 1e-6);
        assertEquals(ArmStiffness.ratio(1.0, 1.3), ArmStiffness.uniform(2, 3, 1.0) / ArmStiffness.uniform(2, 3, 1.3), 1e-12);
        assertEquals(1 / (1 / 4e5 + 1 / 1e6), ArmStiffness.withPad(4e5, 1e6), 1e-6);
    }

    @Test
    void uniformArmAgreesWithIntegratedCurvature() {
        double integral = 0;
        int n = 2000;
        for (int i = 0; i < n; i++) {
            double s = 1.2 * (i + 0.5) / n;
            integral += s * s / (210e9 * 2.54e-7) * 1.2 / n;
        }
        assertEquals(1 / integral, ArmStiffness.uniform(210e9, 2.54e-7, 1.2), 1e-6 / integral);
    }

    @Test
    void stands() {
        StandLoad load = new StandLoad(900, 3000, StandLoad.RatedPer.PAIR);
        values.check("stand.margin", StandLoad.MARGIN);
        values.check("stand.pair", load.utilisation());
        assertEquals(load.utilisation() / 2, new StandLoad(900, 3000, StandLoad.RatedPer.STAND).utilisation(), 1e-12);
    }

    @Test
    void pinHoles() {
        PinSteps stand = new PinSteps(0.280, 0.035, 5);
        PinSteps.Choice below = stand.notAbove(0.400);
        values.check("pin.below", 1000 * below.height());
        values.check("pin.pack", 1000 * below.remaining());
        assertEquals(3, below.hole());
        assertEquals(3, stand.nearest(0.400).hole());
        assertEquals(4, stand.nearest(0.405).hole());
        assertEquals(3, stand.nearest(0.280 + 3.497 * 0.035).hole(), "just below the half way");
        assertEquals(4, stand.nearest(0.280 + 3.503 * 0.035).hole(), "just above the half way");
        assertEquals(-0.015, stand.nearest(0.405).remaining(), 1e-12);
        assertEquals(4, stand.notAbove(0.420).hole());
        assertEquals(4, stand.notAbove(0.9).hole());
        assertEquals(0, stand.nearest(0.1).hole());
        assertThrows(IllegalArgumentException.class, () -> stand.notAbove(0.2));
    }

    @Property(seed = "52", tries = 300)
    void noHoleIsBetter(@ForAll @DoubleRange(min = 0.28, max = 0.6) double wanted) {
        PinSteps stand = new PinSteps(0.280, 0.035, 7);
        PinSteps.Choice below = stand.notAbove(wanted);
        PinSteps.Choice near = stand.nearest(wanted);
        for (int i = 0; i < 7; i++) {
            double rest = wanted - (0.280 + 0.035 * i);
            assertTrue(rest < -1e-9 || below.remaining() <= rest + 1e-9);
            assertTrue(Math.abs(near.remaining()) <= Math.abs(rest) + 1e-9);
        }
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> new TwoPostShare(0, 1, 0, 2));
        assertThrows(IllegalArgumentException.class, () -> new TwoPostShare(1, 1, 2, 2));
        assertThrows(IllegalArgumentException.class, () -> new ShareLimits(2, 1));
        assertThrows(IllegalArgumentException.class, () -> ShareLimits.general(0));
        assertThrows(IllegalArgumentException.class, () -> new ArmReach(Vec3.ZERO, 2, 1, 0, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new ArmReach(Vec3.ZERO, 1, 2, 0, 6.3, 0, 1), "more than once round");
        assertThrows(IllegalArgumentException.class, () -> new PinSteps(1, 0.1, 10_001));
        assertThrows(IllegalArgumentException.class, () -> ArmStiffness.uniform(1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new StandLoad(-1, 1, StandLoad.RatedPer.STAND));
        assertThrows(IllegalArgumentException.class, () -> new PinSteps(1, 0, 2));
    }

    @Test
    void formulasAreNamedOnce() {
        Set<String> ids = new HashSet<>();
        LiftingFormulas.all().forEach(f -> assertTrue(ids.add(f.id()) && f.id().startsWith("lifting."), f.id()));
    }
}
