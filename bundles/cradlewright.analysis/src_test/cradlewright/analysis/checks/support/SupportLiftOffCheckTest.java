package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Four equal supports of compliance c under 900 kg, 2206.5 N each. Sinking that unloads one: 2206.5 N x (4 c + b2/Kt) with width b 1 m
 * and torsional stiffness Kt (closed form of the warp of four springs under a shell that twists).
 */
class SupportLiftOffCheckTest {

    private static final double SHARE = 900 * 9.80665 / 4;

    private static SupportShop shop(double compliance) {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        shop.support("FL", -1, -0.5, 0.5).gives(compliance);
        shop.support("FR", -1, 0.5, 0.5).gives(compliance);
        shop.support("RR", 1, 0.5, 0.5).gives(compliance);
        shop.support("RL", 1, -0.5, 0.5).gives(compliance);
        return shop;
    }

    private static Finding first(SupportShop shop) {
        List<Finding> findings = shop.ask(new SupportLiftOffCheck());
        assertEquals(4, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void softPadsHold() {
        Finding finding = first(shop(1e-6));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(SHARE * 4e-6, finding.capacity().orElseThrow().si(), 1e-8);
    }

    @Test
    void hardPadsUnderAShellThatMayBeStiffAreTight() {
        // 2206.5 N x 4e-7 m/N = 0.88 mm, less than the 2 mm that are allowed.
        Finding finding = first(shop(1e-7));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertTrue(finding.words().startsWith("If the shell is stiff"));
        assertEquals(SHARE * 4e-7, finding.capacity().orElseThrow().si(), 1e-8);
    }

    @Test
    void aShellThatIsKnownToTwistHolds() {
        // 4e-7 + 1/400 000 = 2.9e-6 m/N: 6.4 mm.
        Finding finding = first(shop(1e-7).torsion(400_000));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(SHARE * (4e-7 + 1 / 400_000.0), finding.capacity().orElseThrow().si(), 1e-5);
    }

    @Test
    void theShellCountsAtItsStiffEnd() {
        // 400 000 give or take 2 x 100 000 N m/rad: 600 000.
        Finding finding = first(shop(1e-7).torsion(400_000, 100_000));
        assertEquals(SHARE * (4e-7 + 1 / 600_000.0), finding.capacity().orElseThrow().si(), 1e-5);
    }

    @Test
    void aShellThatIsKnownToBeStiffIsTight() {
        // 4e-7 + 1/2 000 000 = 9e-7 m/N: 1.99 mm, whichever end.
        Finding finding = first(shop(1e-7).torsion(2_000_000));
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertTrue(finding.words().startsWith("It carries nothing once"));
    }

    @Test
    void threeSupportsOrNoFixturesAreNotAsked() {
        SupportShop three = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        three.support("A", -1, -0.5, 0.5);
        three.support("B", -1, 0.5, 0.5);
        three.support("C", 1, 0, 0.5);
        assertEquals(List.of(), three.ask(new SupportLiftOffCheck()));
    }

    @Test
    void cantSayWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.DOLLY);
        for (int i = 0; i < 4; i++) {
            shop.support("S" + i, i % 2, i / 2, 0.5);
        }
        assertEquals(Verdict.CANT_SAY, shop.ask(new SupportLiftOffCheck()).get(0).verdict());
    }

    @Test
    void noneLeftStops() {
        // Unloads at 2206.5 N x 4e-7 m/N = 0.8826 mm (above): 0.86 mm low leaves 0.02 mm, 0.8 mm leaves 0.08 mm.
        SupportShop none = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        SupportShop some = new SupportShop(CarrierKind.DOLLY).weighs(900, 0);
        for (double[] at : new double[][] {{-1, -0.5}, {-1, 0.5}, {1, 0.5}, {1, -0.5}}) {
            String id = "s" + at[0] + at[1];
            none.support(id, at[0], at[1], 0.5).gives(1e-7).low(at[0] < 0 && at[1] < 0 ? 0.00086 : 0);
            some.support(id, at[0], at[1], 0.5).gives(1e-7).low(at[0] < 0 && at[1] < 0 ? 0.00080 : 0);
        }
        assertEquals(Verdict.STOP, first(none).verdict());
        assertEquals("If the shell is stiff, what it carries is gone with the least sinking.", first(none).words());
        assertEquals(Verdict.TIGHT, first(some).verdict());
        // A fifth one beside the first, with daylight over it.
        SupportShop off = shop(1e-7);
        off.support("beside", -1, -0.5, 0.5).gives(1e-7).low(0.002);
        Finding daylight = off.ask(new SupportLiftOffCheck()).stream().filter(f -> f.objectName().equals("beside")).findFirst()
                .orElseThrow();
        assertEquals(Verdict.STOP, daylight.verdict());
        assertEquals("If the shell is stiff, it carries nothing even as it stands.", daylight.words());
        assertTrue(daylight.remedies().get(0).words().startsWith("Measure the gap at beside with feelers"));
    }
}
