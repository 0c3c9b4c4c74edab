package cradlewright.mechanics.slab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.verify.CheckValues;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WestergaardTest {

    private static final double INCH = 0.0254;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double PSI = POUND_FORCE / (INCH * INCH);
    private static final Westergaard BOOK = new Westergaard(4e6 * PSI, 0.15, 10 * INCH, 100 * PSI / INCH);
    private static final Westergaard SHOP = new Westergaard(31e9, 0.2, 0.150, 3e7);

    private final CheckValues values = CheckValues.load("slab");

    @Test
    void textbookCase() {
        double p = 10_000 * POUND_FORCE;
        double a = 6 * INCH;
        for (String set : new String[] {"I3", "I3x"}) {
            values.check(set + ".l", BOOK.radius() / INCH);
            values.check(set + ".interior.stress", BOOK.interior(p, a).stress() / PSI);
            values.check(set + ".interior.sag", BOOK.interior(p, a).sag() / INCH);
            values.check(set + ".corner.stress", BOOK.corner(p, a).stress() / PSI);
            values.check(set + ".corner.sag", BOOK.corner(p, a).sag() / INCH);
            values.check(set + ".edge.stress", BOOK.edge(p, a).stress() / PSI);
            values.check(set + ".edge.sag", BOOK.edge(p, a).sag() / INCH);
        }
        values.check("I3.interior.sag.plate", BOOK.interior(p, a).sag() / INCH);
        values.check("I3.interior.wide.plate", BOOK.interior(p, 20 * INCH).stress() / PSI);
    }

    @Test
    void pointLoads() {
        double tiny = 1e-14;
        double h2 = BOOK.thickness() * BOOK.thickness();
        values.check("I3.corner.point", BOOK.corner(1, tiny).stress() * h2);
        values.check("I3.edge.point", BOOK.edge(1, tiny).sag() * BOOK.subgrade() * BOOK.radius() * BOOK.radius());
    }

    @Test
    void castorOnAShopFloor() {
        values.check("I4.l", SHOP.radius());
        values.check("I4.interior", SHOP.interior(5000, 0.025).stress() / 1e6);
        values.check("I4.corner", SHOP.corner(5000, 0.025).stress() / 1e6);
        values.check("I4.edge", SHOP.edge(5000, 0.025).stress() / 1e6);
        assertTrue(SHOP.feelsNeighbour(1.48));
        assertFalse(SHOP.feelsNeighbour(1.49));
    }

    @Test
    void narrowAndWideContactMeetAtTheLimit() {
        double a = 1.724 * 0.150;
        double below = SHOP.interior(5000, a - 1e-9).stress();
        assertEquals(below, SHOP.interior(5000, a + 1e-9).stress(), 1e-3 * below);
    }

    @Property(seed = "71", tries = 300)
    void thickerSlabsAndWiderContactsBearLess(@ForAll @DoubleRange(min = 0.02, max = 0.2) double a,
            @ForAll @DoubleRange(min = 0.12, max = 0.25) double h) {
        Westergaard thin = new Westergaard(31e9, 0.2, h, 3e7);
        Westergaard thick = new Westergaard(31e9, 0.2, h * 1.05, 3e7);
        assertTrue(thick.interior(5000, a).stress() < thin.interior(5000, a).stress());
        assertTrue(thick.edge(5000, a).stress() < thin.edge(5000, a).stress());
        assertTrue(thin.interior(5000, a * 1.05).stress() < thin.interior(5000, a).stress());
        assertTrue(thin.edge(5000, a * 1.05).stress() < thin.edge(5000, a).stress());
        assertTrue(thin.corner(5000, a * 1.05).stress() < thin.corner(5000, a).stress());
        // linear in the load
        assertEquals(2 * thin.edge(5000, a).sag(), thin.edge(10_000, a).sag(), 1e-12);
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> SHOP.interior(5000, 0));
        assertThrows(IllegalArgumentException.class, () -> SHOP.interior(5000, 0.4));
        assertThrows(IllegalArgumentException.class, () -> SHOP.edge(Double.NaN, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new Westergaard(31e9, 0.6, 0.15, 3e7));
        assertThrows(IllegalArgumentException.class, () -> new Westergaard(31e9, 0.2, 0, 3e7));
    }
}
