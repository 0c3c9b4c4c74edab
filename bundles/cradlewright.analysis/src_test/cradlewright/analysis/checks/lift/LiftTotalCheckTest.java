package cradlewright.analysis.checks.lift;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 900 kg with a standard uncertainty of 10 kg is 920 kg at its upper end, twice the standard uncertainty (JCGM 100, 6.2.1; from
 * memory). Nine tenths of 1000 kg is 900 kg, of 1100 kg 990 kg.
 */
class LiftTotalCheckTest {

    private static final Examination NONE = new Examination(Optional.empty(), Optional.empty(), Optional.empty());

    private static VisitShop shop(CarrierKind kind, Optional<Double> rated) {
        VisitShop shop = new VisitShop(kind).part("body", new Value(900, 10, Source.WEIGHED), Vec3.ZERO, 0)
                .with(new GearFacts.Lift("lift", "lift", NONE, rated.map(VisitShop::measured), Optional.empty(), Optional.empty(),
                List.of()));
        shop.lift = Optional.of("lift");
        return shop;
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new LiftTotalCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(shop(CarrierKind.LIFT, Optional.of(1100.0)));
        assertEquals(920, holds.demand().orElseThrow().si(), 1e-9);
        assertEquals(1100, holds.capacity().orElseThrow().si());
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, only(shop(CarrierKind.STRAPS, Optional.of(1000.0))).verdict());
        assertEquals(Verdict.STOP, only(shop(CarrierKind.LIFT, Optional.of(919.0))).verdict());
    }

    @Test
    void aBorrowedRatingCountsAtItsLowEnd() {
        // 15 % of 1400 kg, common practice, twice (k = 2): 1400 kg - 2 x 210 kg = 980 kg, of which 920 kg are 0.939.
        VisitShop shop = shop(CarrierKind.LIFT, Optional.of(1400.0)).with(new GearFacts.Lift("lift", "lift", NONE,
                Optional.of(new Value(1400, 210, Source.LIKE_ANOTHER_CAR)), Optional.empty(), Optional.empty(), List.of()));
        Finding finding = only(shop);
        assertEquals(980, finding.capacity().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertEquals("rated load of lift, like another car, less its give or take", finding.ratedBy());
    }

    @Test
    void cantSayWithoutPlate() {
        assertEquals(Verdict.CANT_SAY, only(shop(CarrierKind.LIFT, Optional.empty())).verdict());
    }

    @Test
    void aPartWithoutMassLeavesOnlyTheStop() {
        VisitShop shop = shop(CarrierKind.LIFT, Optional.of(1100.0));
        shop.partsOn.add("engine");
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
        VisitShop over = shop(CarrierKind.LIFT, Optional.of(800.0));
        over.partsOn.add("engine");
        assertEquals(Verdict.STOP, only(over).verdict());
    }

    @Test
    void liftAndHoistAreEachAsked() {
        VisitShop shop = shop(CarrierKind.STRAPS, Optional.of(1100.0))
                .with(new GearFacts.Hoist("hoist", "hoist", NONE, Optional.of(VisitShop.measured(500)), List.of()));
        shop.hoist = Optional.of("hoist");
        assertEquals(List.of(Verdict.HOLDS, Verdict.STOP), shop.ask(new LiftTotalCheck()).stream().map(Finding::verdict).toList());
    }

    /** A boom rated for 1000 kg by its plate, with two holes; 920 kg hang from the holes that are named. */
    private static VisitShop boom(double near, Optional<Double> far, String... holes) {
        VisitShop shop = shop(CarrierKind.STRAPS, Optional.of(1100.0)).with(new GearFacts.Hoist("hoist", "hoist", NONE,
                Optional.of(VisitShop.measured(1000)), List.of(hole("near", Optional.of(near)), hole("far", far))));
        shop.lift = Optional.empty();
        shop.hoist = Optional.of("hoist");
        for (String hole : holes) {
            VisitShop.Touch touch = shop.touch("strap " + shop.touches.size()).at(0, 0, 1);
            if (!hole.isEmpty()) {
                touch.hole(hole);
            }
        }
        return shop;
    }

    private static GearFacts.HoleFacts hole(String name, Optional<Double> rated) {
        return new GearFacts.HoleFacts(name, name, Optional.empty(), rated.map(VisitShop::measured));
    }

    @Test
    void aBoomIsRatedForTheHoleInUse() {
        Finding near = only(boom(1100, Optional.of(900.0), "near", "near"));
        assertEquals(1000, near.capacity().orElseThrow().si(), "never beyond the plate");
        assertEquals(Verdict.TIGHT, near.verdict());
        Finding far = only(boom(1100, Optional.of(900.0), "far"));
        assertEquals(900, far.capacity().orElseThrow().si());
        assertEquals(Verdict.STOP, far.verdict());
        assertEquals(Verdict.STOP, only(boom(1100, Optional.of(900.0), "near", "far")).verdict(), "the weaker of two");
    }

    @Test
    void cantSayInWhichHoleTheHookIs() {
        Finding unnamed = only(boom(1100, Optional.of(950.0), "near", ""));
        assertEquals(Verdict.CANT_SAY, unnamed.verdict());
        assertEquals(List.of("which hole of hoist the hook is in: name it at each support of setup"), unnamed.missing());
        assertEquals(Verdict.CANT_SAY, only(boom(1100, Optional.of(950.0))).verdict());
        assertEquals(Verdict.CANT_SAY, only(boom(1100, Optional.of(950.0), "of another hoist")).verdict());
        assertEquals(List.of("rated load of hoist at far: read it off the boom"), only(boom(1100, Optional.empty(), "far")).missing());
        assertEquals(Verdict.STOP, only(boom(910, Optional.of(900.0), "")).verdict(), "too much for its best hole");
    }

    @Test
    void asksNothingOfWhatStands() {
        assertEquals(List.of(), shop(CarrierKind.STANDS, Optional.of(100.0)).ask(new LiftTotalCheck()));
    }
}
