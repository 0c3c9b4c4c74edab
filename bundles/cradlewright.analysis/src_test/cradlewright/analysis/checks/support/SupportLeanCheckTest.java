package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Friction 0.3, three times as soft sideways: common practice, no source. */
class SupportLeanCheckTest {

    /** Four equal corners whose faces lean by that much, all to the right or each pair against the other. */
    private static List<Finding> ask(double lean, boolean opposed) {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).weighs(400, 0).balance(0, 0, 0.5, 0);
        for (double[] at : new double[][] {{-1, -0.5}, {-1, 0.5}, {1, 0.5}, {1, -0.5}}) {
            double way = opposed && at[1] > 0 ? -1 : 1;
            shop.support("s" + at[0] + at[1], at[0], at[1], 0).gives(1e-6).pushes(new Vec3(0, way * Math.sin(lean), Math.cos(lean)));
        }
        return shop.ask(new SupportLeanCheck());
    }

    @Test
    void frictionHoldsASmallLean() {
        // All to one side: the weight leans by 10 degrees on each face, tan 10 = 0.176 against 0.3 (equilibrium by hand).
        Finding finding = ask(Math.toRadians(10), false).get(0);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(400 * 9.80665 / 4 * Math.sin(Math.toRadians(10)), finding.demand().orElseThrow().si(), 1e-3);
        assertEquals(0.3 * 400 * 9.80665 / 4 * Math.cos(Math.toRadians(10)), finding.capacity().orElseThrow().si(), 1e-3);
    }

    @Test
    void tightInTheLastTenth() {
        // tan 16 = 0.287, above nine tenths of 0.3.
        assertEquals(Verdict.TIGHT, ask(Math.toRadians(16), false).get(0).verdict());
    }

    @Test
    void whatLeansOneWaySlidesOff() {
        // tan 20 = 0.364.
        assertEquals(Verdict.STOP, ask(Math.toRadians(20), false).get(0).verdict());
    }

    @Test
    void facesThatLeanAgainstEachOtherHoldWithoutFriction() {
        // In a channel T = N tan a / 3: at 45 degrees a third, more than 0.3.
        Finding finding = ask(Math.toRadians(45), true).get(0);
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertTrue(finding.words().contains("other supports"), finding.words());
    }

    @Test
    void asksNothingWhereAllPushStraightUp() {
        assertEquals(List.of(), ask(0, false));
    }

    @Test
    void cantSayWithoutMass() {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR);
        shop.support("A", 0, 0, 0).pushes(new Vec3(0, 1, 1));
        assertEquals(Verdict.CANT_SAY, shop.ask(new SupportLeanCheck()).get(0).verdict());
    }
}
