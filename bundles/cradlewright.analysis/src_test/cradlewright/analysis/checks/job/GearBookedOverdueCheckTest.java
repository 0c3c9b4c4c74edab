package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Gear that falls out of date while it is booked stops; the day on which it is due is still in date. */
class GearBookedOverdueCheckTest {

    private static final LocalDateTime FROM = VisitShop.TODAY.atTime(8, 0);
    private static final LocalDate END = VisitShop.TODAY.plusDays(2);

    private static List<Verdict> ask(LocalDate due, String gear, LocalDateTime to) {
        WorkShop shop = new WorkShop().operation("lift", null, Progress.OPEN).booking("booking", "lift", "p", gear, FROM, to);
        Examination examination = new Examination(Optional.empty(), Optional.empty(), Optional.ofNullable(due));
        shop.shop.with(new GearFacts.Trestle("trestle", "trestle", examination, Optional.empty()));
        shop.shop.with(new DollyFacts("dolly", "dolly", DollyFacts.Build.BOUGHT, Optional.empty(), Optional.empty(), Optional.empty(),
                examination, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty()));
        return shop.verdicts(new GearBookedOverdueCheck());
    }

    @Test
    void holdsAWeekAfterTheEnd() {
        assertEquals(List.of(Verdict.HOLDS), ask(END.plusDays(7), "trestle", END.atTime(17, 0)));
        assertEquals(List.of(Verdict.HOLDS), ask(END.plusDays(7), "dolly", END.atTime(17, 0)));
    }

    @Test
    void isTightUpToTheLastDay() {
        assertEquals(List.of(Verdict.TIGHT), ask(END.plusDays(6), "trestle", END.atTime(17, 0)));
        assertEquals(List.of(Verdict.TIGHT), ask(END, "trestle", END.atTime(17, 0)));
    }

    @Test
    void stopsWhenDueBeforeTheEnd() {
        assertEquals(List.of(Verdict.STOP), ask(END.minusDays(1), "trestle", END.atTime(17, 0)));
        assertEquals(List.of(Verdict.STOP), ask(VisitShop.TODAY.minusDays(1), "dolly", END.atTime(17, 0)));
    }

    @Test
    void cannotSayWithoutDueDateEndOrGear() {
        assertEquals(List.of(Verdict.CANT_SAY), ask(null, "trestle", END.atTime(17, 0)));
        assertEquals(List.of(Verdict.CANT_SAY), ask(END, "trestle", null));
        assertEquals(List.of(Verdict.CANT_SAY), ask(END, "not there", END.atTime(17, 0)));
    }

    @Test
    void isSilentWithoutGearAndAboutBookingsThatAreOver() {
        assertEquals(List.of(), ask(END, null, END.atTime(17, 0)));
        assertEquals(List.of(), ask(VisitShop.TODAY.minusDays(9), "trestle", VisitShop.TODAY.minusDays(1).atTime(17, 0)));
    }
}
