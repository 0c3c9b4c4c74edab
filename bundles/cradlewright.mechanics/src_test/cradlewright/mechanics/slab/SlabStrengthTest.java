package cradlewright.mechanics.slab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.slab.Punching.Position;
import cradlewright.mechanics.verify.CheckValues;
import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SlabStrengthTest {

    private static final SlabUltimate SHEET = new SlabUltimate(25e6, 0.150, 193e-6, 0.093, 500e6, 3e7);
    private static final Punching MESH = new Punching(25e6, 0.093, 193e-6 / 0.093);
    private static final LoadedArea PLATE = LoadedArea.rectangle(0.05, 0.05);

    private final CheckValues values = CheckValues.load("slab");

    @Test
    void sampleSheet() {
        for (String set : new String[] {"I1", "I1x"}) {
            values.check(set + ".E", SHEET.elastic().modulus() / 1e9);
            values.check(set + ".l", 1000 * SHEET.elastic().radius());
            values.check(set + ".fctd", Concrete.designFlexure(25e6, 0.150) / 1e6);
            values.check(set + ".Mn", SHEET.hogging() / 1000);
            values.check(set + ".Mp", SHEET.sagging() / 1000);
        }
        values.check("factor.permanent", SlabUltimate.Load.PERMANENT.factor());
        values.check("factor.static", SlabUltimate.Load.STANDING.factor());
        values.check("factor.wheels", SlabUltimate.Load.ROLLING.factor());
        // a slab thicker than 0.6 m gains nothing below the plain tensile strength
        assertEquals(Concrete.meanTension(25e6) / 1.5, Concrete.designFlexure(25e6, 0.8), 1e-6);
    }

    @Test
    void collapseLoads() {
        double wide = 0.2 * SHEET.elastic().radius();
        values.check("I2.ratio", SHEET.ratio(0.050));
        values.check("I2.lower", SHEET.internal(0) / 1000);
        values.check("I2.fan", SHEET.internal(0) / (SHEET.hogging() + SHEET.sagging()));
        values.check("I2.internal", SHEET.internal(0.050) / 1000);
        values.check("I2.wide", SHEET.internal(wide) / 1000);
        // the weighting undone gives the wide-contact equation
        double weight = SHEET.ratio(0.050) / 0.2;
        values.check("I2.upper", (SHEET.internal(0.050) - (1 - weight) * SHEET.internal(0)) / weight / 1000);
        values.check("I2.edge.point", SHEET.edge(0) / 1000);
        values.check("I2.edge", SHEET.edge(0.050) / 1000);
        values.check("I2.edge.wide", SHEET.edge(wide) / 1000);
        values.check("I2.corner.point", SHEET.corner(0) / 1000);
        values.check("I2.corner", SHEET.corner(0.050) / 1000);
        values.check("I2.corner.wide", SHEET.corner(wide) / 1000);
    }

    @Property(seed = "72", tries = 300)
    void collapseLoadGrowsWithTheContactAndFallsTowardsTheCorner(@ForAll @DoubleRange(min = 0, max = 0.3) double a,
            @ForAll @DoubleRange(min = 0, max = 400) double meshInSquareMillimetres) {
        double mesh = meshInSquareMillimetres * 1e-6;
        SlabUltimate slab = new SlabUltimate(25e6, 0.150, mesh, 0.093, 500e6, 3e7);
        assertTrue(slab.internal(a * 1.05) >= slab.internal(a));
        assertTrue(slab.edge(a * 1.05) >= slab.edge(a));
        assertTrue(slab.corner(a * 1.05) >= slab.corner(a));
        assertTrue(slab.corner(a) < slab.edge(a));
        assertTrue(slab.edge(a) < slab.internal(a));
        assertTrue(new SlabUltimate(25e6, 0.150, mesh + 1e-5, 0.093, 500e6, 3e7).internal(a) > slab.internal(a));
    }

    @Test
    void punching() {
        values.check("I5", 1000 * new Punching(25e6, 0.210, 0).controlPerimeter(LoadedArea.rectangle(0.3, 0.3), Position.INSIDE));
        values.check("I5x", 1000 * new Punching(25e6, 0.210, 0).controlPerimeter(LoadedArea.rectangle(0.3, 0.3),
                Position.INSIDE));
        values.check("I6.k", MESH.sizeFactor());
        values.check("I6.vRdc", MESH.reinforcedStress() / 1e6);
        values.check("I6.vmin", MESH.leastStress() / 1e6);
        values.check("I6.u1", 1000 * MESH.controlPerimeter(PLATE, Position.INSIDE));
        values.check("I6.u1.corner-cut", 1000 * MESH.controlPerimeter(PLATE, Position.INSIDE));
        values.check("I6.V", MESH.capacity(PLATE, Position.INSIDE, 1) / 1000);
        values.check("I6.mesh-governs", new Punching(30e6, 0.210, 0.005).resistance() / 1e6);
        values.check("beta.interior", Position.INSIDE.beta());
        values.check("beta.edge", Position.EDGE.beta());
        values.check("beta.corner", Position.CORNER.beta());
        values.check("face", Concrete.faceShear(25e6) / 1e6);
        assertEquals(new Punching(30e6, 0.2, 0.02).resistance(), new Punching(30e6, 0.2, 0.05).resistance());
        // at its capacity the stress along the perimeter is the resistance
        assertEquals(MESH.resistance(), MESH.stress(MESH.capacity(PLATE, Position.INSIDE, 1.15), PLATE, Position.INSIDE, 1.15),
                1e-3);
    }

    @Test
    void edgesAndCornersHaveTheirPartOfThePerimeter() {
        LoadedArea plate = LoadedArea.rectangle(0.06, 0.04);
        double d = 0.1;
        Punching p = new Punching(25e6, d, 0.002);
        // half circles and quarter circles of radius 2d round the corners that lie inside the slab
        assertEquals(0.06 + 2 * 0.04 + 2 * (Math.PI / 2) * 2 * d, p.controlPerimeter(plate, Position.EDGE), 1e-12);
        assertEquals(0.06 + 0.04 + (Math.PI / 2) * 2 * d, p.controlPerimeter(plate, Position.CORNER), 1e-12);
        assertEquals(0.14, p.facePerimeter(plate, Position.EDGE), 1e-12);
        assertEquals(0.10, p.facePerimeter(plate, Position.CORNER), 1e-12);
        LoadedArea large = LoadedArea.rectangle(0.5, 0.4);
        assertEquals(0.5 + 0.3, p.facePerimeter(large, Position.EDGE), 1e-12);
        assertEquals(0.3, p.facePerimeter(large, Position.CORNER), 1e-12);
        // a very small contact is limited at its face
        LoadedArea dot = LoadedArea.rectangle(0.01, 0.01);
        assertEquals(3.6e6 * 0.04 * d, p.capacity(dot, Position.INSIDE, 1), 1e-6);
        LoadedArea circle = LoadedArea.circle(0.05);
        assertTrue(p.capacity(circle, Position.CORNER, 1) < p.capacity(circle, Position.EDGE, 1));
        assertTrue(p.capacity(circle, Position.EDGE, 1) < p.capacity(circle, Position.INSIDE, 1));
        assertTrue(p.capacity(circle, Position.INSIDE, 1.15) < p.capacity(circle, Position.INSIDE, 1));
        assertEquals(2 * Math.PI * (0.05 + 2 * d), p.controlPerimeter(circle, Position.INSIDE), 1e-12);
        assertEquals(0.1 / Math.sqrt(2) * 3 + 2 * Math.PI * d, p.controlPerimeter(circle, Position.EDGE), 1e-12);
    }

    @Test
    void pressures() {
        LoadedArea contact = LoadedArea.circle(0.025);
        values.check("I7.contact", BearingPressure.contact(5000, contact) / 1e6);
        values.check("I7.fcd", Concrete.designCompression(25e6) / 1e6);
        values.check("I7.use", BearingPressure.utilisation(5000, contact, 25e6));
        values.check("I7.soil", BearingPressure.soil(5000, PLATE, 0.150) / 1000);
        assertEquals(5000 / (Math.PI * 0.175 * 0.175), BearingPressure.soil(5000, contact, 0.150), 1e-6);
        assertEquals(0.025, contact.equalRadius(), 1e-12);
        assertEquals(0.05 / Math.sqrt(Math.PI), PLATE.equalRadius(), 1e-12);
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> new SlabUltimate(60e6, 0.15, 1e-4, 0.09, 500e6, 3e7));
        assertThrows(IllegalArgumentException.class, () -> new SlabUltimate(25, 0.15, 1e-4, 0.09, 500e6, 3e7));
        assertThrows(IllegalArgumentException.class, () -> new SlabUltimate(25e6, 0.15, 1e-4, 0.16, 500e6, 3e7));
        assertThrows(IllegalArgumentException.class, () -> SHEET.internal(0.5));
        assertThrows(IllegalArgumentException.class, () -> SHEET.internal(-0.1));
        assertThrows(IllegalArgumentException.class, () -> new Punching(25e6, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> MESH.capacity(PLATE, Position.EDGE, 0.9));
        assertThrows(IllegalArgumentException.class, () -> LoadedArea.rectangle(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new LoadedArea(1, 2, true));
        assertThrows(IllegalArgumentException.class, () -> BearingPressure.soil(1, PLATE, -1));
    }

    @Test
    void formulasAreNamedOnce() {
        Set<String> ids = new HashSet<>();
        SlabFormulas.all().forEach(f -> assertTrue(ids.add(f.id()) && f.id().startsWith("slab."), f.id()));
    }
}
