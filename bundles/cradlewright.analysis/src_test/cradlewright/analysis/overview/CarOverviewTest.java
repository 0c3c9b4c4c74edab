package cradlewright.analysis.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.testshop.VisitShop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The answer of the line is the gravest about the car and what is on today; planned visits are left out of it. */
class CarOverviewTest {

    private static final LocalDate TODAY = VisitShop.TODAY;
    private static final CheckInfo INFO = new CheckInfo("t.test", "t", "t", "t", List.of(), List.of());
    private static final Subject CAR = new Subject(Scope.CAR, "car", Optional.empty(), "Car");
    private static final Subject PLANNED = new Subject(Scope.VISIT, "car", Optional.of("planned"), "Car, planned");
    private static final Subject OTHER = new Subject(Scope.VISIT, "other", Optional.of("visit"), "Other, visit");

    private static Engine engine(boolean onToday) {
        Map<String, Fact> facts = new LinkedHashMap<>(new VisitShop(CarrierKind.FLOOR).facts());
        CarFacts car = (CarFacts) facts.get("car");
        List<VisitFacts> visits = new ArrayList<>(onToday ? car.visits() : List.of());
        visits.add(new VisitFacts("planned", "planned", Optional.of("stage"), Optional.of("setup"), Optional.of(TODAY.plusDays(1)),
                Optional.empty(), Optional.empty()));
        facts.put("car", new CarFacts(car.id(), car.name(), car.separateChassis(), car.pieces(), car.mounts(), car.liftPoints(),
                car.workPoints(), car.cutZones(), car.temporaryLoads(), car.braces(), car.stages(), car.setups(), visits, car.weighings()));
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), TODAY, facts));
        return engine;
    }

    private static Finding finding(Subject subject, Verdict verdict) {
        FindingBuilder builder = new FindingBuilder(INFO, subject, "o", "o");
        return verdict == Verdict.CANT_SAY ? builder.cantSay("w", List.of("m")) : builder.say(verdict, "w");
    }

    private static List<Optional<Verdict>> verdicts(boolean onToday, Finding... findings) {
        ShopAnswers answers = new ShopAnswers(1, "Shop", List.of(CAR, VisitShop.VISIT, PLANNED), List.of(findings));
        return CarOverview.of(answers, engine(onToday).reader()).stream().map(CarOverview::verdict).toList();
    }

    @Test
    void takesTheGravestOfTheCarAndOfToday() {
        assertEquals(List.of(Optional.of(Verdict.TIGHT)),
                verdicts(true, finding(VisitShop.VISIT, Verdict.TIGHT), finding(CAR, Verdict.HOLDS)));
        assertEquals(List.of(Optional.of(Verdict.STOP)),
                verdicts(true, finding(VisitShop.VISIT, Verdict.TIGHT), finding(CAR, Verdict.STOP)));
    }

    @Test
    void leavesOutPlannedVisitsAndOtherCars() {
        assertEquals(List.of(Optional.of(Verdict.HOLDS)), verdicts(true, finding(VisitShop.VISIT, Verdict.HOLDS),
                finding(PLANNED, Verdict.STOP), finding(OTHER, Verdict.STOP)));
    }

    @Test
    void cannotSayWhenNoVisitIsOn() {
        assertEquals(List.of(Optional.of(Verdict.CANT_SAY)), verdicts(false, finding(CAR, Verdict.HOLDS)));
        ShopAnswers none = new ShopAnswers(1, "Shop", List.of(CAR), List.of());
        assertEquals("no visit covers this day", CarOverview.of(none, engine(false).reader()).get(0).line().standing());
    }

    @Test
    void isNothingWhenNoCheckHasAnAnswer() {
        assertEquals(List.of(Optional.empty()), verdicts(true));
    }
}
