package cradlewright.mechanics.pad;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.verify.CheckValues;
import cradlewright.mechanics.verify.SpringBed;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class PadTest {

    private static final CheckValues VALUES = CheckValues.load("pad");

    @Test
    void cork() {
        VALUES.check("cork.modulus", CorkPad.MODULUS / 1e6);
        VALUES.check("cork.spread", CorkPad.MODULUS_SPREAD / 1e6);
        VALUES.check("cork.collapse", CorkPad.COLLAPSE_STRESS / 1e6);
        VALUES.check("cork.stress-limit", PadLimits.CORK.stress() / 1e6);
        VALUES.check("cork.strain-limit", PadLimits.CORK.strain());
        Pad pad = CorkPad.rectangle(0.060, 0.060, 0.006);
        VALUES.check("H5.stress", pad.stress(1250) / 1e6);
        VALUES.check("H5.compression", pad.compression(1250) * 1e3);
        VALUES.check("H5.stiffness", pad.stiffness() / 1e6);
        VALUES.check("H7", pad.compression(900) * 1e3);
        assertEquals(0.347222 / 0.4, PadLimits.CORK.use(pad, 1250), 1e-5, "stress governs at 17 MPa");
        Pad soft = new CorkPad(0.0036, 0.006, 5e6);
        assertEquals(0.347222 / 5 / 0.05, PadLimits.CORK.use(soft, 1250), 1e-5, "strain governs a soft cork");
    }

    @Test
    void rubber() {
        RubberPad disc = RubberPad.disc(0.080, 0.020, 2.4e6);
        VALUES.check("H6.shape", disc.shapeFactor());
        VALUES.check("H6.modulus", disc.compressionModulus() / 1e6);
        VALUES.check("H6.stiffness", disc.stiffness() / 1e3);
        VALUES.check("H6", disc.compression(2000) * 1e3);
        VALUES.check("H6b", disc.rebound(1500, 900) * 1e3);
        VALUES.check("H6.block-shape", RubberPad.block(0.080, 0.040, 0.020, 2.4e6).shapeFactor());
        VALUES.check("rubber.bulk", RubberPad.disc(0.080, 0.002, 2.4e6).withBulkModulus(2000e6).compressionModulus() / 1e6);
    }

    /**
     * Another route to the held disc: the rubber flows sideways with a parabolic profile, its shear on both plates builds up a
     * pressure from the rim inward; plain compression is added.
     */
    @Test
    void heldDiscByRadialPressure() {
        double radius = 0.040;
        double thickness = 0.020;
        double e0 = 2.4e6;
        double shearModulus = e0 / 3;
        double strain = 1e-3;
        int rings = 20000;
        double dr = radius / rings;
        double pressure = 0;
        double force = 0;
        for (int i = rings - 1; i >= 0; i--) {
            double r = (i + 0.5) * dr;
            double flow = strain * r / 2;
            double wallShear = shearModulus * 6 * flow / thickness;
            double step = 2 * wallShear / thickness * dr;
            force += (pressure + step / 2) * 2 * Math.PI * r * dr;
            pressure += step;
        }
        double modulus = e0 + force / (Math.PI * radius * radius) / strain;
        VALUES.check("rubber.pressure", modulus / 1e6);
        assertEquals(modulus, RubberPad.disc(2 * radius, thickness, e0).compressionModulus(), 1e-6 * modulus);
    }

    @Test
    void stressOfABedOfSprings() {
        double stress = new SpringBed(0.060, 0.060, 0.0005, (x, y) -> true).largestPressure(1250);
        VALUES.check("bed.stress", stress / 1e6);
        assertEquals(stress, CorkPad.rectangle(0.060, 0.060, 0.006).stress(1250), 1e-6 * stress);
    }

    @Test
    void toleranceStacks() {
        ToleranceStack stack = ToleranceStack.equalPieces(4, 0.05e-3);
        VALUES.check("H4.worst", stack.worst() * 1e3);
        VALUES.check("H4.rss", stack.rootSumSquare() * 1e3);
        VALUES.check("H4.u", stack.standardUncertainty() * 1e3);
        assertEquals(0.5, new ToleranceStack(0.3, 0.4).rootSumSquare(), 1e-12);
        Random random = new Random(20240607);
        int draws = 400_000;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            double height = 0;
            for (int piece = 0; piece < 4; piece++) {
                height += 0.05 * (2 * random.nextDouble() - 1);
            }
            squares += height * height;
        }
        double deviation = Math.sqrt(squares / draws);
        VALUES.check("H4.monte-carlo", deviation);
        assertEquals(deviation, stack.standardUncertainty() * 1e3, 0.005 * deviation);
    }

    @Property(seed = "77", tries = 200)
    void flatterIsStifferAndCompressionIsLinear(@ForAll @DoubleRange(min = 0.02, max = 0.2) double diameter,
            @ForAll @DoubleRange(min = 2, max = 50) double thicknessMm, @ForAll @DoubleRange(min = 0, max = 1e4) double force) {
        double thickness = thicknessMm / 1e3;
        RubberPad pad = RubberPad.disc(diameter, thickness, 3e6);
        assertTrue(RubberPad.disc(diameter, thickness * 0.9, 3e6).stiffness() > pad.stiffness());
        assertEquals(2 * pad.compression(force), pad.compression(2 * force), 1e-15 + 1e-12 * pad.compression(force));
        assertTrue(pad.withBulkModulus(2e9).compressionModulus() < Math.min(2e9, pad.compressionModulus()));
        assertEquals(0.5 * force * pad.compression(force), 0.5 * pad.stiffness() * Math.pow(pad.compression(force), 2),
                1e-9 * (1 + force), "work of the force is the energy of the spring");
        RubberPad square = RubberPad.block(diameter, diameter, thickness, 3e6);
        assertEquals(square.shapeFactor(), pad.shapeFactor(), 1e-9 * pad.shapeFactor(),
                "a square has the shape factor of its inscribed disc");
    }

    @Test
    void limitsOfTheRange() {
        assertEquals(0.5, new PadLimits(1e6, 0.5).strain(), 0);
        assertThrows(IllegalArgumentException.class, () -> new PadLimits(1e6, 0.501));
        assertEquals(1, ToleranceStack.equalPieces(1000, 0.001).worst(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> ToleranceStack.equalPieces(1001, 0.001));
    }

    @Test
    void badInputIsRefused() {
        Pad pad = CorkPad.rectangle(0.06, 0.06, 0.006);
        assertThrows(IllegalArgumentException.class, () -> pad.compression(-1));
        assertThrows(IllegalArgumentException.class, () -> pad.stress(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> CorkPad.rectangle(-0.06, -0.06, 0.006));
        assertThrows(IllegalArgumentException.class, () -> RubberPad.disc(0.08, 0, 2e6));
        assertThrows(IllegalArgumentException.class, () -> RubberPad.disc(0.08, 0.02, 2e6).withBulkModulus(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new PadLimits(1, 0.6));
        assertThrows(IllegalArgumentException.class, () -> new ToleranceStack(-1));
        assertThrows(IllegalArgumentException.class, () -> ToleranceStack.equalPieces(-1, 0.1));
        assertEquals(PadFormulas.all().size(), PadFormulas.all().stream().map(f -> f.id()).distinct().count());
    }
}
