package cradlewright.analysis.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.testshop.DemoShop;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What all checks would say after a change is what an engine of its own says of the changed records, on the demo shop. */
class ForeseeTest {

    private static final CheckCatalogue CATALOGUE = BuiltInChecks.catalogue();
    private static final Predicate<Subject> WANTED = subject -> subject.scope() == Scope.VISIT && subject.label().contains("coupe, white");

    private static ShopSnapshot shop;

    @BeforeAll
    static void read() {
        shop = DemoShop.on(LocalDate.of(2026, 4, 1), 1);
    }

    private static List<Finding> anew(ShopSnapshot snapshot) {
        Engine engine = new Engine();
        engine.update(snapshot);
        return bare(new ShopChecks(engine, CATALOGUE).ask(WANTED, Progress.NONE).findings());
    }

    /** What to do is not looked for in what is not yet so. */
    private static List<Finding> bare(List<Finding> findings) {
        return findings.stream().map(finding -> finding.withRemedies(List.of())).toList();
    }

    private static void compare(Change change, ShopSnapshot changed) {
        Engine engine = new Engine();
        engine.update(shop);
        ShopChecks checks = new ShopChecks(engine, CATALOGUE);
        List<Finding> before = checks.ask(WANTED, Progress.NONE).findings();
        List<Finding> foreseen = bare(checks.foresee(change, WANTED, Progress.NONE).findings());
        List<Finding> expected = anew(changed);
        assertEquals(expected, foreseen);
        assertNotEquals(bare(before), foreseen, "the change makes a difference");
        assertEquals(before, checks.ask(WANTED, Progress.NONE).findings(), "nothing of it stays");
    }

    @Test
    void afterAChangeOfWhatTheShopHasSettled() {
        SettingsFacts faster = shop.settings().withWalkingSpeed(2 * shop.settings().walkingSpeed());
        compare(Change.of(faster), new ShopSnapshot(1, shop.name(), faster, shop.today(), shop.facts()));
    }

    @Test
    void afterAPartComesOff() {
        CarFacts car = shop.all(CarFacts.class).stream().filter(each -> each.name().contains("coupe, white")).findFirst().orElseThrow();
        VisitFacts visit = car.visits().stream().filter(each -> !each.over(shop.today()) && each.stageId().isPresent()).findFirst()
                .orElseThrow();
        StageFacts stage = visit.stageId().flatMap(car::stage).orElseThrow();
        CarFacts without = car.partsOff(visit, stage, Set.of(stage.partIds().iterator().next()));
        Map<String, Fact> facts = new LinkedHashMap<>(shop.facts());
        facts.put(car.id(), without);
        compare(Change.of(without), new ShopSnapshot(1, shop.name(), shop.settings(), shop.today(), facts));
    }
}
