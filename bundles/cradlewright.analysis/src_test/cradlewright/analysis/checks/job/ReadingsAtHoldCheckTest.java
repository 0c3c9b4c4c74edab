package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.ApertureFacts;
import cradlewright.analysis.facts.OperationFacts.Kind;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import cradlewright.quantity.Source;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Openings are measured before and after a cut; the cut of the tests began yesterday. */
class ReadingsAtHoldCheckTest {

    private static final LocalDateTime BEFORE = VisitShop.TODAY.minusDays(3).atTime(9, 0);
    private static final LocalDateTime MORNING = VisitShop.TODAY.minusDays(1).atTime(7, 0);
    private static final LocalDateTime AFTER = VisitShop.TODAY.atTime(9, 0);

    private static ApertureFacts.Reading reading(String opening, LocalDateTime at, double u, double... diagonals) {
        return new ApertureFacts.Reading(opening + at, Optional.of(opening), Optional.of(at), Optional.empty(),
                Arrays.stream(diagonals).mapToObj(metres -> new Value(metres, u, Source.MEASURED)).toList(), List.of());
    }

    private static Finding ask(Progress progress, ApertureFacts.Reading... readings) {
        WorkShop shop = new WorkShop().operation("cut", Kind.CUT, progress);
        shop.shop.with(new ApertureFacts(ApertureFacts.idFor("car"), "Car", "car", List.of(readings)));
        return shop.ask(new ReadingsAtHoldCheck()).get(0);
    }

    @Test
    void holdsBeforeTheCutWhenMeasured() {
        assertEquals(Verdict.HOLDS, ask(Progress.OPEN, reading("door", BEFORE, 0, 1.0)).verdict());
        assertEquals(Verdict.HOLDS, ask(Progress.RUNNING, reading("door", MORNING, 0, 1.0)).verdict());
    }

    @Test
    void holdsAfterTheCutWithinTheTape() {
        Finding finding = ask(Progress.DONE, reading("door", BEFORE, 0, 1.000, 1.200), reading("door", AFTER, 0, 1.00199, 1.199));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(0.00199, finding.inputs().get(0).amount().si(), 1e-12);
    }

    @Test
    void stopsWhenAnOpeningHasMoved() {
        assertEquals(Verdict.STOP, ask(Progress.DONE, reading("door", BEFORE, 0, 1.000, 1.200), reading("door", AFTER, 0, 1.0, 1.19799))
                .verdict());
    }

    /** Two readings with a standard uncertainty of 2 mm each differ by up to 2 x sqrt(8) = 5.66 mm, 19 times in 20. */
    @Test
    void roughReadingsTellLess() {
        ApertureFacts.Reading before = reading("door", BEFORE, 0.002, 1.0);
        assertEquals(Verdict.HOLDS, ask(Progress.DONE, before, reading("door", AFTER, 0.002, 1.0056)).verdict());
        assertEquals(Verdict.STOP, ask(Progress.DONE, before, reading("door", AFTER, 0.002, 1.0057)).verdict());
    }

    @Test
    void theMorningAndTheEveningOfOneDayAreBeforeAndAfter() {
        assertEquals(Verdict.STOP, ask(Progress.DONE, reading("door", MORNING, 0, 1.0), reading("door", MORNING.plusHours(9), 0, 1.01))
                .verdict());
    }

    @Test
    void theLastReadingCountsAfterTheShellIsPulledBack() {
        assertEquals(Verdict.HOLDS, ask(Progress.DONE, reading("door", BEFORE, 0, 1.0), reading("door", MORNING.plusHours(9), 0, 1.01),
                reading("door", AFTER, 0, 1.001)).verdict());
    }

    @Test
    void cannotSayWithoutReadings() {
        assertEquals(Verdict.CANT_SAY, ask(Progress.OPEN).verdict());
        assertEquals(Verdict.CANT_SAY, ask(Progress.RUNNING).verdict());
        assertEquals(Verdict.CANT_SAY, ask(Progress.DONE, reading("door", AFTER, 0, 1.0)).verdict());
        assertEquals(Verdict.CANT_SAY, ask(Progress.DONE, reading("door", BEFORE, 0, 1.0)).verdict());
        assertEquals(Verdict.CANT_SAY, ask(Progress.DONE, reading("door", BEFORE, 0, 1.0), reading("door", AFTER, 0, 1.0, 1.2)).verdict());
        assertEquals(Verdict.CANT_SAY, ask(Progress.DONE, reading("door", BEFORE, 0, 1.0), reading("other door", BEFORE, 0, 1.0),
                reading("door", AFTER, 0, 1.0)).verdict());
    }

    @Test
    void readingsOfALaterDayDoNotCount() {
        assertEquals(Verdict.CANT_SAY, ask(Progress.OPEN, reading("door", VisitShop.TODAY.plusDays(1).atStartOfDay(), 0, 1.0)).verdict());
    }

    @Test
    void isSilentWhereNothingIsCut() {
        assertEquals(List.of(), new WorkShop().operation("weld", Kind.OTHER, Progress.OPEN).verdicts(new ReadingsAtHoldCheck()));
    }
}
