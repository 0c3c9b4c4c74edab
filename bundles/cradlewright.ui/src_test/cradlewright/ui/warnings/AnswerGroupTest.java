package cradlewright.ui.warnings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.UnitSystem;
import cradlewright.ui.shop.WorstVerdicts;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which answers stand together, in which order, and that a row is known again after another run. */
class AnswerGroupTest {

    private static final Subject CAR = new Subject(Scope.CAR, "car", Optional.empty(), "Red coupe");
    private static final Subject VISIT = new Subject(Scope.VISIT, "car", Optional.of("visit"), "Red coupe, sills");
    private static final Subject DOLLY = new Subject(Scope.DOLLY, "dolly", Optional.empty(), "Dolly 1");
    private static final Set<Verdict> WARNINGS = EnumSet.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.TIGHT);

    private static Finding finding(String check, Subject subject, String object, Verdict verdict) {
        CheckInfo info = new CheckInfo(check, "Is it so?", "clause", "caution", List.of(), List.of());
        FindingBuilder builder = new FindingBuilder(info, subject, object, object).against(Amount.force(90), Amount.force(100), "plate");
        return verdict == Verdict.CANT_SAY ? builder.cantSay("Nobody knows.", List.of("the mass")) : builder.say(verdict, "It is so.");
    }

    private static final Finding HELD = finding("lift.total", VISIT, "lift", Verdict.HOLDS);
    private static final Finding TIGHT = finding("lift.total", DOLLY, "castor", Verdict.TIGHT);
    private static final Finding OPEN = finding("data.other", CAR, "bench", Verdict.CANT_SAY);
    private static final Finding STOP = finding("tip.other", VISIT, "1L", Verdict.STOP);

    private static List<AnswerGroup> gather(Gathering gathering, Set<Verdict> wanted, Finding... findings) {
        ShopAnswers answers = new ShopAnswers(1, "Shop", List.of(CAR, VISIT, DOLLY), List.of(findings));
        return AnswerGroup.gather(answers, BuiltInChecks.catalogue(), gathering, wanted, WorstVerdicts.NONE, UnitSystem.METRIC);
    }

    @Test
    void aCarStandsWithItsVisitsGravestFirst() {
        List<AnswerGroup> groups = gather(Gathering.THING, WARNINGS, TIGHT, OPEN, STOP, HELD);
        assertEquals(List.of("Red coupe", "Dolly 1"), groups.stream().map(AnswerGroup::title).toList());
        assertEquals(List.of(STOP, OPEN), groups.get(0).findings());
        assertEquals("sills: 1L: It is so.", groups.get(0).rows().get(0).what());
        assertEquals("bench: Nobody knows.", groups.get(0).rows().get(1).what());
        assertEquals("asked 90 N, can give 100 N (90 %)", groups.get(0).rows().get(0).numbers());
        assertEquals(Verdict.STOP, groups.get(0).worst());
    }

    @Test
    void whatIsStillToComeIsToldApartFromToday() {
        LocalDate today = LocalDate.of(2026, 3, 31);
        VisitFacts planned = new VisitFacts("visit", "sills", Optional.empty(), Optional.empty(), Optional.of(today.plusDays(2)),
                Optional.empty(), Optional.empty());
        CarFacts car = new CarFacts("car", "Red coupe", true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(planned), List.of());
        ShopAnswers answers = new ShopAnswers(1, "Shop", List.of(CAR, VISIT, DOLLY), List.of(STOP, OPEN, TIGHT));
        WorstVerdicts day = WorstVerdicts.of(answers, new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), today,
                new LinkedHashMap<>(Map.of("car", car))));
        List<AnswerGroup> groups = AnswerGroup.gather(answers, BuiltInChecks.catalogue(), Gathering.THING, WARNINGS, day,
                UnitSystem.METRIC);
        assertEquals("Red coupe (CAN'T SAY today; planned visits: STOP)", groups.get(0).title());
        assertEquals("sills, planned: 1L: It is so.", groups.get(0).rows().get(0).what());
        assertEquals("bench: Nobody knows.", groups.get(0).rows().get(1).what());
        assertEquals("Dolly 1", groups.get(1).title());
    }

    @Test
    void byCheckTheTitleIsItsQuestion() {
        List<AnswerGroup> groups = gather(Gathering.CHECK, EnumSet.allOf(Verdict.class), HELD, TIGHT, STOP);
        assertEquals(List.of("tip.other", "Is the lift or hoist rated for all that is on it?"),
                groups.stream().map(AnswerGroup::title).toList());
        assertEquals(List.of(TIGHT, HELD), groups.get(1).findings());
        assertEquals("Dolly 1: castor: It is so.", groups.get(1).rows().get(0).what());
    }

    @Test
    void onlyWantedVerdictsAreThere() {
        assertEquals(List.of(), gather(Gathering.THING, Set.of(Verdict.STOP), HELD, TIGHT, OPEN));
        assertEquals(1, gather(Gathering.THING, Set.of(Verdict.HOLDS), HELD, TIGHT, OPEN).size());
    }

    @Test
    void aRowOfTheSamePlaceIsKnownAgainThoughItsAnswerIsAnother() {
        AnswerTree tree = new AnswerTree();
        AnswerRow before = gather(Gathering.THING, WARNINGS, STOP).get(0).rows().get(0);
        AnswerRow after = gather(Gathering.THING, WARNINGS, finding("tip.other", VISIT, "1L", Verdict.TIGHT)).get(0).rows().get(0);
        assertEquals(true, tree.equals(before, after));
        assertEquals(tree.hashCode(before), tree.hashCode(after));
        assertNotEquals(true, tree.equals(before, gather(Gathering.THING, WARNINGS, finding("tip.other", VISIT, "1R", Verdict.STOP)).get(0)
                .rows().get(0)));
    }

    @Test
    void twoAnswersOfOnePlaceAreTwoRows() {
        List<AnswerRow> rows = gather(Gathering.THING, WARNINGS, STOP, STOP).get(0).rows();
        assertNotEquals(rows.get(0).key(), rows.get(1).key());
    }

    @Test
    void theCatalogueNeedNotKnowACheckThatHasAnAnswer() {
        ShopAnswers answers = new ShopAnswers(1, "Shop", List.of(CAR, VISIT), List.of(STOP));
        assertEquals("tip.other", AnswerGroup.gather(answers, new CheckCatalogue(List.of()), Gathering.CHECK, WARNINGS,
                WorstVerdicts.NONE, UnitSystem.INCH).get(0).title());
    }
}
