package cradlewright.analysis.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SignOffFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where it stands, on what, and what it waits for, in the words of the shop. */
class CarLineKeyTest {

    private static final Examination NO_TAG = new Examination(Optional.empty(), Optional.empty(), Optional.empty());

    private final WorkShop shop = new WorkShop();

    private CarLine line() {
        return shop.read(new CarLineKey("car")).orElseThrow();
    }

    private static GearFacts trestle(String id) {
        return new GearFacts.Trestle(id, id, NO_TAG, Optional.empty());
    }

    @Test
    void tellsThePlaceAndWhatCarriesIt() {
        assertEquals("nobody wrote down where (on stands that nobody named)", line().standing());
        shop.shop.with(trestle("trestle"));
        shop.shop.with(new PlaceFacts("place", "Middle", PlaceFacts.Kind.BAY, Optional.empty(), false, Optional.empty(), Optional.empty(),
                Optional.empty()));
        shop.shop.with(new PlacementFacts("p", "p", Optional.of("visit"), Optional.of("place")));
        assertEquals("Middle (on one trestle)", line().standing());
        shop.shop.with(trestle("second"));
        shop.shop.touches.get(1).on("second");
        assertEquals("Middle (on two trestles)", line().standing());
    }

    @Test
    void tellsEveryWayOfStanding() {
        List<String> words = List.of("on a dolly that nobody named", "on stands that nobody named", "in straps",
                "on a lift that nobody named", "on its chassis", "on the floor", "away from the shop");
        for (CarrierKind kind : CarrierKind.values()) {
            shop.shop.kind = kind;
            assertEquals(words.get(kind.ordinal()), line().stands().get(0).on());
        }
        shop.shop.kind = CarrierKind.DOLLY;
        shop.shop.dolly = Optional.of("d");
        shop.shop.with(new DollyFacts("d", "dolly 3", DollyFacts.Build.BOUGHT, Optional.empty(), Optional.empty(), Optional.empty(), NO_TAG,
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty()));
        assertEquals("on dolly 3", line().stands().get(0).on());
        shop.shop.kind = CarrierKind.STRAPS;
        shop.shop.lift = Optional.of("l");
        shop.shop.with(new GearFacts.Lift("l", "lift 1", NO_TAG, Optional.empty(), Optional.empty(), Optional.empty(), List.of()));
        assertEquals("in straps from lift 1", line().stands().get(0).on());
    }

    @Test
    void tellsTheNextStepUntilAllIsDone() {
        assertEquals("no job is written down", line().waiting());
        shop.operation("strip", null, Progress.DONE);
        assertEquals("all jobs are done", line().waiting());
        shop.operation("brace", null, Progress.OPEN, "strip").operation("cut", null, Progress.OPEN, "brace");
        assertEquals("next: brace", line().waiting());
        shop.operation("paint the wheels", null, Progress.RUNNING);
        assertEquals("at work: paint the wheels", line().waiting());
    }

    @Test
    void tellsASignatureThatIsMissingOrLapsed() {
        shop.operation("cut", null, Progress.OPEN);
        SignOffFacts signed = shop.signed("Hanna", WorkShop.NOON);
        shop.hold("before the cut", "cut");
        assertEquals("waits for a signature: before the cut", line().waiting());
        shop.hold("before the cut", "cut", signed);
        assertEquals("next: cut", line().waiting());
        shop.shop.part("box", 10, 0, 0, 0);
        assertEquals("waits for a signature: before the cut", line().waiting());
    }

    @Test
    void tellsWorkThatNobodySigned() {
        shop.operation("cut", null, Progress.RUNNING).hold("before the cut", "cut");
        assertEquals("at work: cut, not signed: before the cut", line().waiting());
    }

    @Test
    void tellsWaitsBeforeAnythingElse() {
        shop.operation("blast", null, Progress.OPEN).hold("before the blast", "blast");
        shop.waiting("blaster", "blast", LocalDate.of(2025, 4, 1), null).waiting("painter", "blast", null, null);
        assertEquals("waits: away at the blaster, until 2025-04-01; waits: away at the painter, nobody said until when", line().waiting());
    }

    @Test
    void tellsWhatIsLate() {
        shop.operation("blast", null, Progress.OPEN).waiting("blaster", "blast", VisitShop.TODAY.minusDays(1), null);
        assertEquals("waits: away at the blaster, late: was to end on 2025-03-13", line().waiting());
        shop.waiting("blaster", "blast", VisitShop.TODAY, null);
        assertEquals("waits: away at the blaster, until 2025-03-14", line().waiting());
    }

    @Test
    void tellsAnOrderInWhichNothingCanBegin() {
        shop.operation("cut", null, Progress.OPEN, "of another car");
        assertEquals("nothing can begin: look at the order of its jobs", line().waiting());
    }

    @Test
    void isNothingForNoCar() {
        assertEquals(Optional.empty(), new VisitShop(CarrierKind.FLOOR).read(new CarLineKey("nobody's")));
    }
}
