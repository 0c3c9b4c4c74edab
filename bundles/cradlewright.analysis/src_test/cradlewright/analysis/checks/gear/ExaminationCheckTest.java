package cradlewright.analysis.checks.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Days are counted from 14 March 2025; the last thirty before the due day are TIGHT (common practice, no source). */
class ExaminationCheckTest {

    private static List<Finding> ask(Optional<LocalDate> due, String id) {
        Examination examination = new Examination(Optional.empty(), Optional.empty(), due);
        VisitShop shop = new VisitShop(CarrierKind.STANDS).with(new GearFacts.Trestle("trestle", "trestle", examination, Optional.empty()));
        return shop.ask(new ExaminationCheck(), new Subject(Scope.GEAR, id, Optional.empty(), id));
    }

    private static Finding due(LocalDate day) {
        return ask(Optional.of(day), "trestle").get(0);
    }

    @Test
    void holdsUntilThirtyDaysBefore() {
        assertEquals(Verdict.HOLDS, due(LocalDate.of(2025, 4, 14)).verdict(), "31 days");
        assertEquals(Verdict.TIGHT, due(LocalDate.of(2025, 4, 13)).verdict(), "30 days");
    }

    @Test
    void tightUpToTheDayItself() {
        assertTrue(due(LocalDate.of(2025, 3, 15)).words().endsWith("in 1 day."));
        assertEquals(Verdict.TIGHT, due(VisitShop.TODAY).verdict());
    }

    @Test
    void stopsTheDayAfter() {
        Finding finding = due(LocalDate.of(2025, 3, 13));
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().endsWith(", 1 day ago."), finding.words());
        assertTrue(due(LocalDate.of(2025, 3, 1)).words().endsWith(", 13 days ago."));
    }

    @Test
    void cantSayWithoutADay() {
        assertEquals(Verdict.CANT_SAY, ask(Optional.empty(), "trestle").get(0).verdict());
    }

    @Test
    void asksNothingAboutGearThatIsGone() {
        assertEquals(List.of(), ask(Optional.empty(), "gone"));
    }
}
