package cradlewright.analysis.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.checks.lift.ScaleStopCheck;
import cradlewright.analysis.engine.AfterChange;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A car that stands on the floor is asked about as if it were on a lift; shares by moments, statically determinate. */
class LiftQuestionTest {

    private static final List<String> ARMS = List.of("front left", "front right", "rear left", "rear right");

    private final VisitShop shop = new VisitShop(CarrierKind.FLOOR)
            .part("tub", new Value(400, 10, Source.WEIGHED), new Vec3(0.5, 0, 0.5), 0);

    private static GearFacts.Lift lift(String id) {
        return new GearFacts.Lift(id, id, SupportShop.examined(), Optional.of(VisitShop.measured(2000)), Optional.empty(), Optional.empty(),
                ARMS.stream().map(name -> new GearFacts.ArmFacts(id + " " + name, name, Optional.empty(), Optional.empty(),
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
                        .toList());
    }

    /** Adds a setup on the first lift: the front pads at x = 0, the rear ones at x = 2 m. */
    private ShopSnapshot snapshot() {
        shop.with(lift("one")).with(lift("two")).with(new GearFacts.Hoist("hoist", "hoist", SupportShop.examined(), Optional.empty(),
                List.of()));
        Map<String, Fact> facts = new LinkedHashMap<>(shop.facts());
        List<ContactFacts> contacts = new ArrayList<>();
        for (int i = 0; i < ARMS.size(); i++) {
            contacts.add(new ContactFacts("c" + i, ARMS.get(i), Optional.empty(), Optional.empty(),
                    Optional.of(new Vec3(i < 2 ? 0 : 2, i % 2 == 0 ? -0.5 : 0.5, 0)), Optional.of("one " + ARMS.get(i)), Optional.empty(),
                    Vec3.UP, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty()));
        }
        CarFacts car = (CarFacts) facts.get("car");
        List<SetupFacts> setups = new ArrayList<>(car.setups());
        setups.add(new SetupFacts("raised", "raised", List.of("shell"), CarrierKind.LIFT, Optional.empty(), Optional.of("one"),
                Optional.empty(), Vec3.ZERO, 0, contacts, Optional.empty(), SetupFacts.Weather.UNKNOWN));
        facts.put("car", new CarFacts(car.id(), car.name(), car.separateChassis(), car.pieces(), car.mounts(), car.liftPoints(),
                car.workPoints(), car.cutZones(), car.temporaryLoads(), car.braces(), car.stages(), setups, car.visits(),
                car.weighings()));
        return new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), VisitShop.TODAY, facts);
    }

    private static List<LiftQuestion> questions(ShopSnapshot snapshot) {
        return LiftQuestion.of(snapshot, snapshot.find(CarFacts.class, "car").orElseThrow());
    }

    private static LiftAnswer answer(ShopSnapshot snapshot, LiftQuestion question) {
        Engine engine = new Engine();
        engine.update(snapshot);
        Change change = question.change(snapshot).orElseThrow();
        return engine.read(new AfterChange<>(new LiftAnswerKey(new CheckCatalogue(List.of(new ScaleStopCheck())), question.subject()),
                change), Progress.NONE);
    }

    @Test
    void offersTheWaysOfLiftingWithEveryLiftOfTheShop() {
        assertEquals(List.of("one", "two"), questions(snapshot()).stream().map(question -> question.gear().orElseThrow().id()).toList());
    }

    @Test
    void tellsMassSharesAndReadingAtWhichToStop() {
        ShopSnapshot snapshot = snapshot();
        LiftAnswer answer = answer(snapshot, questions(snapshot).get(0));
        // The balance point is a quarter of the way back: three quarters of 400 kg on the two front arms.
        List<Double> shares = answer.loads().supports().stream().map(Carried::force).map(force -> force / Constants.GRAVITY).toList();
        assertEquals(150, shares.get(0), 1e-3);
        assertEquals(150, shares.get(1), 1e-3);
        assertEquals(50, shares.get(2), 1e-3);
        assertEquals(50, shares.get(3), 1e-3);
        Finding stop = answer.findings().get(0);
        // 400 kg and twice 10 kg.
        assertEquals(List.of(Amount.mass(420)), stop.inputs().stream().filter(Input::shown).map(Input::amount).toList());
    }

    @Test
    void onAnotherLiftThePadsGoToTheArmsOfTheSameName() {
        ShopSnapshot snapshot = snapshot();
        LiftAnswer answer = answer(snapshot, questions(snapshot).get(1));
        assertEquals(List.of("front left", "front right", "rear left", "rear right"), answer.standing().orElseThrow().supports().stream()
                .map(support -> support.holder().name()).toList());
        assertEquals("two", answer.standing().orElseThrow().lift().orElseThrow().id());
    }

    @Test
    void nothingChangesWhereItIsLiftedSoAlready() {
        ShopSnapshot before = snapshot();
        Change change = questions(before).get(0).change(before).orElseThrow();
        Map<String, Fact> facts = new LinkedHashMap<>(before.facts());
        change.facts().forEach(fact -> facts.put(fact.id(), fact));
        ShopSnapshot lifted = new ShopSnapshot(2, "Shop", before.settings(), before.today(), facts);
        assertEquals(Optional.empty(), questions(lifted).get(0).change(lifted));
        assertTrue(questions(lifted).get(1).change(lifted).isPresent());
    }
}
