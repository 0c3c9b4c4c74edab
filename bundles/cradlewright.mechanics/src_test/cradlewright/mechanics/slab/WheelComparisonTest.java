package cradlewright.mechanics.slab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.slab.WheelComparison.Answer;
import cradlewright.mechanics.slab.WheelComparison.Footprint;
import cradlewright.mechanics.slab.WheelComparison.Measure;
import cradlewright.mechanics.verify.CheckValues;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WheelComparisonTest {

    /** A car wheel of 3.5 kN on a patch of 150 x 120 mm, the next wheel 1.4 m away. */
    private static final Footprint WHEEL = new Footprint(3500, LoadedArea.rectangle(0.150, 0.120), 1.4);

    private static List<Measure> worse(Footprint ours) {
        return WheelComparison.of(ours, WHEEL).comparisons().stream().filter(c -> !c.noWorse())
                .map(WheelComparison.Comparison::measure).toList();
    }

    @Test
    void aLightCastorOnASmallContactIsNotKnownToBeFine() {
        Footprint castor = new Footprint(1500, LoadedArea.rectangle(0.04, 0.03), 1.5);
        assertEquals(Answer.UNKNOWN, WheelComparison.of(castor, WHEEL).answer());
        assertEquals(List.of(Measure.PRESSURE, Measure.EDGE_SHEAR), worse(castor));
    }

    @Test
    void onASpreaderPlateItIsNoWorse() {
        Footprint plate = new Footprint(1500, LoadedArea.rectangle(0.15, 0.12), 1.5);
        assertEquals(Answer.NO_WORSE, WheelComparison.of(plate, WHEEL).answer());
        assertTrue(worse(plate).isEmpty());
        CheckValues.load("slab").check("wheel.edge-shear",
                WheelComparison.of(plate, WHEEL).comparisons().get(Measure.EDGE_SHEAR.ordinal()).daily());
        assertEquals(Answer.NO_WORSE, WheelComparison.of(WHEEL, WHEEL).answer());
    }

    @Test
    void eachMeasureAloneMakesItUnknown() {
        assertEquals(List.of(Measure.FORCE), worse(new Footprint(3501, LoadedArea.rectangle(0.30, 0.30), 1.4)));
        assertEquals(List.of(Measure.PRESSURE), worse(new Footprint(3000, LoadedArea.rectangle(0.40, 0.03), 1.4)));
        assertEquals(List.of(Measure.EDGE_SHEAR), worse(new Footprint(3500, LoadedArea.circle(0.0800), 1.4)));
        assertEquals(List.of(Measure.SPACING), worse(new Footprint(1500, LoadedArea.rectangle(0.15, 0.12), 1.3)));
        assertThrows(IllegalArgumentException.class, () -> new Footprint(0, LoadedArea.circle(0.1), 1));
        assertThrows(IllegalArgumentException.class, () -> new Footprint(1, LoadedArea.circle(0.1), Double.NaN));
    }

    /** Whatever the slab, "no worse" must be borne out by bending, punching and pressure computed for that slab. */
    @Test
    void noWorseHoldsOnRandomSlabs() {
        Random random = new Random(1926);
        int noWorse = 0;
        int unknownAndWorse = 0;
        for (int n = 0; n < 20_000; n++) {
            Footprint a = footprint(random);
            Footprint b = footprint(random);
            boolean said = WheelComparison.of(a, b).answer() == Answer.NO_WORSE;
            boolean worse = worseOnSomeSlab(a, b, random);
            assertFalse(said && worse, a + " was called no worse than " + b);
            noWorse += said ? 1 : 0;
            unknownAndWorse += !said && worse ? 1 : 0;
        }
        assertTrue(noWorse > 1000, "no worse " + noWorse);
        assertTrue(unknownAndWorse > 5000, "unknown and worse " + unknownAndWorse);
    }

    private static Footprint footprint(Random random) {
        double length = 0.02 + 0.18 * random.nextDouble();
        double width = 0.02 + 0.18 * random.nextDouble();
        LoadedArea area = random.nextBoolean() ? LoadedArea.rectangle(length, width) : LoadedArea.circle(length / 2);
        return new Footprint(500 + 4500 * random.nextDouble(), area, 1 + random.nextDouble());
    }

    private static boolean worseOnSomeSlab(Footprint a, Footprint b, Random random) {
        double thickness = 0.08 + 0.2 * random.nextDouble();
        Westergaard slab = new Westergaard(20e9 + 15e9 * random.nextDouble(), 0.2, thickness, 1e7 * (1 + 9
                * random.nextDouble()));
        double ra = a.area().equalRadius();
        double rb = b.area().equalRadius();
        double more = 1 + 1e-9;
        boolean bending = slab.interior(a.force(), ra).stress() > more * slab.interior(b.force(), rb).stress()
                || slab.edge(a.force(), ra).stress() > more * slab.edge(b.force(), rb).stress()
                || slab.corner(a.force(), ra).stress() > more * slab.corner(b.force(), rb).stress();
        Punching punching = new Punching(25e6, thickness * (0.3 + 0.6 * random.nextDouble()), 0);
        boolean shear = punching.stress(a.force(), a.area(), Punching.Position.INSIDE, 1) > more
                * punching.stress(b.force(), b.area(), Punching.Position.INSIDE, 1);
        boolean pressure = BearingPressure.contact(a.force(), a.area()) > more * BearingPressure.contact(b.force(), b.area());
        return bending || shear || pressure;
    }
}
