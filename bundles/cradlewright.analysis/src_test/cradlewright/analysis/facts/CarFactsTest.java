package cradlewright.analysis.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.mechanics.geometry.Vec3;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which visits stand there on a day, when nobody wrote down their last days. */
class CarFactsTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
    private static final LocalDate NEXT = LocalDate.of(2026, 4, 1);

    private static SetupFacts setup(String id, String... pieces) {
        return new SetupFacts(id, id, List.of(pieces), CarrierKind.STANDS, Optional.empty(), Optional.empty(), Optional.empty(),
                Vec3.ZERO, 0, List.of(), Optional.empty(), SetupFacts.Weather.UNKNOWN);
    }

    private static VisitFacts visit(String id, String setup, LocalDate from, LocalDate to, Boolean current) {
        return new VisitFacts(id, id, Optional.empty(), Optional.of(setup), Optional.ofNullable(from), Optional.ofNullable(to),
                Optional.ofNullable(current));
    }

    private static CarFacts car(VisitFacts... visits) {
        return new CarFacts("car", "car", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(setup("both", "shell", "chassis"), setup("shell", "shell"), setup("chassis", "chassis"), setup("nothing")),
                List.of(visits), List.of());
    }

    private static List<String> on(CarFacts car, LocalDate day) {
        return car.visitsOn(day).stream().map(VisitFacts::id).toList();
    }

    @Test
    void aVisitWithoutALastDayEndsWhenTheNextOneBegins() {
        CarFacts car = car(visit("old", "both", FIRST, null, null), visit("new", "both", NEXT, null, null));
        assertEquals(List.of("old"), on(car, NEXT.minusDays(1)));
        assertEquals(List.of("new"), on(car, NEXT));
        assertEquals(true, car.over(car.visits().get(0), NEXT));
        assertEquals(false, car.over(car.visits().get(0), NEXT.minusDays(1)));
        assertEquals(false, car.over(car.visits().get(1), NEXT.plusYears(1)));
    }

    @Test
    void itStaysAsLongAsAPieceOfItStaysBehind() {
        VisitFacts both = visit("both", "both", FIRST, null, null);
        VisitFacts shell = visit("shell", "shell", NEXT, null, null);
        assertEquals(List.of("both", "shell"), on(car(both, shell), NEXT));
        assertEquals(List.of("shell", "chassis"), on(car(both, shell, visit("chassis", "chassis", NEXT.plusDays(3), null, null)),
                NEXT.plusDays(3)));
    }

    @Test
    void itDoesNotComeBackWhenTheNextOneEnds() {
        CarFacts car = car(visit("old", "shell", FIRST, null, null), visit("new", "shell", NEXT, NEXT.plusDays(2), null));
        assertEquals(List.of(), on(car, NEXT.plusDays(3)));
    }

    @Test
    void whatSomebodySaidOrWroteGoesFirst() {
        VisitFacts next = visit("new", "both", NEXT, null, null);
        assertEquals(List.of("old", "new"), on(car(visit("old", "both", FIRST, null, true), next), NEXT));
        assertEquals(List.of("old", "new"), on(car(visit("old", "both", FIRST, NEXT, null), next), NEXT));
        assertEquals(List.of("old"), on(car(visit("old", "both", FIRST, null, null), visit("new", "both", NEXT, null, false)), NEXT));
        assertEquals(List.of("old", "new"), on(car(visit("old", "nothing", FIRST, null, null), next), NEXT), "no pieces are named");
        assertEquals(List.of("old", "new"), on(car(visit("old", "both", NEXT, null, null), next), NEXT), "both begin on one day");
    }
}
