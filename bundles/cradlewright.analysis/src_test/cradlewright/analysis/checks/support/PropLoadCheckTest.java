package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A prop right under where somebody of 120 kg (common practice, no source) stands, 2.9 m behind the front line of supports: the supports
 * give 1e-4 m/N, a thousand times as much as the prop, so nearly all of 1176.798 N comes on it (limit of springs in parallel).
 */
class PropLoadCheckTest {

    private static VisitShop shop(Optional<Value> capacity, Optional<Basis> basis, boolean fitted) {
        SteelDolly dolly = new SteelDolly("dolly");
        dolly.mass = Optional.of(VisitShop.measured(100));
        dolly.balance = Optional.of(new Vec3(0.9, 0, 0.2));
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("body", 350, 0.9, 0, 1);
        shop.dolly = Optional.of("dolly");
        double[][] at = {{0, -0.5}, {0, 0.5}, {1.8, 0.5}, {1.8, -0.5}};
        for (int i = 0; i < 4; i++) {
            dolly.node("corner " + i, i < 2 ? -1 : 4, i % 2 == 0 ? -0.5 : 0.5, 0.2).castor("castor " + i, "corner " + i, Optional.empty());
            dolly.node("n" + i, at[i][0], at[i][1], 0.2).fixture("f" + i, "n" + i, Optional.empty());
            shop.touch("s" + i).at(at[i][0], at[i][1], 0.5).on("f" + i).stiff(1e4);
        }
        dolly.props.add(new PropFacts("prop", "tail prop", Optional.of(new Vec3(2.9, 0, 0.5)), fitted, capacity, basis, Optional.of("n2")));
        shop.workPoints.add(new WorkPointFacts("tail", "tail", Optional.of(new Spot(new Vec3(2.9, 0, 0.5), 0)), Optional.empty(),
                Optional.of(WorkPointFacts.Kind.STAND_ON)));
        shop.touches.forEach(touch -> touch.low(0));
        return shop.with(dolly.facts());
    }

    private static Finding only(double capacity, Basis basis) {
        List<Finding> findings = shop(Optional.of(VisitShop.measured(capacity)), Optional.of(basis), true).ask(new PropLoadCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void byItsRating() {
        Finding finding = only(1400, Basis.RATED_LOAD);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(1176.798, finding.demand().orElseThrow().si(), 5);
        assertEquals("one person with tools standing at tail", finding.situation());
        assertEquals(Verdict.TIGHT, only(1200, Basis.RATED_LOAD).verdict());
        assertEquals(Verdict.STOP, only(1100, Basis.RATED_LOAD).verdict());
        // 1.5 x 1176.798 N = 1765.197 N against a design resistance (EN 1990 Table A1.2(B), from memory).
        assertEquals(1765.197, only(1400, Basis.DESIGN_RESISTANCE).demand().orElseThrow().si(), 8);
        assertEquals(Verdict.STOP, only(1400, Basis.DESIGN_RESISTANCE).verdict());
    }

    @Test
    void cantSayWithoutRatingOrPlace() {
        assertEquals(Verdict.CANT_SAY, shop(Optional.empty(), Optional.of(Basis.RATED_LOAD), true).ask(new PropLoadCheck()).get(0)
                .verdict());
        assertEquals(Verdict.CANT_SAY, shop(Optional.of(VisitShop.measured(9)), Optional.empty(), true).ask(new PropLoadCheck()).get(0)
                .verdict());
    }

    @Test
    void asksNothingWhenItIsNotInPlace() {
        assertEquals(List.of(), shop(Optional.empty(), Optional.empty(), false).ask(new PropLoadCheck()));
    }
}
