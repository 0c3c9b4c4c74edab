package cradlewright.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.Answers;
import cradlewright.report.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TextReportTest {

    private static String write(ShopAnswers answers, boolean all) {
        return new TextReport(UnitSystem.METRIC, all).write(answers, Answers.DAY, Answers.engine().reader());
    }

    @Test
    void linesBreakAtBlanksBesideTheirHead() {
        String text = "word ".repeat(40).strip();
        List<String> lines = Lines.wrap("  head  ", text).lines().toList();
        // 92 characters are left beside the head: 18 words of 4 with 17 blanks are 89, one more would be 94.
        assertEquals("  head  " + "word ".repeat(18).strip(), lines.get(0));
        assertEquals("        " + "word ".repeat(18).strip(), lines.get(1));
        assertEquals("        " + "word ".repeat(4).strip(), lines.get(2));
    }

    @Test
    void aLineMayBeExactlyFull() {
        String full = "a".repeat(49) + " " + "b".repeat(50);
        assertEquals(full + "\n", Lines.wrap("", full));
        assertEquals(2, Lines.wrap("", full + "b").lines().count());
    }

    @Test
    void aWordThatIsTooLongStaysWhole() {
        String path = "/a".repeat(80);
        assertTrue(Lines.wrap("- ", "see " + path + " there").lines().anyMatch(line -> line.strip().equals(path)));
    }

    @Test
    void blanksAndControlCharactersOfNamesAreTamed() {
        assertEquals("> red [31m coupe x\n", Lines.wrap("> ", " red\n\u001b[31m\t coupe \u0085x\u0007 "));
        assertEquals("\n", Lines.wrap("", ""));
    }

    @Test
    void gravestFirstAndWhatHoldsIsOnlyCounted() {
        String text = write(Answers.all(), false);
        assertTrue(text.indexOf("  STOP      ") < text.indexOf("  CAN'T SAY 1L"), text);
        assertTrue(text.indexOf("  CAN'T SAY 1L") < text.indexOf("  TIGHT     1L"), text);
        assertTrue(text.contains("  1 further answer holds\n"), text);
        assertTrue(write(Answers.all(), true).contains("  HOLDS     1L: It holds.\n"));
        assertTrue(text.contains("STOP over all: 1 STOP, 1 CAN'T SAY, 1 TIGHT, 1 HOLDS\n"), text);
        assertTrue(text.contains("            to do     Use the larger one. (then TIGHT, and nothing else gets worse)\n"), text);
        String flat = text.replaceAll("\\s+", " ");
        assertTrue(flat.contains("to do Stand it on a plate. (then HOLDS by this check alone; the others were not asked again)"), text);
        assertTrue(flat.contains("but then Lay a shim. Would mend this (then HOLDS), but then: STOP 2R: It lifts off."), text);
        assertTrue(text.contains("            missing   mass of the \"bench\"\n"), text);
    }

    @Test
    void theCarsComeFirstOneLineEach() {
        String text = new TextReport(UnitSystem.METRIC, false).write(Answers.all(), Answers.DAY, Answers.engineWithCar().reader());
        assertTrue(text.replaceAll("\\s+", " ").startsWith("Shed & yard, 2026-03-31 Cars STOP red & <b>\"tired\"</b> 'coupe': nobody wrote "
                + "down where (nobody wrote down on what); no job is written down Everything that was asked about STOP red &"), text);
        assertTrue(!write(Answers.all(), false).contains("Cars\n"));
    }

    @Test
    void whatNothingIsAskedAboutShowsNoVerdict() {
        assertTrue(write(Answers.all(), false).contains("\n  -          Dolly 1: none of the questions asked arises here.\n"));
        String none = write(new ShopAnswers(1, "Shed", List.of(Answers.DOLLY), List.of()), false);
        assertTrue(none.contains("CAN'T SAY: none of the checks asked"), none);
        assertTrue(!none.contains("HOLDS"), none);
    }

    @Test
    void manyWithoutAQuestionAreOnlyCountedAndACarIsAnsweredByItsVisits() {
        List<Subject> subjects = new ArrayList<>(List.of(new Subject(Scope.CAR, "car", Optional.empty(), "Red"), Answers.VISIT));
        for (int i = 1; i <= 7; i++) {
            subjects.add(new Subject(Scope.GEAR, "stand-" + i, Optional.empty(), "Stand " + i));
        }
        String text = write(new ShopAnswers(1, "Shed", subjects, Answers.all().findings()), false);
        assertTrue(text.contains("\n  -          7 others: none of the questions asked arises there.\n"), text);
        assertTrue(!text.contains("Stand 3"), text);
    }
}
