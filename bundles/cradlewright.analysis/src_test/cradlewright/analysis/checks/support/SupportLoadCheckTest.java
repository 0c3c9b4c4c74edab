package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Three supports, so that statics alone give the loads: A and B in front, C behind with half the weight, 800 kg x 9.80665 m/s2 / 2 =
 * 3922.66 N; rolling over a joint multiplies by 1.4 (common practice): 5491.72 N.
 */
class SupportLoadCheckTest {

    private static final double JOINT = 1.4 * 800 * 9.80665 / 2;

    private static SupportShop shop(double capacity, Basis basis) {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        shop.support("A", -1, -0.5, 0.5).takes(1e6, Basis.RATED_LOAD);
        shop.support("B", -1, 0.5, 0.5).takes(1e6, Basis.RATED_LOAD);
        shop.support("C", 1, 0, 0.5).takes(capacity, basis);
        return shop;
    }

    private static Finding behind(SupportShop shop) {
        List<Finding> findings = shop.ask(new SupportLoadCheck());
        assertEquals(3, findings.size(), findings::toString);
        return findings.get(2);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = behind(shop(JOINT / 0.89, Basis.RATED_LOAD));
        assertEquals(JOINT, holds.demand().orElseThrow().si(), 1e-6 * JOINT);
        assertEquals("rolled over a joint in the floor", holds.situation());
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, behind(shop(JOINT / 0.91, Basis.RATED_LOAD)).verdict());
        assertEquals(Verdict.STOP, behind(shop(JOINT / 1.01, Basis.RATED_LOAD)).verdict());
    }

    @Test
    void designResistanceStandsAgainstOneAndAHalfTimes() {
        Finding finding = behind(shop(JOINT * 1.49, Basis.DESIGN_RESISTANCE));
        assertEquals(1.5 * JOINT, finding.demand().orElseThrow().si(), 1e-6 * JOINT);
        assertEquals(Verdict.STOP, finding.verdict());
    }

    @Test
    void theMassCountsAtItsUpperEnd() {
        SupportShop shop = shop(1e6, Basis.RATED_LOAD).weighs(800, 20);
        // 800 kg give or take 2 x 20 kg.
        assertEquals(JOINT * 840 / 800, behind(shop).demand().orElseThrow().si(), 1e-6 * JOINT);
    }

    @Test
    void keepingPeopleOffIsWorkedOut() {
        // A pull of 800 N straight down at C gives 3922.66 + 800 = 4722.66 N, 0.82 of this capacity; the joint gives 0.95 of it.
        SupportShop shop = shop(JOINT * 1.05, Basis.RATED_LOAD).work("sill", WorkPointFacts.Kind.BAR, new Vec3(1, 0, 1),
                new Vec3(0, 0, -1));
        assertEquals("rolled over a joint in the floor", behind(shop).situation());
        Remedy remedy = behind(shop).remedies().get(0);
        assertEquals(Optional.of(Verdict.HOLDS), remedy.after());
        assertTrue(remedy.words().startsWith("Do not roll it over joints"));
    }

    @Test
    void cantSayWithoutCapacity() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(800, 0);
        shop.support("A", -1, -0.5, 0.5);
        shop.support("B", -1, 0.5, 0.5);
        shop.support("C", 1, 0, 0.5);
        assertEquals(Verdict.CANT_SAY, behind(shop).verdict());
    }

    @Test
    void cantSayOnceWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY);
        shop.support("A", -1, -0.5, 0.5);
        List<Finding> findings = shop.ask(new SupportLoadCheck());
        assertEquals(1, findings.size());
        assertEquals(List.of("the mass of what is carried"), findings.get(0).missing());
    }

    @Test
    void leavesWhatFallsOverToOthers() {
        assertEquals(List.of(), shop(1e6, Basis.RATED_LOAD).balance(2, 0, 0, 0).ask(new SupportLoadCheck()));
    }

    @Test
    void asksOnlyAboutFixtures() {
        SupportShop shop = new SupportShop(CarrierKind.STANDS).weighs(800, 0);
        shop.support("A", -1, -0.5, 0.5);
        assertEquals(List.of(), shop.ask(new SupportLoadCheck()));
    }
}
