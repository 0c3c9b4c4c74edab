package cradlewright.analysis.checks.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Slab of 150 mm, C25/30, on soil of 0.03 N/mm3: l = 744.593 mm and a design strength of 2.47947 MPa (published sample sheet,
 * TR34 4th
 * ed.). Contact of 25 mm radius: b = 52.047 mm, so the stress inside is 3 x 1.2/(2 pi h2) (ln(l/b) + 0.6159) = 83.44 Pa for each
 * N (pavement
 * design texts). A quarter of the mass, 1.4 times over a joint (common practice), 1.6 times as rolling load (TR34).
 */
class FloorSlabCheckTest {

    private static final double STRENGTH = 2.47947e6;
    private static final double INSIDE = 3 * 1.2 / (2 * Math.PI * 0.15 * 0.15) * (Math.log(744.593 / 52.0471) + 0.6159);
    private static final double PER_KILOGRAM = 9.80665 / 4 * 1.4 * 1.6;

    private static SlabFacts slab(Optional<Boolean> suspended) {
        return new SlabFacts("slab", "slab", Optional.of(RollingShop.measured(0.15)), Optional.of(RollingShop.measured(25e6)),
                Optional.of(RollingShop.measured(3e7)), Optional.empty(), Optional.empty(), Optional.empty(), suspended);
    }

    /** A shop whose castors use that share of the strength inside the slab. */
    private static RollingShop shop(double use) {
        double mass = use * STRENGTH / (INSIDE * PER_KILOGRAM);
        return new RollingShop().weighs(mass - RollingShop.OWN, 0).commonBalance(0, 0, 0.8).stiffness(1e5)
                .contact(Math.PI * 0.025 * 0.025)
                .on(slab(Optional.of(false)));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new FloorSlabCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsWhenItHoldsAtTheEdge() {
        // The edge formula gives 2.56 times the stress inside (pavement design texts, 1.0686 against 0.4167 MPa under 5 kN).
        Finding finding = only(shop(0.9 / 2.6));
        assertEquals(0.9 / 2.6 * STRENGTH, finding.demand().orElseThrow().si(), 1e-4 * STRENGTH);
        assertEquals(STRENGTH, finding.capacity().orElseThrow().si(), 1e-5 * STRENGTH);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(1.068610 / 0.416703, finding.inputs().get(2).amount().si() / finding.demand().get().si(), 0.01);
    }

    @Test
    void tightWhereItHoldsInsideOnly() {
        Finding finding = only(shop(0.5));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertEquals("The slab takes it well inside, and may crack at an edge, joint or corner.", finding.words());
        assertEquals(Optional.of(Verdict.HOLDS), finding.remedies().get(0).after());
        assertEquals("The slab takes it, and only just at an edge, joint or corner.", only(shop(0.95 / 2.56)).words());
    }

    @Test
    void stopsInside() {
        assertEquals(Verdict.STOP, only(shop(1.01)).verdict());
    }

    @Test
    void castorsCloseTogetherCountAsOne() {
        // Castors 0.7 m apart, less than l: two of them.
        double one = only(shop(0.2)).demand().orElseThrow().si();
        assertEquals(2 * one, only(shop(0.2).halfWidth(0.35)).demand().orElseThrow().si(), 1e-9 * one);
    }

    @Test
    void cantSayAboveARoomOrWithoutContact() {
        assertEquals(Verdict.CANT_SAY, only(shop(0.1).on(slab(Optional.of(true)))).verdict());
        assertEquals(Verdict.CANT_SAY, only(shop(0.1).on(slab(Optional.empty()))).verdict());
        RollingShop shop = new RollingShop().weighs(760, 0).on(slab(Optional.of(false)));
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
        assertEquals(List.<Remedy>of(), only(shop).remedies());
    }

    @Test
    void cantSayWithoutMass() {
        assertEquals(Verdict.CANT_SAY, only(new RollingShop().on(slab(Optional.of(false)))).verdict());
    }

    @Test
    void notAskedWithoutSlab() {
        assertEquals(List.of(), new RollingShop().weighs(760, 0).ask(new FloorSlabCheck()));
    }
}
