package cradlewright.ui.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.overview.CarDate;
import cradlewright.analysis.overview.CarLine;
import cradlewright.analysis.overview.CarStand;
import cradlewright.analysis.overview.CarrierLine;
import cradlewright.analysis.overview.ShopDay;
import cradlewright.analysis.run.ShopAnswers;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a line says before there are answers, with answers, and about days that slipped. */
class StartRowsTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 31);
    private static final Subject CAR = new Subject(Scope.CAR, "car", Optional.empty(), "Red coupe");
    private static final Subject VISIT = new Subject(Scope.VISIT, "car", Optional.of("visit"), "Red coupe, sills");
    private static final Subject PLANNED = new Subject(Scope.VISIT, "car", Optional.of("planned"), "Red coupe, paint");
    private static final Subject DOLLY = new Subject(Scope.DOLLY, "dolly", Optional.empty(), "Dolly 1");
    private static final CarLine LINE = new CarLine("car", "Red coupe", List.of(new CarStand("visit", "Bay 1", "on Dolly 1")), "next: cut");

    private static FindingBuilder finding(Subject subject, String object) {
        return new FindingBuilder(new CheckInfo("t.test", "t", "clause", "caution", List.of(), List.of()), subject, object, object);
    }

    private static ShopDay day(CarLine line, CarDate... date) {
        return new ShopDay(TODAY, List.of(line), date.length == 0 ? Map.of() : Map.of("car", date[0]),
                List.of(new CarrierLine("dolly", "Dolly 1", true, List.of("Red coupe"), Optional.of(TODAY.minusDays(1)))), List.of());
    }

    private static Optional<ShopAnswers> answers(Finding... findings) {
        return Optional.of(new ShopAnswers(1, "Shop", List.of(CAR, VISIT, PLANNED, DOLLY), List.of(findings)));
    }

    private static CarRow row(Finding... findings) {
        return CarRow.of(day(LINE), answers(findings)).get(0);
    }

    @Test
    void withoutAnswersTheLineSaysWhereTheCarStands() {
        CarRow row = CarRow.of(day(LINE), Optional.empty()).get(0);
        assertEquals(new CarRow(LINE, Optional.empty(), "", "", ""), row);
        assertEquals("Bay 1 (on Dolly 1)", row.line().standing());
    }

    @Test
    void theGravestReasonStandsWithWhatToDoFirst() {
        CarRow row = row(finding(VISIT, "1L").say(Verdict.TIGHT, "Close."),
                finding(VISIT, "2R").remedy(Remedy.advice("Look at it.")).remedy(Remedy.mends("Lay a shim.", Verdict.HOLDS))
                        .say(Verdict.STOP, "It lifts off."), finding(PLANNED, "9").say(Verdict.STOP, "Later."));
        assertEquals(Optional.of(Verdict.STOP), row.verdict());
        assertEquals("2R: It lifts off.", row.stops());
        assertEquals("Lay a shim. (then HOLDS, and nothing else gets worse)", row.first());
    }

    @Test
    void whatIsMissingIsToBeFoundOutFirst() {
        CarRow row = row(finding(CAR, "bench").remedy(Remedy.advice("Weigh it.")).cantSay("Nobody knows.", List.of("mass of the bench")));
        assertEquals("find out: mass of the bench", row.first());
    }

    @Test
    void whatHoldsHasNothingToDo() {
        CarRow row = row(finding(VISIT, "1L").say(Verdict.HOLDS, "Held."));
        assertEquals(Optional.of(Verdict.HOLDS), row.verdict());
        assertEquals("", row.stops() + row.first());
    }

    @Test
    void aCarThatStandsNowhereIsNotSaidToHold() {
        CarLine nowhere = new CarLine("car", "Red coupe", List.of(), "no job is written down");
        CarRow row = CarRow.of(day(nowhere), answers(finding(CAR, "bench").say(Verdict.HOLDS, "Held."))).get(0);
        assertEquals(Optional.of(Verdict.CANT_SAY), row.verdict());
        assertEquals("no visit covers this day", row.stops());
        assertEquals("Enter a visit that covers this day.", row.first());
    }

    @Test
    void aDayThatSlippedIsCalledLate() {
        assertEquals("2026-04-02, wait ends", date(2));
        assertEquals("2026-03-31, wait ends", date(0));
        assertEquals("late since 2026-03-30, wait ends", date(-1));
    }

    private static String date(int days) {
        return CarRow.of(day(LINE, new CarDate(TODAY.plusDays(days), "wait ends")), Optional.empty()).get(0).date();
    }

    @Test
    void aDollyTellsItsOwnGravestAnswerAndWhenItIsDue() {
        CarrierRow row = CarrierRow.of(day(LINE), answers(finding(DOLLY, "rail").say(Verdict.TIGHT, "Close."),
                finding(VISIT, "1L").say(Verdict.STOP, "Other."))).get(0);
        assertEquals(Optional.of(Verdict.TIGHT), row.verdict());
        assertEquals("rail: Close.", row.reason());
        assertEquals("overdue since 2026-03-30", row.due());
        assertEquals(Optional.empty(), CarrierRow.of(day(LINE), answers()).get(0).verdict());
    }

    @Test
    void whatADollyDoesUnderTheCarThatStandsOnItTodayIsSaidOfTheDollyToo() {
        Finding own = finding(DOLLY, "rail").say(Verdict.TIGHT, "Close.");
        CarrierRow today = CarrierRow.of(day(LINE), answers(own, finding(VISIT, "dolly").say(Verdict.STOP, "It tips."))).get(0);
        assertEquals(Optional.of(Verdict.STOP), today.verdict());
        CarrierRow planned = CarrierRow.of(day(LINE), answers(own, finding(PLANNED, "dolly").say(Verdict.STOP, "It tips."))).get(0);
        assertEquals(Optional.of(Verdict.TIGHT), planned.verdict(), "not of a car that is still to come");
    }
}
