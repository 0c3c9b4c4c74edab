package cradlewright.mechanics.timber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.verify.CheckValues;
import cradlewright.mechanics.verify.SpringBed;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class TimberRailTest {

    private static final CheckValues VALUES = CheckValues.load("timber");

    private static TimberRail c24(double width, double depth) {
        return new TimberRail(TimberClass.C24, width, depth, ServiceClass.DRY, LoadDuration.MEDIUM, TimberRail.GAMMA_M);
    }

    @Test
    void publishedFloorJoist() {
        TimberRail joist = c24(0.075, 0.200);
        double load = 0.5 * (1.35 * 500 + 1.5 * 1500);
        double moment = load * 4.5 * 4.5 / 8;
        VALUES.check("floor.bending", joist.bendingUse(moment, 0) / 1.1);
        VALUES.check("floor.fmd", joist.bendingStrength() / 1e6);
        double shear = load * 4.5 / 2;
        VALUES.check("shear.stress", joist.shearStress(-shear) / 1e6);
        VALUES.check("shear.fvd", joist.shearStrength() / 1e6);
        assertEquals(joist.shearStress(shear) / joist.shearStrength(), joist.shearUse(shear), 1e-12);
    }

    @Test
    void modificationFactorsAndClasses() {
        for (ServiceClass service : ServiceClass.values()) {
            for (LoadDuration duration : LoadDuration.values()) {
                String row = "kmod." + (service.ordinal() + 1) + "." + duration.name().toLowerCase(Locale.ROOT);
                VALUES.check(row, service.modification(duration));
                VALUES.check("second." + row, service.modification(duration));
            }
        }
        for (TimberClass timber : TimberClass.values()) {
            VALUES.check(timber + ".fm", timber.bendingStrength() / 1e6);
            VALUES.check(timber + ".fv", timber.shearStrength() / 1e6);
            VALUES.check(timber + ".fc90", timber.strengthAcrossGrain() / 1e6);
            VALUES.check(timber + ".E", timber.meanModulus() / 1e9);
            VALUES.check(timber + ".E05", timber.lowModulus() / 1e9);
            VALUES.check(timber + ".density", timber.meanDensity());
        }
        VALUES.check("fc90.C18", new TimberRail(TimberClass.C18, 0.1, 0.1, ServiceClass.OUTDOORS, LoadDuration.PERMANENT, 1.3)
                .strengthAcrossGrain() / 1e6);
    }

    @Test
    void depthFactor() {
        VALUES.check("kh.100", TimberRail.depthFactor(0.100));
        VALUES.check("kh.150", TimberRail.depthFactor(0.150));
        VALUES.check("kh.30", TimberRail.depthFactor(0.030));
        VALUES.check("second.kh.80", TimberRail.depthFactor(0.080));
        VALUES.check("second.kh.40", TimberRail.depthFactor(0.040));
        assertEquals(1, TimberRail.depthFactor(0.3), "deep rails lose nothing");
    }

    @Test
    void bendingBothWaysAndSeat() {
        VALUES.check("biaxial", c24(0.100, 0.150).bendingUse(-1500, 500));
        VALUES.check("bearing", c24(0.100, 0.150).seatUse(6000, 0.050, 0.100));
    }

    /** Stress of the outer fibre, the depth cut into strips. */
    private static double fibreStress(double moment, double width, double depth) {
        int strips = 2000;
        double inertia = 0;
        for (int i = 0; i < strips; i++) {
            double z = ((i + 0.5) / strips - 0.5) * depth;
            inertia += width * depth / strips * z * z;
        }
        return moment * depth / 2 / inertia;
    }

    @Test
    void bendingByStripsAndSeatBySprings() {
        double upright = fibreStress(1500, 0.100, 0.150) / (24e6 * 0.8 / 1.3);
        double sideways = fibreStress(500, 0.150, 0.100) / (24e6 * 0.8 / 1.3 * Math.pow(1.5, 0.2));
        double use = Math.max(upright + 0.7 * sideways, 0.7 * upright + sideways);
        VALUES.check("strips.both", use);
        assertEquals(use, c24(0.100, 0.150).bendingUse(1500, 500), 1e-5 * use);
        double seat = new SpringBed(0.050, 0.100, 0.0005, (x, y) -> true).largestPressure(6000) / (2.5e6 * 0.8 / 1.3);
        VALUES.check("bed.seat", seat);
        assertEquals(seat, c24(0.100, 0.150).seatUse(6000, 0.050, 0.100), 1e-6 * seat);
    }

    /** Shear stress by first moments over the depth, cracks left out. */
    @Test
    void shearStressByIntegration() {
        VALUES.check("kcr", TimberRail.CRACK_FACTOR);
        double b = 0.060;
        double h = 0.100;
        int strips = 20000;
        double inertia = 0;
        double first = 0;
        for (int i = 0; i < strips; i++) {
            double z = (i + 0.5) * h / strips - h / 2;
            inertia += b * h / strips * z * z;
            if (z > 0) {
                first += b * h / strips * z;
            }
        }
        double stress = 1000 * first / (inertia * b);
        VALUES.check("shear.integral", stress * b * h / 1000);
        assertEquals(stress / 0.67, c24(b, h).shearStress(1000), 1e-6 * stress);
    }

    @Property(seed = "31", tries = 200)
    void useIsLinearInTheLoadAndFallsWithSize(@ForAll @DoubleRange(min = 0.03, max = 0.3) double width,
            @ForAll @DoubleRange(min = 0.03, max = 0.3) double depth, @ForAll @DoubleRange(min = 0, max = 5000) double moment,
            @ForAll @DoubleRange(min = 0, max = 5000) double sideways) {
        TimberRail rail = c24(width, depth);
        double use = rail.bendingUse(moment, sideways);
        assertEquals(3 * use, rail.bendingUse(3 * moment, -3 * sideways), 1e-9 * (1 + use));
        assertEquals(use, c24(depth, width).bendingUse(sideways, moment), 1e-9 * (1 + use), "a rail turned on its side");
        assertTrue(c24(width * 1.1, depth * 1.1).bendingUse(moment, sideways) <= use);
        TimberRail weaker = new TimberRail(TimberClass.C24, width, depth, ServiceClass.DRY, LoadDuration.MEDIUM, 1.5);
        assertEquals(use * 1.5 / 1.3, weaker.bendingUse(moment, sideways), 1e-9 * (1 + use));
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> c24(0, 0.1));
        assertThrows(IllegalArgumentException.class,
                () -> new TimberRail(TimberClass.C24, 0.1, 0.1, ServiceClass.DRY, LoadDuration.LONG, 3.01));
        assertThrows(IllegalArgumentException.class, () -> c24(0.1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> c24(0.1, 0.1).bendingUse(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> c24(0.1, 0.1).seatUse(1, 0.05, 0.2), "seat wider than the rail");
        assertThrows(IllegalArgumentException.class, () -> c24(0.1, 0.1).seatUse(-1, 0.05, 0.1));
        assertThrows(IllegalArgumentException.class,
                () -> new TimberRail(null, 0.1, 0.1, ServiceClass.DRY, LoadDuration.LONG, 1.3));
        assertEquals(TimberFormulas.all().size(), TimberFormulas.all().stream().map(f -> f.id()).distinct().count());
    }
}
