package cradlewright.analysis.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A hold point is about the visit in which the work behind it is done, whatever stands there on the day of the answers. */
class VisitToSignKeyTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);

    private final List<VisitFacts> visits = new ArrayList<>();
    private final List<OperationFacts> operations = new ArrayList<>();
    private final List<Fact> others = new ArrayList<>();

    private void visit(String id, String setup, int from, int to) {
        visits.add(new VisitFacts(id, id, Optional.of("stage"), Optional.of(setup), day(from), day(to), Optional.empty()));
    }

    private static Optional<LocalDate> day(int dayOfMarch) {
        return dayOfMarch == 0 ? Optional.empty() : Optional.of(LocalDate.of(2026, 3, dayOfMarch));
    }

    private void operation(String id, String setup, boolean done, String... after) {
        operations.add(new OperationFacts(id, id, Optional.empty(), List.of(), List.of(), Optional.ofNullable(setup), Optional.empty(),
                done, List.of(after)));
    }

    private void booked(String operation, int dayOfMarch) {
        others.add(new BookingFacts("booking" + dayOfMarch, "booking", Optional.of(operation), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.of(LocalDate.of(2026, 3, dayOfMarch).atTime(8, 0)), Optional.empty()));
    }

    private List<String> asked() {
        others.add(new HoldPointFacts("point", "point", Optional.of("cut"), Optional.empty(), List.of()));
        others.add(new JobFacts("job", "job", Optional.of("car"), Optional.empty(), operations));
        others.add(new CarFacts("car", "Car", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), visits, List.of()));
        Map<String, Fact> facts = new LinkedHashMap<>();
        others.forEach(fact -> facts.put(fact.id(), fact));
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), TODAY, facts));
        return engine.read(new VisitToSignKey("car", "point"), Progress.NONE).stream().map(VisitFacts::id).toList();
    }

    @Test
    void isTheVisitInTheSetupOfTheWorkNotTheOneOfToday() {
        visit("now", "stands", 1, 0);
        visit("later", "dolly", 20, 0);
        visit("long ago", "dolly", 1, 5);
        operation("cut", "dolly", false);
        assertEquals(List.of("later"), asked());
    }

    @Test
    void isNoneWhenNoVisitIsPlannedInTheSetupOfTheWork() {
        visit("now", "stands", 1, 0);
        operation("cut", "dolly", false);
        assertEquals(List.of(), asked());
    }

    @Test
    void isTheVisitOfWhatComesBeforeWhenTheWorkNamesNoSetup() {
        visit("now", "stands", 1, 0);
        visit("later", "dolly", 20, 0);
        operation("look", "stands", true);
        operation("lift", "dolly", false, "look");
        operation("brace", null, false, "lift");
        operation("cut", null, false, "brace");
        assertEquals(List.of("later"), asked());
    }

    @Test
    void isTheOneOfTheBookedDayAmongSeveral() {
        visit("engine in", "lift", 12, 0);
        visit("engine out", "lift", 20, 0);
        operation("cut", "lift", false);
        assertEquals(List.of("engine in", "engine out"), asked());
        booked("cut", 25);
        booked("cut", 14);
        booked("cut", 2);
        assertEquals(List.of("engine in"), asked());
    }

    @Test
    void isTheOneOfTheBookedDayWhenNoSetupIsNamed() {
        visit("now", "stands", 1, 0);
        visit("later", "dolly", 12, 16);
        visit("after that", "lift", 20, 0);
        operation("cut", null, false);
        booked("cut", 14);
        assertEquals(List.of("later"), asked());
    }

    @Test
    void isTheOneOfTodayWhenNothingElseIsSaid() {
        visit("now", "stands", 1, 0);
        visit("later", "dolly", 12, 0);
        operation("lift", "lift", true);
        operation("cut", null, false, "lift");
        assertEquals(List.of("now"), asked());
    }

    @Test
    void comesToAnEndWhenOperationsWaitForEachOther() {
        visit("now", "stands", 1, 0);
        operation("cut", null, false, "weld");
        operation("weld", null, false, "cut");
        assertEquals(List.of("now"), asked());
    }
}
