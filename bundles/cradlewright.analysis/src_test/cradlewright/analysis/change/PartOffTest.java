package cradlewright.analysis.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PartOffTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 31);

    private static VisitFacts visit(String id, LocalDate from, LocalDate to) {
        return new VisitFacts(id, id, Optional.of("stage"), Optional.empty(), Optional.ofNullable(from), Optional.ofNullable(to),
                Optional.empty());
    }

    private static ShopSnapshot shop() {
        StageFacts stage = new StageFacts("stage", "as it is", List.of("shell", "door", "bonnet"), List.of("box"));
        CarFacts car = new CarFacts("car", "Car", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(stage), List.of(), List.of(visit("now", DAY.minusDays(3), DAY), visit("later", DAY.plusDays(1), null),
                        visit("always", null, null), visit("over", null, DAY.minusDays(1))), List.of());
        return new ShopSnapshot(7, "Shop", SettingsFacts.commonPractice(), DAY, Map.of("car", car));
    }

    private static StageFacts stage(ShopSnapshot shop, String visitId) {
        CarFacts car = shop.find(CarFacts.class, "car").orElseThrow();
        return CarFacts.find(car.visits(), visitId).flatMap(VisitFacts::stageId).flatMap(car::stage).orElseThrow();
    }

    @Test
    void onlyTheVisitNamedLosesThePartAndTheShopItselfStaysAsItIs() {
        ShopSnapshot shop = shop();
        ShopSnapshot then = PartOff.at(shop, "car", "now", Set.of("door"));
        assertEquals(List.of("shell", "bonnet"), stage(then, "now").partIds());
        assertEquals(List.of("box"), stage(then, "now").loadIds());
        assertEquals(List.of("shell", "door", "bonnet"), stage(then, "later").partIds());
        assertEquals(8, then.number());
        assertEquals(shop(), shop);
    }

    @Test
    void twoVisitsOfOneStageLoseDifferentParts() {
        ShopSnapshot then = PartOff.at(PartOff.at(shop(), "car", "now", Set.of("door")), "car", "always", Set.of("bonnet"));
        assertEquals(List.of("shell", "bonnet"), stage(then, "now").partIds());
        assertEquals(List.of("shell", "door"), stage(then, "always").partIds());
    }

    @Test
    void whatIsNotThereCannotComeOff() {
        ShopSnapshot shop = shop();
        assertThrows(IllegalArgumentException.class, () -> PartOff.at(shop, "cart", "now", Set.of("door")));
        assertThrows(IllegalArgumentException.class, () -> PartOff.at(shop, "car", "never", Set.of("door")));
        assertThrows(IllegalArgumentException.class, () -> PartOff.at(shop, "car", "now", Set.of("door", "engine")));
        assertThrows(IllegalArgumentException.class, () -> PartOff.at(shop, "car", "now", Set.of()));
    }

    @Test
    void aVisitIsOnFromItsFirstDayToItsLast() {
        CarFacts car = shop().find(CarFacts.class, "car").orElseThrow();
        assertEquals(List.of("now", "always"), current(car, DAY));
        assertEquals(List.of("now", "always", "over"), current(car, DAY.minusDays(3)));
        assertEquals(List.of("later", "always"), current(car, DAY.plusDays(1)));
    }

    @Test
    void whatIsSaidToStandThereNowHoldsFromItsFirstDayToTheClock() {
        LocalDate clock = DAY;
        VisitFacts said = new VisitFacts("said", "said", Optional.empty(), Optional.empty(), Optional.of(DAY.minusDays(9)),
                Optional.of(DAY.minusDays(5)), Optional.of(true));
        assertTrue(said.asked(DAY, clock).on(DAY), "past its last day, but somebody said that it stands so");
        assertTrue(said.asked(DAY.minusDays(2), clock).on(DAY.minusDays(2)));
        assertFalse(said.asked(DAY.plusDays(1), clock).on(DAY.plusDays(1)), "of tomorrow nobody said anything");
        assertFalse(said.asked(DAY.minusDays(10), clock).on(DAY.minusDays(10)), "it had not begun");
        assertTrue(said.asked(DAY.minusDays(7), clock).on(DAY.minusDays(7)));
        VisitFacts ended = new VisitFacts("ended", "ended", Optional.empty(), Optional.empty(), Optional.of(DAY.minusDays(9)),
                Optional.of(DAY.plusDays(5)), Optional.of(false));
        assertFalse(ended.asked(DAY, clock).on(DAY), "within its days, but somebody said that it does not stand so");
        assertTrue(ended.asked(DAY.plusDays(1), clock).on(DAY.plusDays(1)));
    }

    private static List<String> current(CarFacts car, LocalDate day) {
        return PartOffQuestion.current(car, day).stream().map(VisitFacts::id).toList();
    }

    @Test
    void whatSomebodySaidGoesBeforeTheDays() {
        VisitFacts over = new VisitFacts("v", "v", Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(DAY.minusDays(1)),
                Optional.of(true));
        VisitFacts here = new VisitFacts("v", "v", Optional.empty(), Optional.empty(), Optional.of(DAY), Optional.empty(),
                Optional.of(false));
        assertTrue(over.on(DAY));
        assertFalse(here.on(DAY));
    }
}
