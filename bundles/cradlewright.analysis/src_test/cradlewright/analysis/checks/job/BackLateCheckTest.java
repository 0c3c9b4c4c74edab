package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is not back on its day is tight until somebody writes down that it came. */
class BackLateCheckTest {

    private static final LocalDate TODAY = VisitShop.TODAY;

    private static List<Verdict> ask(LocalDate until, LocalDate ended, Progress progress) {
        return new WorkShop().operation("blast", null, progress).waiting("blaster", "blast", until, ended).verdicts(new BackLateCheck());
    }

    @Test
    void holdsUpToTheDay() {
        assertEquals(List.of(Verdict.HOLDS), ask(TODAY, null, Progress.OPEN));
    }

    @Test
    void isTightTheDayAfter() {
        assertEquals(List.of(Verdict.TIGHT), ask(TODAY.minusDays(1), null, Progress.RUNNING));
        assertEquals(List.of(Verdict.TIGHT), ask(TODAY.minusDays(1), TODAY.plusDays(1), Progress.OPEN));
    }

    @Test
    void cannotSayWithoutADay() {
        assertEquals(List.of(Verdict.CANT_SAY), ask(null, null, Progress.OPEN));
    }

    @Test
    void isSilentWhenItEndedOrTheWorkIsDone() {
        assertEquals(List.of(), ask(TODAY.minusDays(9), TODAY, Progress.OPEN));
        assertEquals(List.of(), ask(TODAY.minusDays(9), null, Progress.DONE));
    }
}
