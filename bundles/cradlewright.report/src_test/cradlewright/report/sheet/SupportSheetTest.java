package cradlewright.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.lookup.SupportCard;
import cradlewright.analysis.lookup.SupportLoads;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.standing.GapFrom;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import cradlewright.report.Answers;
import cradlewright.report.UnitSystem;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Everything about one support, made up. */
class SupportSheetTest {

    private static final Vec3 AT = new Vec3(2.115, -0.4, 0.3);

    private static Value measured(double si) {
        return new Value(si, 0, Source.MEASURED);
    }

    private static MountFacts mount() {
        ShimStackFacts found = new ShimStackFacts(List.of(
                new ShimFacts(Optional.of("two"), Optional.of(measured(0.002)), OptionalInt.of(1)),
                new ShimFacts(Optional.empty(), Optional.of(measured(0.0005)), OptionalInt.of(2))));
        return new MountFacts("1L", "1L", Optional.of(new Spot(AT, 0)), Condition.THIN, Optional.of(measured(0.0012)), Optional.of("m10"),
                OptionalInt.of(2), Optional.of(false), Optional.of(found), Optional.of(new ShimStackFacts(List.of())), Optional.empty());
    }

    private static SupportCard card(boolean held) {
        FixtureFacts fixture = new FixtureFacts("f", "fixture 1L", Optional.empty(), Optional.empty(), Optional.empty(), Vec3.ZERO,
                Optional.empty(), Hold.RESTS, Optional.of("m10"), OptionalInt.of(1), Optional.empty(), Optional.empty(), Optional.empty());
        StockFacts.Pad pad = new StockFacts.Pad("p", "cork 10 mm", StockFacts.Material.CORK, Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        Support support = new Support("contact", "1L", AT, AT, Vec3.UP, Hold.RESTS, Optional.of(mount()), Optional.empty(),
                new Holder.OnFixture(fixture), Optional.of(pad), 1e-6, false, 0.001, 0, GapFrom.MEASURED, mount().asFound());
        Situation lean = new Situation("lean", Optional.empty(), "one person leaning at the tail", Situation.Kind.LEAN, 1, Optional.empty(),
                Optional.empty(), 0);
        SupportLoads loads = new SupportLoads(List.of(
                new SupportLoads.Case(Situation.atRest(), new Carried("contact", "1L", 600, 550, 650, 400, 800, 0)),
                new SupportLoads.Case(lean, new Carried("contact", "1L", 300, 120, 480, 0, 900, 0))), "");
        VisitFacts visit = new VisitFacts("visit", "sills", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
        CarFacts car = new CarFacts("car", "Red coupe", true, List.of(), List.of(mount()), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(visit), List.of());
        WeighingFacts weighing = new WeighingFacts("w", "four scales", Optional.of(LocalDateTime.of(2026, 3, 2, 9, 0)), Optional.empty(),
                Optional.of("Hanna"), List.of());
        return new SupportCard(car, "1L", Optional.of(mount()),
                held ? Optional.of(new SupportCard.Held(visit, support, "Dolly 3", loads)) : Optional.empty(),
                held ? List.of(weighing) : List.of(), Map.of("m10", "M10 bolt, 8.8", "two", "shim 2 mm"));
    }

    private static String text(boolean held, Optional<ShopAnswers> answers) {
        return PlainSheet.write(new SupportSheet(UnitSystem.METRIC).write("1L", List.of(card(held)), answers)).replaceAll("\\s+", " ");
    }

    private static void assertSays(String text, String... parts) {
        for (String part : parts) {
            assertTrue(text.contains(part), () -> part + " in " + text);
        }
    }

    @Test
    void tellsWhatHoldsItAndWhatLiesOnIt() {
        assertSays(text(true, Optional.empty()), "Red coupe, 1L, sills", "held by fixture 1L of Dolly 3, rests",
                "place 2115 mm behind the marks' zero, 400 mm to the left", "bolt 1 x M10 bolt, 8.8", "pad cork 10 mm",
                "low by 1.0 mm, measured", "mount thin, free", "sheet 1.2 mm, measured", "bolt 2 x M10 bolt, 8.8");
    }

    @Test
    void tellsTheThreeStacks() {
        // 2 mm and twice 0.5 mm.
        assertSays(text(true, Optional.empty()), "as found: 3.0 mm: 1 x shim 2 mm + 2 x 0.5 mm, measured", "on dolly no shims",
                "as built nobody wrote it down");
    }

    @Test
    void tellsWhatItCarriesNowAndAtTheWorst() {
        assertSays(text(true, Optional.empty()), "carries 600 N at rest, 550 N to 650 N within give or take",
                "bounds 400 N to 800 N whatever gives way below it", "at most 650 N, at rest",
                "at least 120 N, one person leaning at the tail", "weighed four scales, 2026-03-02, scales read by Hanna");
    }

    @Test
    void tellsTheAnswersAboutItAndThatTheyAreNotThereYet() {
        assertSays(text(true, Optional.empty()), "answers being worked out");
        // The made-up answers are about 1L: one of each.
        String told = text(true, Optional.of(Answers.all()));
        assertSays(told, "STOP 1L: It gives way & falls.", "CAN'T SAY 1L: Nobody knows.", "TIGHT 1L: Close.", "HOLDS one answer",
                "Cautions");
        assertTrue(told.indexOf("STOP") < told.indexOf("TIGHT"), told);
    }

    @Test
    void answersAboutOtherVisitsAndObjectsAreNotTold() {
        ShopAnswers all = Answers.all();
        List<Finding> others = all.findings().stream().map(finding -> new Finding(finding.check(), finding.subject(), "2R", "2R",
                finding.verdict(), finding.words(), "", finding.demand(), finding.capacity(), false, "", finding.clause(),
                finding.caution(), finding.missing(), finding.remedies(), List.of(), List.of())).toList();
        assertSays(text(true, Optional.of(new ShopAnswers(1, "Shop", all.subjects(), others))),
                "answers no question was asked about it alone");
    }

    @Test
    void aMountThatNothingHoldsSaysSo() {
        assertSays(text(false, Optional.empty()), "held by nothing today", "place 2115 mm behind");
    }

    @Test
    void anUnknownNameIsAnsweredWithHowNamesLook() {
        Sheet sheet = new SupportSheet(UnitSystem.METRIC).write("9Z", List.of(), Optional.empty());
        assertEquals(1, sheet.lines().size());
        assertSays(sheet.lines().get(0).text(), "called 9Z", "such as 2L");
    }
}
