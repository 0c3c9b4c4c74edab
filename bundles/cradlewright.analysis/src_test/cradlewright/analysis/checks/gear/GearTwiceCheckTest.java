package cradlewright.analysis.checks.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The car of the shop stands there on the day of the answers and nobody wrote down until when; another car has days of its own. */
class GearTwiceCheckTest {

    private static final LocalDate TODAY = VisitShop.TODAY;

    private static GearFacts.Stand stand(String id) {
        return new GearFacts.Stand(id, id, SupportShop.examined(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                OptionalInt.empty());
    }

    private static VisitShop shop() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).with(stand("A1")).with(stand("A2"));
        shop.touch("left").at(0, -0.5, 0).on("A1");
        return shop;
    }

    private static CarFacts other(String stand, LocalDate from, LocalDate to, Optional<Boolean> current) {
        ContactFacts contact = new ContactFacts("there", "there", Optional.empty(), Optional.empty(), Optional.of(Vec3.ZERO),
                Optional.of(stand), Optional.empty(), Vec3.UP, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty());
        SetupFacts setup = new SetupFacts("other-setup", "setup", List.of(), CarrierKind.STANDS, Optional.empty(), Optional.empty(),
                Optional.empty(), Vec3.ZERO, 0, List.of(contact), Optional.empty(), SetupFacts.Weather.UNKNOWN);
        VisitFacts visit = new VisitFacts("other-visit", "axles", Optional.empty(), Optional.of("other-setup"), Optional.ofNullable(from),
                Optional.ofNullable(to), current);
        return new CarFacts("other-car", "other car", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(setup), List.of(visit), List.of());
    }

    private static Finding ask(CarFacts other) {
        List<Finding> findings = shop().with(other).ask(new GearTwiceCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    private static Finding ask(LocalDate from, LocalDate to) {
        return ask(other("A1", from, to, Optional.empty()));
    }

    @Test
    void holdsWhenNobodyElseHasIt() {
        assertEquals(Verdict.HOLDS, ask(other("A2", TODAY.minusDays(3), TODAY.plusDays(3), Optional.empty())).verdict());
        // What the other car was done with yesterday is free.
        assertEquals(Verdict.HOLDS, ask(TODAY.minusDays(9), TODAY.minusDays(1)).verdict());
    }

    @Test
    void stopsWhenBothHaveItToday() {
        Finding finding = ask(TODAY.minusDays(3), TODAY.plusDays(3));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("A1", finding.objectId());
        assertTrue(finding.words().contains("Car, visit") && finding.words().contains("other car, axles (2025-03-11 to 2025-03-17)"),
                finding.words());
        // Begun, and nobody wrote down its end: it stands there still.
        assertEquals(Verdict.STOP, ask(TODAY.minusDays(3), null).verdict());
        // Somebody said that it is still there.
        assertEquals(Verdict.STOP, ask(other("A1", TODAY.minusDays(9), TODAY.minusDays(1), Optional.of(true))).verdict());
    }

    @Test
    void cantSayWhenNobodyWroteDownTheEnd() {
        Finding finding = ask(TODAY.plusDays(5), TODAY.plusDays(9));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(List.of("last day of Car, visit (days that nobody wrote down)"), finding.missing());
    }

    private static GearUse use(String id, LocalDate from, LocalDate to, Boolean current) {
        CarFacts car = other("A1", from, to, Optional.ofNullable(current));
        return new GearUse(id, id, car.visits().get(0), List.of(), Optional.empty(), TODAY);
    }

    private static GearUse.Meeting meeting(GearUse one, GearUse other) {
        assertEquals(one.meeting(other), other.meeting(one));
        return one.meeting(other);
    }

    @Test
    void standsTightOnTheDayOfHandingOver() {
        GearUse before = use("a", TODAY.minusDays(3), TODAY, null);
        assertEquals(GearUse.Meeting.HANDED_OVER, meeting(before, use("b", TODAY, TODAY.plusDays(3), null)));
        assertEquals(GearUse.Meeting.NEVER, meeting(before, use("b", TODAY.plusDays(1), null, null)));
        assertEquals(GearUse.Meeting.MEET, meeting(before, use("b", TODAY.minusDays(1), TODAY.plusDays(3), null)));
        // Two cars that both stand there now have not handed over.
        assertEquals(GearUse.Meeting.MEET, meeting(use("a", TODAY.minusDays(3), TODAY, true), use("b", TODAY, null, true)));
    }

    @Test
    void plansMeetToo() {
        GearUse plan = use("a", TODAY.plusDays(10), TODAY.plusDays(20), null);
        assertEquals(GearUse.Meeting.MEET, meeting(plan, use("b", TODAY.plusDays(15), null, null)));
        assertEquals(GearUse.Meeting.PERHAPS, meeting(plan, use("b", TODAY.plusDays(5), null, null)));
        assertEquals(GearUse.Meeting.NEVER, meeting(plan, use("b", TODAY.plusDays(21), null, null)));
    }

    @Test
    void oneStandUnderTwoPlacesStops() {
        VisitShop shop = shop();
        shop.touch("right").at(0, 0.5, 0).on("A1");
        List<Finding> findings = shop.ask(new GearTwiceCheck());
        assertEquals(List.of(Verdict.HOLDS, Verdict.STOP), findings.stream().map(Finding::verdict).toList());
        assertEquals("It cannot be in more than one place: left, right.", findings.get(1).words());
    }

    @Test
    void asksNothingOfWhatNobodyNamed() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.touch("left").at(0, -0.5, 0);
        assertEquals(List.of(), shop.ask(new GearTwiceCheck()));
    }
}
