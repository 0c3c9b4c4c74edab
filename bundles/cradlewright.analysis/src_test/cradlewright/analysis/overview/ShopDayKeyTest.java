package cradlewright.analysis.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who takes up which dolly, gear and place. */
class ShopDayKeyTest {

    private static final LocalDate DUE = LocalDate.of(2025, 6, 1);
    private static final Examination TAG = new Examination(Optional.of("7"), Optional.empty(), Optional.of(DUE));

    private final VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("tub", 200, 1, 0, 0.5);

    private static DollyFacts dolly(String id) {
        return new DollyFacts(id, id, DollyFacts.Build.BOUGHT, Optional.empty(), Optional.empty(), Optional.empty(), TAG, List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty());
    }

    private static GearFacts.ArmFacts arm(String id) {
        return new GearFacts.ArmFacts(id, id, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
    }

    private void place(String id) {
        shop.with(new PlaceFacts(id, id, PlaceFacts.Kind.BAY, Optional.empty(), false, Optional.empty(), Optional.empty(),
                Optional.empty()));
    }

    private ShopDay day() {
        return shop.read(new ShopDayKey());
    }

    @Test
    void aDollyIsTakenByTheCarThatStandsOnIt() {
        shop.with(dolly("one")).with(dolly("two"));
        shop.dolly = Optional.of("two");
        assertEquals(List.of(new CarrierLine("one", "one", true, List.of(), Optional.of(DUE)),
                new CarrierLine("two", "two", true, List.of("Car"), Optional.of(DUE))), day().carriers());
    }

    @Test
    void aLiftIsTakenThroughItsArms() {
        shop.kind = CarrierKind.STANDS;
        shop.with(new GearFacts.Lift("lift", "lift", TAG, Optional.empty(), Optional.empty(), Optional.empty(), List.of(arm("arm"))));
        assertEquals(List.of(), day().carriers().get(0).cars());
        shop.touch("1L").on("arm");
        shop.touch("1R").on("arm");
        assertEquals(List.of("Car"), day().carriers().get(0).cars());
    }

    @Test
    void aPlaceIsTakenByTheVisitThatIsOn() {
        place("bay 1");
        place("bay 2");
        shop.with(new PlacementFacts("p", "p", Optional.of("visit"), Optional.of("bay 2")));
        shop.with(new PlacementFacts("q", "q", Optional.of("planned"), Optional.of("bay 1")));
        assertEquals(List.of(new PlaceLine("bay 1", "bay 1", List.of()), new PlaceLine("bay 2", "bay 2", List.of("Car"))), day().places());
    }

    @Test
    void everyCarHasItsLine() {
        assertEquals(List.of("Car"), day().cars().stream().map(CarLine::name).toList());
        assertEquals(VisitShop.TODAY, day().day());
        assertEquals(0, day().dates().size());
    }
}
