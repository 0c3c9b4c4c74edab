package cradlewright.analysis.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.FindingChange.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingChangeTest {

    private static Finding finding(String object, Verdict verdict, double demand) {
        CheckInfo info = new CheckInfo("test.check", "Does it hold?", "common practice, no source", "Keep off.", List.of(), List.of());
        Subject subject = new Subject(Scope.VISIT, "car", Optional.of("visit"), "Car");
        return new FindingBuilder(info, subject, object, object).against(Amount.force(demand), Amount.force(100), "plate")
                .say(verdict, "So it is.");
    }

    private static List<Kind> kinds(List<Finding> before, List<Finding> after) {
        return FindingChange.between(before, after).stream().map(FindingChange::kind).toList();
    }

    @Test
    void graverIsWorseAndMilderIsBetter() {
        List<Finding> holds = List.of(finding("1L", Verdict.HOLDS, 50));
        List<Finding> stops = List.of(finding("1L", Verdict.STOP, 150));
        assertEquals(List.of(Kind.WORSE), kinds(holds, stops));
        assertEquals(List.of(Kind.BETTER), kinds(stops, holds));
        assertEquals(List.of(), kinds(holds, holds));
    }

    @Test
    void moreAskedCountsOnlyWhereItDoesNotHoldEasily() {
        assertEquals(List.of(Kind.CLOSER), kinds(List.of(finding("1L", Verdict.STOP, 120)), List.of(finding("1L", Verdict.STOP, 130))));
        assertEquals(List.of(), kinds(List.of(finding("1L", Verdict.STOP, 130)), List.of(finding("1L", Verdict.STOP, 120))));
        assertEquals(List.of(), kinds(List.of(finding("1L", Verdict.HOLDS, 20)), List.of(finding("1L", Verdict.HOLDS, 60))));
    }

    @Test
    void whatHeldAndIsNotAnsweredAnyMoreIsNotTakenForHeld() {
        assertEquals(List.of(Kind.UNANSWERED), kinds(List.of(finding("1L", Verdict.HOLDS, 50)), List.of()));
        assertEquals(List.of(Kind.BETTER), kinds(List.of(finding("1L", Verdict.TIGHT, 95)), List.of()));
    }

    @Test
    void newAnswersAppearUnlessTheyHold() {
        assertEquals(List.of(Kind.APPEARS), kinds(List.of(), List.of(finding("1L", Verdict.TIGHT, 95))));
        assertEquals(List.of(), kinds(List.of(), List.of(finding("1L", Verdict.HOLDS, 50))));
    }

    @Test
    void theOneAnswerToAQuestionMayMoveToAnotherObject() {
        List<Finding> before = List.of(finding("1L", Verdict.HOLDS, 50));
        assertEquals(List.of(), kinds(before, List.of(finding("2R", Verdict.HOLDS, 60))), "held there and holds here");
        FindingChange change = FindingChange.between(before, List.of(finding("2R", Verdict.STOP, 150))).get(0);
        assertEquals(Kind.WORSE, change.kind());
        assertTrue(change.moved());
        assertFalse(FindingChange.between(before, List.of(finding("1L", Verdict.STOP, 150))).get(0).moved());
    }

    @Test
    void whereEachObjectHasItsOwnAnswerNoneMoves() {
        List<Finding> before = List.of(finding("1L", Verdict.HOLDS, 50), finding("1R", Verdict.HOLDS, 50));
        assertEquals(List.of(Kind.UNANSWERED), kinds(before, List.of(finding("1R", Verdict.HOLDS, 50), finding("2R", Verdict.HOLDS, 50))));
    }

    @Test
    void objectsAreComparedWithThemselvesAndSeveralAnswersInTheirOrder() {
        List<Finding> before = List.of(finding("1L", Verdict.HOLDS, 50), finding("1L", Verdict.TIGHT, 95),
                finding("1R", Verdict.STOP, 150));
        List<Finding> after = List.of(finding("1R", Verdict.STOP, 150), finding("1L", Verdict.TIGHT, 95),
                finding("1L", Verdict.TIGHT, 95));
        assertEquals(List.of(Kind.WORSE), kinds(before, after));
    }
}
