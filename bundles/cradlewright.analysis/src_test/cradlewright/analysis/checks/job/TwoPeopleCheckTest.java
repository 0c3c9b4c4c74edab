package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.OperationFacts.Kind;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Two people all the time where nobody should be alone. */
class TwoPeopleCheckTest {

    private static final TwoPeopleCheck CHECK = new TwoPeopleCheck();

    private static LocalDateTime at(int hour) {
        return VisitShop.TODAY.atTime(hour, 0);
    }

    private static WorkShop alone(Kind kind, Progress progress) {
        return new WorkShop().operation("work", kind, progress).booking("b1", "work", "Hanna", null, at(8), at(12));
    }

    @ParameterizedTest
    @EnumSource(names = {"LIFT_OFF", "DROP", "ROLL", "TURN_OVER"})
    void stopsAloneAndHoldsWithTwo(Kind kind) {
        WorkShop shop = alone(kind, Progress.OPEN);
        assertEquals(List.of(Verdict.STOP), shop.verdicts(CHECK));
        assertEquals(List.of(Verdict.HOLDS), shop.booking("b2", "work", "Bram", null, at(8), at(12)).verdicts(CHECK));
    }

    @Test
    void onePersonBookedTwiceIsAlone() {
        assertEquals(List.of(Verdict.STOP), alone(Kind.LIFT_OFF, Progress.OPEN).booking("b2", "work", "Hanna", null, at(8), at(12))
                .verdicts(CHECK));
    }

    @Test
    void oneAfterTheOtherIsAlone() {
        assertEquals(List.of(Verdict.STOP), alone(Kind.LIFT_OFF, Progress.OPEN).booking("b2", "work", "Bram", null, at(12), at(14))
                .verdicts(CHECK));
    }

    @Test
    void whoeverLeavesEarlyOrComesLateLeavesTheOtherAlone() {
        assertEquals(List.of(Verdict.STOP), alone(Kind.ROLL, Progress.OPEN).booking("b2", "work", "Bram", null, at(9), at(12))
                .verdicts(CHECK));
        assertEquals(List.of(Verdict.STOP), alone(Kind.ROLL, Progress.OPEN).booking("b2", "work", "Bram", null, at(8), at(11))
                .verdicts(CHECK));
    }

    @Test
    void aGapBetweenTwoHelpersIsAlone() {
        assertEquals(List.of(Verdict.STOP), alone(Kind.ROLL, Progress.OPEN).booking("b2", "work", "Bram", null, at(8), at(10))
                .booking("b3", "work", "Oona", null, at(11), at(12)).verdicts(CHECK));
    }

    @Test
    void aChangeOfHandsWithoutAGapHolds() {
        assertEquals(List.of(Verdict.HOLDS), alone(Kind.ROLL, Progress.OPEN).booking("b2", "work", "Bram", null, at(8), at(10))
                .booking("b3", "work", "Oona", null, at(10), at(12)).verdicts(CHECK));
    }

    @Test
    void cannotSayWithoutPersonTimesOrKind() {
        WorkShop nobody = new WorkShop().operation("work", Kind.DROP, Progress.OPEN).booking("b", "work", null, null, at(8), at(9));
        assertEquals(List.of(Verdict.CANT_SAY), nobody.verdicts(CHECK));
        WorkShop sometime = new WorkShop().operation("work", Kind.DROP, Progress.OPEN).booking("b", "work", "Hanna", null, null, at(9));
        assertEquals(List.of(Verdict.CANT_SAY), sometime.verdicts(CHECK));
        assertEquals(List.of(Verdict.CANT_SAY), alone(null, Progress.OPEN).verdicts(CHECK));
    }

    @Test
    void isSilentWhereOneMayWorkAloneWhereTwoAreAnywayAndWhereItIsDone() {
        assertEquals(List.of(), alone(Kind.CUT, Progress.OPEN).verdicts(CHECK));
        assertEquals(List.of(), alone(Kind.OTHER, Progress.OPEN).verdicts(CHECK));
        assertEquals(List.of(), alone(null, Progress.OPEN).booking("b2", "work", "Bram", null, at(8), at(12)).verdicts(CHECK));
        assertEquals(List.of(), alone(Kind.DROP, Progress.DONE).verdicts(CHECK));
        assertEquals(List.of(), new WorkShop().operation("work", Kind.DROP, Progress.OPEN).verdicts(CHECK));
    }
}
