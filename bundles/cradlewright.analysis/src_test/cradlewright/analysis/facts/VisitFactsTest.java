package cradlewright.analysis.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitFactsTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 4, 30);

    private static VisitFacts visit(LocalDate from, LocalDate to) {
        return new VisitFacts("v", "v", Optional.empty(), Optional.empty(), Optional.ofNullable(from), Optional.ofNullable(to),
                Optional.empty());
    }

    @Test
    void itsDaysReadAsPeopleSayThem() {
        assertEquals("2026-03-01 to 2026-04-30", visit(FIRST, LAST).days());
        assertEquals("from 2026-03-01 on", visit(FIRST, null).days());
        assertEquals("up to 2026-04-30", visit(null, LAST).days());
        assertEquals("days that nobody wrote down", visit(null, null).days());
    }

    @Test
    void theFirstAndTheLastDayBelongToIt() {
        VisitFacts visit = visit(FIRST, LAST);
        assertEquals(false, visit.on(FIRST.minusDays(1)));
        assertEquals(true, visit.on(FIRST));
        assertEquals(true, visit.on(LAST));
        assertEquals(false, visit.on(LAST.plusDays(1)));
        assertEquals(true, visit.over(LAST.plusDays(1)));
        assertEquals(false, visit.over(LAST));
        assertEquals(true, visit(null, null).on(FIRST));
    }
}
