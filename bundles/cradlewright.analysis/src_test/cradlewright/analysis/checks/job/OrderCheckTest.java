package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Done before what comes first stops; begun before it is tight. */
class OrderCheckTest {

    private static List<Verdict> verdicts(Progress first, Progress second) {
        return new WorkShop().operation("first", null, first).operation("second", null, second, "first").verdicts(new OrderCheck());
    }

    @Test
    void holdsInOrder() {
        assertEquals(List.of(Verdict.HOLDS), verdicts(Progress.DONE, Progress.DONE));
        assertEquals(List.of(Verdict.HOLDS), verdicts(Progress.DONE, Progress.RUNNING));
    }

    @Test
    void isTightWhenBegunEarly() {
        assertEquals(List.of(Verdict.TIGHT), verdicts(Progress.RUNNING, Progress.RUNNING));
    }

    @Test
    void stopsWhenDoneEarly() {
        assertEquals(List.of(Verdict.STOP), verdicts(Progress.OPEN, Progress.DONE));
        assertEquals(List.of(Verdict.STOP), verdicts(Progress.RUNNING, Progress.DONE));
    }

    @Test
    void cannotSayWhenWhatComesFirstIsNotThere() {
        assertEquals(List.of(Verdict.CANT_SAY),
                new WorkShop().operation("second", null, Progress.DONE, "of another car").verdicts(new OrderCheck()));
    }

    @Test
    void isSilentBeforeAnythingBegins() {
        assertEquals(List.of(), verdicts(Progress.OPEN, Progress.OPEN));
    }
}
