package cradlewright.ui.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.run.ShopAnswers;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The tree says of the day what the start page says of it; a visit that is still to come has its own word. */
class WorstVerdictsTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);
    private static final Subject CAR = new Subject(Scope.CAR, "car", Optional.empty(), "Red coupe");
    private static final Subject NOW = new Subject(Scope.VISIT, "car", Optional.of("now"), "Red coupe, sills");
    private static final Subject PLANNED = new Subject(Scope.VISIT, "car", Optional.of("planned"), "Red coupe, paint");
    private static final Subject DOLLY = new Subject(Scope.DOLLY, "dolly", Optional.empty(), "Dolly 1");

    private static Finding finding(Subject subject, String object, Verdict verdict) {
        return new FindingBuilder(new CheckInfo("t.test", "t", "clause", "caution", List.of(), List.of()), subject, object, object)
                .say(verdict, "So it is.");
    }

    private static VisitFacts visit(String id, LocalDate from, LocalDate to) {
        return new VisitFacts(id, id, Optional.empty(), Optional.empty(), Optional.of(from), Optional.of(to), Optional.empty());
    }

    private static WorstVerdicts worst(List<VisitFacts> visits, Finding... findings) {
        CarFacts car = new CarFacts("car", "Red coupe", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), visits, List.of());
        Map<String, Fact> facts = new LinkedHashMap<>(Map.of("car", car));
        return WorstVerdicts.of(new ShopAnswers(1, "Shop", List.of(CAR, NOW, PLANNED, DOLLY), List.of(findings)),
                new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), TODAY, facts));
    }

    private static List<VisitFacts> visits() {
        return List.of(visit("now", TODAY.minusDays(3), TODAY), visit("planned", TODAY.plusDays(1), TODAY.plusDays(9)));
    }

    @Test
    void whatIsStillToComeIsSaidOfItsVisitOnly() {
        WorstVerdicts worst = worst(visits(), finding(NOW, "1L", Verdict.TIGHT), finding(PLANNED, "1L", Verdict.STOP),
                finding(PLANNED, "dolly", Verdict.STOP));
        assertEquals(Optional.of(Verdict.TIGHT), worst.of("car"));
        assertEquals(Optional.of(Verdict.TIGHT), worst.of("1L"));
        assertEquals(Optional.of(Verdict.TIGHT), worst.of("now"));
        assertEquals(Optional.of(Verdict.STOP), worst.of("planned"));
        assertEquals(Optional.of(Verdict.STOP), worst.later("car"));
        assertTrue(worst.graverLater("car") && worst.planned("planned") && !worst.planned("now"));
        assertEquals(Optional.of(Verdict.HOLDS), worst.of("dolly"), "asked about, and nothing against it today");
        assertEquals(Optional.empty(), worst.of("somebody"));
    }

    @Test
    void whatADollyDoesUnderTodaysCarIsSaidOfBoth() {
        WorstVerdicts worst = worst(visits(), finding(NOW, "dolly", Verdict.STOP));
        assertEquals(Optional.of(Verdict.STOP), worst.of("dolly"));
        assertEquals(Optional.of(Verdict.STOP), worst.of("car"));
        assertEquals(Optional.empty(), worst.later("car"));
        assertFalse(worst.graverLater("car"));
    }

    @Test
    void aCarThatStandsNowhereTodayIsNotSaidToHold() {
        WorstVerdicts worst = worst(List.of(visit("planned", TODAY.plusDays(1), TODAY.plusDays(9))),
                finding(PLANNED, "1L", Verdict.HOLDS));
        assertEquals(Optional.of(Verdict.CANT_SAY), worst.of("car"));
        assertEquals(Optional.of(Verdict.HOLDS), worst.of("planned"));
    }
}
