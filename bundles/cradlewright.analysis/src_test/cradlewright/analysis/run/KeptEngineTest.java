package cradlewright.analysis.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** An engine that is kept through edits and undos answers as one that starts anew, and works out again no more than it must. */
class KeptEngineTest {

    private static final long SEED = 314159L;
    private static final int EDITS = 2000;
    private static final int COMPARED = 50;
    private static final CheckCatalogue CATALOGUE = BuiltInChecks.catalogue();

    /** What an edit may change about one car and its dolly. */
    private record CarState(double mass, boolean weighed, boolean engineOn, int shims, String castorType) {
    }

    /** What an edit may change in the shop. */
    private record ShopState(List<CarState> cars, double jointFactor, double castorRating) {

        ShopState with(int car, CarState state) {
            List<CarState> next = new ArrayList<>(cars);
            next.set(car, state);
            return new ShopState(List.copyOf(next), jointFactor, castorRating);
        }
    }

    private static final CarState CAR = new CarState(300, true, false, 2, "hard");
    private static final ShopState START = new ShopState(List.of(CAR, CAR, CAR), 1.4, 400);

    private static Optional<Value> value(double si) {
        return Optional.of(VisitShop.measured(si));
    }

    /** A car on a dolly of its own; the middle one has a frame and four supports, the others three on a rigid one. */
    private static void add(Map<String, Fact> facts, int number, CarState state) {
        String dollyId = "dolly-" + number;
        SteelDolly dolly = SteelDolly.square(dollyId);
        boolean framed = number == 1;
        if (framed) {
            dolly.mass = Optional.empty();
            for (int[] side : new int[][] {{0, 1}, {1, 3}, {3, 2}, {2, 0}}) {
                dolly.member("member-" + side[0], dollyId + "-n" + side[0], dollyId + "-n" + side[1], "bar");
            }
        }
        dolly.castors.replaceAll(castor -> new CastorFacts(castor.id(), castor.name(), castor.nodeId(),
                Optional.of(state.castorType), true, castor.brake()));
        VisitShop shop = new VisitShop(CarrierKind.DOLLY);
        shop.part("body", new Value(state.mass, state.mass / 100, state.weighed ? Source.WEIGHED : Source.GUESSED), new Vec3(0, 0,
                0.8), 0.01);
        shop.part("engine", new Value(120, 2, Source.WEIGHED), new Vec3(-0.4, 0, 0.6), 0.01);
        if (!state.engineOn) {
            shop.partsOn.remove("engine");
        }
        shop.dolly = Optional.of(dollyId);
        for (int i = 0; i < (framed ? 4 : 3); i++) {
            double x = i < 2 ? -1 : 1;
            double y = i == 2 && !framed ? 0 : i % 2 == 0 ? -1 : 1;
            String node = framed ? dollyId + "-n" + i : "f" + i;
            if (!framed) {
                dolly.node(node, x, y, 0.2);
            }
            dolly.fixture("fix" + i, node, value(0.3));
            shop.mount("m" + i, new Vec3(x, y, 0.51), Condition.SOUND, Optional.of(false));
            ShimStackFacts stack = new ShimStackFacts(List.of(new ShimFacts(Optional.empty(), value(0.0004),
                    OptionalInt.of(i == 0 ? state.shims : 2))));
            var touch = shop.touch("s" + i).mount("m" + i).on("fix" + i).shims(stack);
            if (framed) {
                touch.pad("rubber");
            }
        }
        shop.workPoints.add(new WorkPointFacts("sill", "sill", Optional.of(new Spot(new Vec3(0, 1, 0.9), 0)),
                Optional.of(new Vec3(0, 1, 0)),
                Optional.of(WorkPointFacts.Kind.LEAN)));
        CarFacts car = (CarFacts) shop.facts().get("car");
        String id = "car-" + number;
        facts.put(id, new CarFacts(id, id, car.separateChassis(), car.pieces(), car.mounts(), car.liftPoints(), car.workPoints(),
                car.cutZones(),
                car.temporaryLoads(), car.braces(), car.stages(), car.setups(), car.visits(), car.weighings()));
        facts.put(dollyId, dolly.facts());
    }

    private static StockFacts.Pad rubber(double stiffness) {
        return new StockFacts.Pad("rubber", "rubber", StockFacts.Material.RUBBER, value(0.06), value(0.06), value(0.02), value(5e6),
                value(stiffness), value(2e6), value(0.2), value(80));
    }

    private static PlacementFacts placement(String visit, String place) {
        return new PlacementFacts("where", "where", Optional.of(visit), Optional.of(place));
    }

