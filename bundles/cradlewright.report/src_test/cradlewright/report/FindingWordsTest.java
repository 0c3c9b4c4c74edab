package cradlewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingWordsTest {

    @Test
    void aStopJustAboveTheLimitDoesNotReadAsAHundredPerCent() {
        Finding finding = Answers.finding("Keep off.").against(Amount.force(1003), Amount.force(1000), "plate").say(Verdict.STOP, "No.");
        assertEquals("asked 1003 N, can give 1000 N (100.3 %)", FindingWords.numbers(finding, UnitSystem.METRIC));
    }

    @Test
    void aLengthOrAHeatIsFoundAndAllowed() {
        Finding twist = Answers.finding("Keep off.").against(Amount.length(0.006), Amount.length(0.003), "plate").say(Verdict.STOP, "No.");
        assertEquals("found 6.0 mm, at most 3.0 mm allowed (200 %)", FindingWords.numbers(twist, UnitSystem.METRIC));
        Finding people = Answers.finding("Keep off.").against(Amount.ratio(8), Amount.ratio(4), "room").say(Verdict.TIGHT, "No.");
        assertEquals("found 8, at most 4 allowed (200 %)", FindingWords.numbers(people, UnitSystem.METRIC));
    }

    @Test
    void noShareOfNothing() {
        Finding nothing = Answers.finding("Keep off.").against(Amount.force(3), Amount.force(0), "plate").say(Verdict.STOP, "No.");
        assertEquals("asked 3 N, can give 0 N", FindingWords.numbers(nothing, UnitSystem.METRIC));
        assertEquals("", FindingWords.numbers(Answers.finding("Keep off.").say(Verdict.STOP, "No."), UnitSystem.METRIC));
    }

    @Test
    void aLeastIsNotReadAsALoad() {
        Finding light = Answers.finding("Keep off.").atLeast(Amount.force(60), Amount.force(40), "least it carries")
                .say(Verdict.STOP, "No.");
        assertEquals("found 40 N, at least 60 N wanted", FindingWords.numbers(light, UnitSystem.METRIC));
    }

    @Test
    void aNumberThatTheAnswerNeedsStandsBesideIt() {
        Finding shown = Answers.finding("Keep off.").against(Amount.force(3), Amount.force(6), "plate")
                .input("length", Amount.length(1), "")
                .shown("further back by at least", Amount.length(0.1), "worked out").say(Verdict.STOP, "No.");
        assertEquals("asked 3 N, can give 6 N (50 %); further back by at least 100.0 mm", FindingWords.numbers(shown, UnitSystem.METRIC));
        assertEquals("asked 3 N, can give 6 N (50 %)", FindingWords.against(shown, UnitSystem.METRIC));
    }

    @Test
    void nothingIsSaidTwiceInWhatItRestsOn() {
        Finding finding = Answers.finding("Keep off.").against(Amount.force(3), Amount.force(6), "friction; common practice, no source")
                .say(Verdict.HOLDS, "Yes.");
        assertEquals("friction; common practice, no source", FindingWords.basis(finding));
    }

    @Test
    void everySentenceOfTheCautionsIsSaidOnce() {
        List<Finding> findings = List.of(Answers.finding("Keep off. Raise 1.5 mm. Look.").say(Verdict.STOP, "No."),
                Answers.finding("Keep off. Raise 1.5 mm. Prop it.").say(Verdict.STOP, "No."),
                Answers.finding("Look. Keep off.").say(Verdict.STOP, "No."));
        List<String> cautions = FindingWords.cautions(findings);
        assertEquals(List.of("Keep off. Raise 1.5 mm. Look.", "Prop it."), cautions.subList(0, 2));
        assertEquals(3, cautions.size());
    }

    @Test
    void theGeneralCautionStandsEvenWhenNothingWasAsked() {
        assertEquals(1, FindingWords.cautions(List.of()).size());
    }

    @Test
    void theObjectIsNamedOnce() {
        assertEquals("1L: Loose.", FindingWords.reason(Answers.finding("Keep off.").say(Verdict.STOP, "Loose.")));
        assertEquals("1L is loose.", FindingWords.reason(Answers.finding("Keep off.").say(Verdict.STOP, "1L is loose.")));
    }

    @Test
    void movesAreToldAsSeenFromTheDrivingPosition() {
        // x rearward, y to the right, z up: ISO 4130 axes as the marks use them.
        assertEquals("forward by 30.0 mm, right by 10.0 mm, down by 1.0 mm",
                BalanceWords.move(new Vec3(1, 0, 0.5), new Vec3(0.97, 0.01, 0.499), UnitSystem.METRIC));
        assertEquals("back by 10.0 mm, left by 5.0 mm, up by 2.0 mm",
                BalanceWords.move(new Vec3(1, 0, 0.5), new Vec3(1.01, -0.005, 0.502), UnitSystem.METRIC));
        assertEquals("stays where it is", BalanceWords.move(new Vec3(1, 0, 0.5), new Vec3(1.0004, 0, 0.5), UnitSystem.METRIC));
    }
}
