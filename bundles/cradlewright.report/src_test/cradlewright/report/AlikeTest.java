package cradlewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class AlikeTest {

    private static FindingBuilder about(String name) {
        return new FindingBuilder(Answers.info("Keep off."), Answers.VISIT, name, name);
    }

    private static Finding unseen(String name) {
        return about(name).cantSay("Nobody has looked.", List.of("what " + name + " can take: ask"));
    }

    private static Finding loaded(String name, double force) {
        return about(name).against(Amount.force(force), Amount.force(100), "plate").shown("stated", Amount.force(110), "sheet")
                .remedy(Remedy.advice("Prop " + name + "."))
                .remedy(Remedy.mends("Fit others all round.", Verdict.HOLDS)).say(Verdict.STOP, name + " carries too much.");
    }

    @Test
    void fourOfAKindAreToldOnceWithAllNames() {
        List<Alike> groups = Alike.gather(List.of(unseen("1L"), unseen("1R"), about("2L").say(Verdict.TIGHT, "Close."), unseen("2R")));
        assertEquals(List.of(3, 1), groups.stream().map(group -> group.findings().size()).toList());
        assertEquals("1L, 1R, 2R: Nobody has looked.", groups.get(0).reason());
        assertEquals(List.of("what each of them can take: ask"), groups.get(0).missing());
        assertEquals("2L: Close.", groups.get(1).reason());
    }

    @Test
    void oneAloneReadsAsItIs() {
        Alike alone = Alike.gather(List.of(unseen("1L"))).get(0);
        assertEquals("1L: Nobody has looked.", alone.reason());
        assertEquals(List.of("what 1L can take: ask"), alone.missing());
    }

    @Test
    void numbersStayWithTheirObjectsAndWhatIsCommonStandsOnce() {
        Alike both = Alike.gather(List.of(loaded("1L", 150), loaded("1R", 120))).get(0);
        assertEquals("1L, 1R: Each carries too much.", both.reason());
        assertEquals(List.of("1L: asked 150 N, can give 100 N (150 %)", "1R: asked 120 N, can give 100 N (120 %)", "stated 110 N"),
                both.numbers(UnitSystem.METRIC));
        assertEquals(List.of(Remedy.advice("Prop each of them."), Remedy.mends("Fit others all round.", Verdict.HOLDS)), both.remedies());
        assertEquals(List.of("asked 150 N, can give 100 N (150 %); stated 110 N"),
                Alike.gather(List.of(loaded("1L", 150), loaded("1R", 150))).get(0).numbers(UnitSystem.METRIC));
    }

    @Test
    void anotherSituationAnotherVerdictOrAnotherCureIsNotAlike() {
        Finding rest = about("1L").situation("at rest").say(Verdict.STOP, "No.");
        Finding rolled = about("1R").situation("rolled").say(Verdict.STOP, "No.");
        Finding tight = about("2L").situation("at rest").say(Verdict.TIGHT, "No.");
        Finding cured = about("2R").situation("at rest").remedy(Remedy.advice("Prop it.")).say(Verdict.STOP, "No.");
        assertEquals(4, Alike.gather(List.of(rest, rolled, tight, cured)).size());
    }

    @Test
    void whatWasWorkedOutForOneIsNotSaidOfSeveralAtOnce() {
        Finding left = about("1L").remedy(Remedy.mends("Lay a shim under 1L.", Verdict.HOLDS)).say(Verdict.STOP, "No.");
        Finding right = about("1R").remedy(Remedy.mends("Lay a shim under 1R.", Verdict.HOLDS)).say(Verdict.STOP, "No.");
        assertEquals(2, Alike.gather(List.of(left, right)).size());
    }

    @Test
    void aNameWithinAnotherWordIsNoName() {
        Finding one = about("1").cantSay("Joint 1 and joint 12 differ.", List.of("it"));
        Finding two = about("2").cantSay("Joint 2 and joint 12 differ.", List.of("it"));
        assertEquals("1, 2: Joint each of them and joint 12 differ.", Alike.gather(List.of(one, two)).get(0).reason());
    }
}
