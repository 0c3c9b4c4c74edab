package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Shell 760 kg and dolly 140 kg with the common balance point at 0.15 m behind the middle and 0.05 m to the right. Four equal
 * springs under a
 * rigid load: n/4 (1 + x x_i/0.64 + y y_i/0.16) with 225 kg each in the middle; rear right 225 (1 + 0.1875 + 0.125) = 295.3125
 * kg (statics,
 * sum of x_i squared 4 times 0.64, of y_i squared 4 times 0.16). Over a joint 1.4 times (common practice): 413.4375 kg. Settled
 * unevenness 3 mm; the castors are so soft that a hole of 3 mm takes (3 mm k)/4 off or on: k = 1 kN/mm gives 76.48 kg.
 */
class CastorLoadCheckTest {

    private static final double JOINT = 1.4 * 295.3125;

    private static RollingShop shop(double rated) {
        return new RollingShop().weighs(760, 0).commonBalance(0.15, 0.05, 0.8).stiffness(1e6)
                .rated(Optional.of(RollingShop.measured(rated)));
    }

    private static Finding rearRight(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorLoadCheck());
        assertEquals(4, findings.size(), findings::toString);
        return findings.get(3);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = rearRight(shop(JOINT / 0.89));
        assertEquals(JOINT, holds.demand().orElseThrow().si(), 1e-6 * JOINT);
        assertEquals("rolled over a joint in the floor", holds.situation());
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, rearRight(shop(JOINT / 0.91)).verdict());
        assertEquals(Verdict.STOP, rearRight(shop(JOINT / 1.01)).verdict());
    }

    @Test
    void aHoleUnderAStiffCastorCounts() {
        RollingShop shop = shop(1000).stiffness(1.6e6);
        // The hole takes k d/4 off its own castor and the one across, and puts it on the other two: 1.6e6 x 0.003/4 = 1200 N.
        Finding finding = rearRight(shop);
        double hole = 295.3125 + 1200 / 9.80665;
        assertEquals(Math.max(hole, JOINT), finding.demand().orElseThrow().si(), 0.01);
        assertTrue(hole > JOINT);
        assertTrue(finding.situation().endsWith("in a hole"));
    }

    @Test
    void massesCountAtTheirUpperEnd() {
        // Shell alone: common x = 0.15 comes from the shell at 0.15 x 900/760; every kg of it at rear right gives (1 + 0.1875 s
        // + 0.125 s)/4.
        double s = 900.0 / 760;
        double perKilogram = 0.25 * (1 + 0.3125 * s);
        Finding finding = rearRight(shop(1000).weighs(760, 10));
        assertEquals(JOINT + 1.4 * 20 * perKilogram, finding.demand().orElseThrow().si(), 1e-3);
    }

    @Test
    void remediesAreWorkedOut() {
        // Without the joint the hole governs: 295.3125 + 76.48 = 371.79 kg, 0.908 of the rating of 413.4375/1.01 = 409.34 kg.
        RollingShop shop = shop(JOINT / 1.01).has(RollingShop.type("larger", 700, 0.16)).has(RollingShop.type("largest", 2000,
                0.2));
        List<Remedy> remedies = rearRight(shop).remedies();
        assertEquals(Remedy.mends("Do not roll it over joints while it is this heavy.", Verdict.TIGHT),
                remedies.get(0));
        // Statics allow 506.25 kg on this castor, times 1.4 = 708.75 kg: the type for 700 kg would stop, the next one holds.
        assertEquals(Remedy.mends("Fit castors of the type largest all round. Their wheels are of another size: the dolly then stands at "
                + "another height.", Verdict.HOLDS), remedies.get(1));
    }

    @Test
    void oneTypeThatTakesTheMostGoesUnderEveryCastor() {
        // Front right never carries more than 900 (0.8 - 0.15)/1.6 = 365.6 kg, times 1.4 = 511.9 kg: "middle" would do there, 0.853. Rear
        // right gets up to 708.75 kg: 0.897 of "wide", 0.886 of "level", which has the wheel of 125 mm that the dolly stands on now.
        RollingShop shop = shop(250).has(RollingShop.type("middle", 600, 0.125)).has(RollingShop.type("wide", 790, 0.16))
                .has(RollingShop.type("level", 800, 0.125)).has(RollingShop.type("more", 900, 0.125));
        Remedy expected = Remedy.mends("Fit castors of the type level all round.", Verdict.HOLDS);
        List<Finding> stopped = shop.ask(new CastorLoadCheck()).stream().filter(finding -> finding.verdict() == Verdict.STOP).toList();
        assertEquals(List.of("front right", "rear left", "rear right"), stopped.stream().map(Finding::objectName).toList());
        stopped.forEach(finding -> assertTrue(finding.remedies().contains(expected), finding.remedies()::toString));
    }

    @Test
    void whatIsTakenOffIsSaid() {
        // A maker's sheet that was given a give or take of its own, u 25 kg, twice (k = 2): 500 kg - 2 x 25 kg = 450 kg.
        Finding finding = rearRight(shop(1).rated(Optional.of(new Value(500, 25, Source.MAKERS_SHEET))));
        assertEquals(450, finding.capacity().orElseThrow().si(), 1e-9);
        assertEquals("rated load of the castor, maker's sheet, less its give or take", finding.ratedBy());
        assertEquals(List.of(new Input("stated", Amount.mass(500), "maker's sheet", true),
                new Input("less its give or take", Amount.mass(50), "19 times in 20", true)),
                finding.inputs().stream().filter(Input::shown).toList());
        Finding exact = rearRight(shop(500));
        assertEquals("rated load of the castor, measured", exact.ratedBy());
        assertEquals(List.of(), exact.inputs().stream().filter(Input::shown).toList());
    }

    @Test
    void cantSayWithoutRatingOrMass() {
        Finding finding = rearRight(shop(1).rated(Optional.empty()));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(List.of("rated load of castor type: from its maker"), finding.missing());
        List<Finding> findings = new RollingShop().ask(new CastorLoadCheck());
        assertEquals(1, findings.size());
        assertEquals(List.of("the mass of what is carried"), findings.get(0).missing());
    }

    @Test
    void notAskedOnFeet() {
        assertEquals(List.of(), shop(1).feet(0.6, true).ask(new CastorLoadCheck()));
    }
}
