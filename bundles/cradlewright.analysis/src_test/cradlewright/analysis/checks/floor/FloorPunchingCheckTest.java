package cradlewright.analysis.checks.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Slab of 124 mm, C25/30: effective depth taken as 93 mm. A contact of 25 mm radius crushes the struts at its face with 0.4 x 0.6
 * (1 - 25/250) 25/1.5 = 3.6 MPa over 2 pi 25 mm x 93 mm, less than the 0.494975 MPa (EN 1992-1-1 6.4, k = 2) at 2d carry; uneven
 * shear
 * 1.15. A quarter of the mass, 1.4 times over a joint (common practice), 1.6 times as rolling load (TR34).
 */
class FloorPunchingCheckTest {

    private static final double CAPACITY = 3.6e6 * 2 * Math.PI * 0.025 * 0.093 / 1.15;
    private static final double PER_KILOGRAM = 9.80665 / 4 * 1.4 * 1.6;

    private static SlabFacts slab(Optional<Boolean> suspended, double mesh) {
        return new SlabFacts("slab", "slab", Optional.of(RollingShop.measured(0.124)), Optional.of(RollingShop.measured(25e6)),
                Optional.empty(),
                Optional.of(mesh).filter(area -> area > 0).map(RollingShop::measured), Optional.empty(), Optional.empty(),
                        suspended);
    }

    private static RollingShop shop(double use) {
        return new RollingShop().weighs(use * CAPACITY / PER_KILOGRAM - RollingShop.OWN, 0).commonBalance(0, 0, 0.8)
                .stiffness(1e5)
                .contact(Math.PI * 0.025 * 0.025).on(slab(Optional.of(false), 0));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new FloorPunchingCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        // At a corner, flush with both edges: two sides of the square inside the circle and a quarter of the way round, at 2d:
        // 0.244 of it.
        Finding holds = only(shop(0.21));
        assertEquals(CAPACITY, holds.capacity().orElseThrow().si(), 1e-6 * CAPACITY);
        assertEquals(0.21 * CAPACITY, holds.demand().orElseThrow().si(), 1e-6 * CAPACITY);
        assertEquals(0.494975e6 * (2 * 0.05 / Math.sqrt(2) + Math.PI * 0.093) * 0.093 / 1.5, holds.inputs().get(2).amount()
                .si(), 1);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, only(shop(0.23)).verdict());
        assertEquals(Verdict.TIGHT, only(shop(0.95)).verdict());
        assertEquals(Verdict.STOP, only(shop(1.01)).verdict());
    }

    @Test
    void aPlateIsProven() {
        // 0.2 m square at 2d: 0.494975 MPa x (0.8 + 4 pi 0.093) m x 0.093 m/1.15 = 78.8 kN against 46.2 kN.
        assertEquals(Remedy.alone("Stand each castor or foot on a stiff square plate of the side given below.", Verdict.HOLDS),
                only(shop(1.01)).remedies().get(0));
    }

    @Test
    void cantSayAboutSteelAboveARoom() {
        assertEquals(Verdict.CANT_SAY, only(shop(0.1).on(slab(Optional.of(true), 0))).verdict());
        assertEquals(Verdict.HOLDS, only(shop(0.1).on(slab(Optional.of(true), 193e-6))).verdict());
        assertEquals(Verdict.CANT_SAY, only(new RollingShop().weighs(760, 0).on(slab(Optional.of(false), 0))).verdict());
    }

    /**
     * Somebody of 120 kg (common practice, no source) stands right over a prop at x 3 m, in front of which the supports end at 0.7 m.
     * Moments about them: what the prop does not take would lift the front, so it takes nearly all of 1176.798 N; of a car of 10 kg and
     * its dolly no castor takes as much. It stands on a foot, at rest: load factor 1.5.
     */
    @Test
    void aPropOnTheFloorPressesOnItToo() {
        Vec3 tail = new Vec3(3, 0, 0.3);
        RollingShop shop = new RollingShop().weighs(10, 0).commonBalance(0, 0, 0.3).stiffness(1e5).contact(Math.PI * 0.025 * 0.025)
                .on(slab(Optional.of(false), 0)).work("tail", WorkPointFacts.Kind.STAND_ON, tail, Vec3.UP.times(-1));
        Finding finding = only(shop.propped("prop", tail));
        assertEquals("under prop, one person with tools standing at tail", finding.situation());
        assertEquals(CAPACITY * 0.02 / 0.025, finding.capacity().orElseThrow().si(), 1e-6 * CAPACITY);
        assertEquals(1.5 * 1176.798, finding.demand().orElseThrow().si(), 0.02 * 1.5 * 1176.798);
        assertTrue(finding.words().startsWith("What stands there on a foot"), finding.words());
        // The prop carries most, but how small the prints of the wheels are, nobody knows.
        Finding open = only(new RollingShop().weighs(10, 0).commonBalance(0, 0, 0.3).stiffness(1e5).on(slab(Optional.of(false), 0))
                .work("tail", WorkPointFacts.Kind.STAND_ON, tail, Vec3.UP.times(-1)).propped("prop", tail));
        assertEquals(Verdict.CANT_SAY, open.verdict());
    }

    @Test
    void aScrewFootIsTakenAsSmall() {
        // Radius 20 mm (common practice), at rest only: the load factor is 1.5 and nothing rolls over a joint.
        Finding finding = only(shop(0.1).feet(0.6, true));
        assertEquals(CAPACITY * 0.02 / 0.025, finding.capacity().orElseThrow().si(), 1e-6 * CAPACITY);
        assertEquals(0.1 * CAPACITY * 1.5 / 1.4 / 1.6, finding.demand().orElseThrow().si(), 1e-6 * CAPACITY);
    }
}