    private static Map<String, Fact> facts(ShopState state) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (int i = 0; i < state.cars.size(); i++) {
            add(facts, i, state.cars.get(i));
        }
        facts.put("bar", new StockFacts.Flat("bar", "bar", value(0.06), value(0.03)));
        for (String type : List.of("hard", "soft")) {
            facts.put(type, new StockFacts.CastorType(type, type, value(state.castorRating), value(0.2), value(0.05), Optional.empty(),
                    value(type.equals("hard") ? 3e6 : 1e6), Optional.empty(), Optional.empty(), value(4)));
        }
        facts.put("thin", new StockFacts.Flat("thin", "thin", value(0.06), value(0.02)));
        facts.put("rubber", rubber(1e6));
        facts.put("level", new PlaceFacts("level", "level", PlaceFacts.Kind.BAY, Optional.empty(), false, value(0.005), value(18),
                value(0.003)));
        facts.put("steep", new PlaceFacts("steep", "steep", PlaceFacts.Kind.BAY, Optional.empty(), false, value(0.03), value(18),
                value(0.01)));
        facts.put("where", placement("visit", "level"));
        return facts;
    }

    private static ShopSnapshot snapshot(long number, ShopState state) {
        return snapshot(number, state, facts(state));
    }

    private static ShopSnapshot snapshot(long number, ShopState state, Map<String, Fact> facts) {
        SettingsFacts s = SettingsFacts.commonPractice();
        SettingsFacts settings = new SettingsFacts(s.personMass(), s.leanForce(), s.barForce(), s.requiredRatio(), s.tightMargin(),
                state.jointFactor, s.step(), s.unevenness(), s.slope(), s.walkingSpeed(), s.shimTolerance(), s.friction());
        return new ShopSnapshot(number, "yard", settings, VisitShop.TODAY, facts);
    }

    private static ShopState edit(ShopState state, Random random) {
        int number = random.nextInt(3);
        CarState car = state.cars.get(number);
        return switch (random.nextInt(7)) {
            case 0 -> state.with(number, new CarState(200 + random.nextInt(300), car.weighed, car.engineOn, car.shims, car.castorType));
            case 1 -> state.with(number, new CarState(car.mass, !car.weighed, car.engineOn, car.shims, car.castorType));
            case 2 -> state.with(number, new CarState(car.mass, car.weighed, !car.engineOn, car.shims, car.castorType));
            case 3 -> state.with(number, new CarState(car.mass, car.weighed, car.engineOn, random.nextInt(7), car.castorType));
            case 4 -> state.with(number, new CarState(car.mass, car.weighed, car.engineOn, car.shims,
                    List.of("hard", "soft", "gone").get(random.nextInt(3))));
            case 5 -> new ShopState(state.cars, 1 + random.nextInt(4) / 5.0, state.castorRating);
            default -> new ShopState(state.cars, state.jointFactor, 60 + random.nextInt(400));
        };
    }

    private static ShopAnswers ask(Engine engine) {
        return ask(engine, subject -> true);
    }

    private static ShopAnswers ask(Engine engine, Predicate<Subject> wanted) {
        return new ShopChecks(engine, CATALOGUE).ask(wanted, Progress.NONE);
    }

    private static Engine engine(ShopSnapshot snapshot) {
        Engine engine = new Engine();
        engine.update(snapshot);
        return engine;
    }

    @Test
    void editsAndUndosGiveTheSameAsStartingAnew() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        Engine kept = new Engine();
        List<ShopState> history = new ArrayList<>(List.of(START));
        Set<Verdict> seen = new HashSet<>();
        for (int edit = 1; edit <= EDITS; edit++) {
            boolean undo = random.nextInt(4) == 0;
            history.add(undo ? history.get(Math.max(0, history.size() - 2 - random.nextInt(5)))
                    : edit(history.get(history.size() - 1), random));
            ShopSnapshot snapshot = snapshot(edit, history.get(history.size() - 1));
            kept.update(snapshot);
            boolean compared = edit % COMPARED == 0;
            if (compared || random.nextInt(40) == 0) {
                String number = "-" + random.nextInt(3);
                Predicate<Subject> wanted = subject -> subject.ownerId().endsWith(number);
                ShopAnswers answers = ask(kept, wanted);
                if (compared) {
                    assertEquals(ask(engine(snapshot), wanted), answers, "edit " + edit + ", seed " + SEED);
                    seen.addAll(answers.findings().stream().map(finding -> finding.verdict()).toList());
                }
            }
        }
        assertEquals(Set.of(Verdict.values()), seen, "the edits reach every verdict");
    }

    @Test
    void changingAPartWorksOutOnlyWhatNamesItsCar() {
        Engine engine = engine(snapshot(1, START));
        ask(engine);
        List<Key<?>> all = engine.recomputed();
        engine.update(snapshot(2, START.with(1, new CarState(310, true, false, 2, "hard"))));
        ask(engine);
        Set<String> again = engine.recomputed().stream().map(Key::toString).collect(Collectors.toSet());
        Set<String> expected = all.stream().map(Key::toString).filter(key -> key.contains("car-1"))
                .filter(key -> !aboutWork(key)).collect(Collectors.toSet());
        expected.add(new SubjectsKey().toString());
        // Who has which gear is gathered again from all cars; where that comes out alike, no answer of another car is asked again.
        expected.add("GearUsesKey[]");
        assertEquals(expected, again);
        assertEquals(again.size(), engine.recomputed().size(), "nothing twice");
        assertFalse(expected.stream().anyMatch(key -> key.contains("car-0") || key.contains("car-2")));
        assertTrue(again.size() < all.size() / 2, again.size() + " of " + all.size());
    }

    /** The work on a car does not follow from its parts. */
    private static boolean aboutWork(String key) {
        return key.startsWith("CarWorkKey") || key.contains("scope=CAR,");
    }

    @Test
    void anEditThatIsTakenBackBeforeAnybodyAsksWorksOutNothing() {
        Engine engine = engine(snapshot(1, START));
        ShopAnswers before = ask(engine);
        engine.update(snapshot(2, START.with(0, new CarState(500, false, true, 6, "soft"))));
        engine.update(snapshot(3, START));
        assertEquals(before.findings(), ask(engine).findings());
        assertEquals(List.of(), engine.recomputed());
    }

    /** What a value reads, found out without the engine's own notes: its key is asked once more, each read is written down. */
    private static Set<Key<?>> reads(Key<?> key, Engine engine) {
        Set<Key<?>> reads = new LinkedHashSet<>();
        key.compute(new Reader() {
            @Override
            public <T> T read(Key<T> wanted) {
                reads.add(wanted);
                return engine.read(wanted, Progress.NONE);
            }
        });
        return reads;
    }

    /** Lists what has to be worked out again: whatever reads an edited record, or a value that such a reader changed. */
    private static Set<Key<?>> dependents(List<Key<?>> all, ShopSnapshot before, ShopSnapshot after) {
        Engine old = engine(before);
        Engine anew = engine(after);
        Set<Key<?>> again = new LinkedHashSet<>();
        // What is read comes before its reader in the list.
        for (Key<?> key : all) {
            if (reads(key, old).stream().anyMatch(read -> (again.contains(read) || !all.contains(read))
                    && !old.read(read, Progress.NONE).equals(anew.read(read, Progress.NONE)))) {
                again.add(key);
            }
        }
        return again;
    }

    private static Map<String, Fact> edited(Fact fact) {
        Map<String, Fact> facts = facts(START);
        facts.put(fact.id(), fact);
        return facts;
    }

    private static DollyFacts thinnerMember() {
        DollyFacts dolly = (DollyFacts) facts(START).get("dolly-1");
        List<MemberFacts> members = new ArrayList<>(dolly.members());
        MemberFacts m = members.get(0);
        members.set(0, new MemberFacts(m.id(), m.name(), m.fromId(), m.toId(), Optional.of("thin"), m.steelId(), m.up(),
                m.releaseFrom(), m.releaseTo(), m.jointFromId(), m.jointToId(), m.unbraced()));
        return new DollyFacts(dolly.id(), dolly.name(), dolly.build(), dolly.mass(), dolly.balancePoint(), dolly.ratedLoad(),
                dolly.examination(), dolly.nodes(), members, dolly.joints(), dolly.castors(), dolly.feet(), dolly.fixtures(),
                dolly.props(), dolly.heights());
    }

    @Test
    void anEditWorksOutExactlyWhatRestsOnIt() {
        for (Fact edit : List.of(rubber(5e5), thinnerMember(), placement("visit", "steep"))) {
            ShopSnapshot before = snapshot(1, START);
            ShopSnapshot after = snapshot(2, START, edited(edit));
            Engine engine = engine(before);
            ask(engine);
            List<Key<?>> all = engine.recomputed();
            Set<Key<?>> listed = dependents(all, before, after);
            engine.update(after);
            ask(engine);
            List<Key<?>> again = engine.recomputed().stream().filter(all::contains).toList();
            assertEquals(listed, new HashSet<>(again), edit.id());
            assertEquals(listed.size(), again.size(), "nothing twice: " + edit.id());
            assertTrue(!again.isEmpty() && again.size() < all.size(), edit.id() + ": " + again.size() + " of " + all.size());
        }
    }
}
