package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.SignOffFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Work behind a hold point that nobody signed stops; work that waits is told. */
class HoldPointCheckTest {

    private static final HoldPointCheck CHECK = new HoldPointCheck();

    private static WorkShop shop(Progress before, Progress held, Progress after) {
        return new WorkShop().operation("brace", null, before).operation("cut", null, held, "brace").operation("weld", null, after, "cut");
    }

    @Test
    void holdsWhenSigned() {
        WorkShop shop = shop(Progress.DONE, Progress.RUNNING, Progress.OPEN);
        shop.hold("point", "cut", shop.signed("Hanna", WorkShop.NOON.minusDays(1)));
        assertEquals(List.of(Verdict.HOLDS), shop.verdicts(CHECK));
        assertTrue(shop.ask(CHECK).get(0).words().contains("Hanna on 2025-03-13"));
    }

    @Test
    void isTightWhenSignedADayAfterTheWorkBegan() {
        WorkShop shop = shop(Progress.DONE, Progress.RUNNING, Progress.OPEN);
        shop.hold("point", "cut", shop.signed("Hanna", WorkShop.NOON));
        assertEquals(List.of(Verdict.TIGHT), shop.verdicts(CHECK));
    }

    @Test
    void holdsWhileWhatComesBeforeIsNotDone() {
        assertEquals(List.of(Verdict.HOLDS), shop(Progress.RUNNING, Progress.OPEN, Progress.OPEN).hold("point", "cut").verdicts(CHECK));
    }

    @Test
    void isTightWhenTheNextStepWaits() {
        assertEquals(List.of(Verdict.TIGHT), shop(Progress.DONE, Progress.OPEN, Progress.OPEN).hold("point", "cut").verdicts(CHECK));
    }

    @Test
    void stopsWhenWorkHasBegunOrIsDone() {
        assertEquals(List.of(Verdict.STOP), shop(Progress.DONE, Progress.RUNNING, Progress.OPEN).hold("point", "cut").verdicts(CHECK));
        assertEquals(List.of(Verdict.STOP), shop(Progress.DONE, Progress.DONE, Progress.OPEN).hold("point", "cut").verdicts(CHECK));
    }

    @Test
    void stopsWhenWorkFurtherOnHasBegun() {
        WorkShop shop = shop(Progress.DONE, Progress.OPEN, Progress.RUNNING).hold("point", "cut");
        assertEquals(List.of(Verdict.STOP), shop.verdicts(CHECK));
        assertTrue(shop.ask(CHECK).get(0).words().contains("weld has begun"));
    }

    @Test
    void aSignatureOfALaterDayDoesNotCount() {
        WorkShop shop = shop(Progress.DONE, Progress.RUNNING, Progress.OPEN);
        LocalDateTime tomorrow = VisitShop.TODAY.plusDays(1).atStartOfDay();
        shop.hold("point", "cut", shop.signed("Hanna", tomorrow));
        assertEquals(List.of(Verdict.STOP), shop.verdicts(CHECK));
    }

    @Test
    void leavesLapsedAndUnclearSignaturesToTheOtherCheck() {
        WorkShop shop = shop(Progress.DONE, Progress.RUNNING, Progress.OPEN);
        SignOffFacts signed = shop.signed("Hanna", WorkShop.NOON);
        shop.hold("point", "cut", signed).shop.part("box", 10, 0, 0, 0);
        assertEquals(List.of(), shop.verdicts(CHECK));
    }

    @Test
    void isSilentWithoutHoldPoints() {
        assertEquals(List.of(), shop(Progress.DONE, Progress.DONE, Progress.DONE).verdicts(CHECK));
    }
}
