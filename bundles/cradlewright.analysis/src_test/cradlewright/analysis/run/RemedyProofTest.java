package cradlewright.analysis.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Remedy.Proof;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A made-up beam, named by the length of a record's name: longer is stronger, and heavier for what carries it. */
class RemedyProofTest {

    /** Demand and capacity of a question that reads one number. */
    private interface Judge {
        double use(double size);
    }

    private record Made(CheckInfo info, String objectId, Judge judge, List<Remedy> remedies) implements Check {
        @Override
        public Scope scope() {
            return Scope.VISIT;
        }

        @Override
        public List<Finding> examine(Subject subject, Reader reader) {
            double use = judge.use(size(reader));
            FindingBuilder finding = new FindingBuilder(info, subject, objectId, objectId).against(Amount.force(use), Amount.force(1),
                    "made up");
            Verdict verdict = Verdict.of(use, 1, 0.1);
            if (verdict != Verdict.HOLDS) {
                remedies.forEach(finding::remedy);
            }
            return List.of(finding.say(verdict, "So it is."));
        }
    }

    private static final LocalDate DAY = LocalDate.of(2026, 3, 31);

    private static double size(Reader reader) {
        return reader.read(new FactKey<>(PlacementFacts.class, "beam")).map(fact -> fact.name().length()).orElse(0);
    }

    private static Made made(String id, Judge judge, Remedy... remedies) {
        return new Made(new CheckInfo(id, "Does it hold?", "common practice, no source", "Keep off.", List.of(), List.of()), id + " object",
                judge, List.of(remedies));
    }

    private static Remedy longer(int size, Trial.Reach reach, String... ends) {
        Fact beam = new PlacementFacts("beam", "x".repeat(size), Optional.empty(), Optional.empty());
        return Remedy.trial("Size " + size + ".", "size", new Trial(Change.of(beam), reach, Set.of(ends)));
    }

    private static CarFacts car(String id) {
        SetupFacts setup = new SetupFacts(id + " setup", "setup", List.of(), CarrierKind.DOLLY, Optional.of("beam"), Optional.empty(),
                Optional.empty(), Vec3.ZERO, 0, List.of(), Optional.empty(), SetupFacts.Weather.UNKNOWN);
        VisitFacts visit = new VisitFacts(id + " visit", "visit", Optional.empty(), Optional.of(setup.id()), Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new CarFacts(id, id, true, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(setup), List.of(visit), List.of());
    }

    private static Map<String, Fact> facts(int cars) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        IntStream.range(0, cars).mapToObj(i -> car("car" + i)).forEach(car -> facts.put(car.id(), car));
        facts.put("beam", new PlacementFacts("beam", "x", Optional.empty(), Optional.empty()));
        return facts;
    }

    private static List<Remedy> tried(Check... checks) {
        return tried(1, checks).get(0).remedies();
    }

    private static List<Finding> tried(int cars, Check... checks) {
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), DAY, facts(cars)));
        ShopChecks shop = new ShopChecks(engine, new CheckCatalogue(List.of(checks)));
        return shop.prove(shop.ask(subject -> subject.ownerId().equals("car0"), Progress.NONE), Progress.NONE).findings();
    }

    private static List<Proof> proofs(List<Remedy> remedies) {
        return remedies.stream().map(Remedy::proof).toList();
    }

    @Test
    void theSmallestSizeThatMendsWithRoomToSpareIsNamedAlone() {
        // 3/size: size 2 stops at 1.5, 3 is tight at 1, 4 holds at 0.75
        List<Remedy> remedies = tried(made("a.strong", size -> 3 / size, longer(2, Trial.Reach.THIS_VISIT), longer(3,
                Trial.Reach.THIS_VISIT),
                longer(4, Trial.Reach.THIS_VISIT), longer(5, Trial.Reach.THIS_VISIT)));
        assertEquals(List.of(Remedy.mends("Size 4.", Verdict.HOLDS)), remedies);
    }

    @Test
    void aSizeThatIsOnlyJustEnoughIsNamedWhenThereIsNoBetterOne() {
        List<Remedy> remedies = tried(made("a.strong", size -> 3 / size, longer(2, Trial.Reach.THIS_VISIT), longer(3,
                Trial.Reach.THIS_VISIT)));
        assertEquals(List.of(Remedy.mends("Size 3.", Verdict.TIGHT)), remedies);
    }

    @Test
    void whatHarmsAnotherAnswerIsNotOfferedAsMending() {
        // weight: size/3.5 stops from size 4 on, where strength holds; size 3 is tight in both
        Check strong = made("a.strong", size -> 3 / size, longer(4, Trial.Reach.THIS_VISIT));
        List<Remedy> remedies = tried(strong, made("b.light", size -> size / 3.5));
        assertEquals(List.of(Proof.HARMS, Proof.NONE), proofs(remedies));
        assertEquals(Optional.of(Verdict.HOLDS), remedies.get(0).after());
        assertEquals("b.light object", remedies.get(0).harms().get(0).objectName());
        assertEquals(Verdict.STOP, remedies.get(0).harms().get(0).verdict());
    }

    @Test
    void anotherStopThatGetsWorseIsAHarmThoughItsWordStays() {
        Check strong = made("a.strong", size -> 3 / size, longer(4, Trial.Reach.THIS_VISIT));
        assertEquals(Proof.HARMS, tried(strong, made("b.light", size -> 1 + size)).get(0).proof());
        assertEquals(Proof.MENDS, tried(strong, made("b.light", size -> 9 - size)).get(0).proof());
    }

    @Test
    void everybodyWhoUsesTheRecordIsAsked() {
        Check strong = made("a.strong", size -> 3 / size, longer(4, Trial.Reach.EVERY_USER));
        Check light = new Sometimes(made("b.light", size -> size / 3.5), "car1", 9);
        Remedy remedy = tried(2, strong, light).get(0).remedies().get(0);
        assertEquals(Proof.HARMS, remedy.proof());
        assertEquals("car1", remedy.harms().get(0).subject().ownerId());
        Check here = made("a.strong", size -> 3 / size, longer(4, Trial.Reach.THIS_VISIT));
        assertEquals(Proof.MENDS, tried(2, here, light).get(0).remedies().get(0).proof());
    }

    /** A check that has answers only for one car, or only while the beam is short. */
    private record Sometimes(Check check, String carId, double longest) implements Check {
        @Override
        public CheckInfo info() {
            return check.info();
        }

        @Override
        public Scope scope() {
            return check.scope();
        }

        @Override
        public List<Finding> examine(Subject subject, Reader reader) {
            boolean asked = subject.ownerId().equals(carId) && size(reader) <= longest;
            return asked ? check.examine(subject, reader) : List.of();
        }
    }

    @Test
    void whatHeldAndHasNoAnswerAnyMoreIsAHarmUnlessTheChangeEndsTheQuestion() {
        Check gone = new Sometimes(made("b.asked", size -> 0), "car0", 1);
        Remedy harms = tried(made("a.strong", size -> 3 / size, longer(4, Trial.Reach.THIS_VISIT)), gone).get(0);
        assertEquals(Verdict.CANT_SAY, harms.harms().get(0).verdict());
        assertEquals(Proof.MENDS, tried(made("a.strong", size -> 3 / size, longer(4, Trial.Reach.THIS_VISIT, "b")), gone).get(0).proof());
    }

    @Test
    void theOthersAreAskedOnlyAboutWhatMendsItsOwnAnswer() {
        List<Double> asked = new ArrayList<>();
        Check other = made("b.light", size -> {
            asked.add(size);
            return 0;
        });
        tried(made("a.strong", size -> 3 / size, longer(2, Trial.Reach.THIS_VISIT), longer(4, Trial.Reach.THIS_VISIT)), other);
        assertEquals(List.of(1.0, 4.0), asked, "as it is and at size 4; at size 2 it stops as before");
    }

    @Test
    void trialsAreBoundedAndWhatWasNotTriedIsSaidToBe() {
        Remedy[] none = IntStream.rangeClosed(2, RemedyProof.MOST_TRIALS + 4).mapToObj(size -> longer(size, Trial.Reach.THIS_VISIT))
                .toArray(Remedy[]::new);
        List<Remedy> remedies = tried(made("a.strong", size -> 100 / size, none));
        assertEquals(List.of(Proof.UNTRIED, Proof.NONE), proofs(remedies));
        assertEquals("Size " + (RemedyProof.MOST_TRIALS + 2) + ".", remedies.get(0).words());
        assertEquals("Nothing that was tried is enough.", remedies.get(1).words());
    }

    @Test
    void anEditThatTheProofRestsOnIsFollowed() {
        Map<String, Fact> facts = facts(1);
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), DAY, facts));
        CheckCatalogue checks = new CheckCatalogue(List.of(made("a.strong", size -> 3 / size, longer(4, Trial.Reach.THIS_VISIT)),
                new Sometimes(made("b.other", size -> size / 3.5), "car0", 9)));
        ProvenKey key = new ProvenKey(checks, engine.read(new SubjectsKey(), Progress.NONE).stream()
                .filter(subject -> subject.scope() == Scope.VISIT).findFirst().orElseThrow());
        assertEquals(Proof.HARMS, engine.read(key, Progress.NONE).get(0).remedies().get(0).proof());
        engine.update(new ShopSnapshot(2, "Shop", SettingsFacts.commonPractice(), DAY, facts));
        engine.read(key, Progress.NONE);
        assertEquals(List.of(), engine.recomputed(), "nothing was edited, nothing is worked out");
        facts.put("beam", new PlacementFacts("beam", "yyyy", Optional.empty(), Optional.empty()));
        engine.update(new ShopSnapshot(3, "Shop", SettingsFacts.commonPractice(), DAY, facts));
        assertEquals(List.of(), engine.read(key, Progress.NONE).get(0).remedies());
    }

    @Test
    void givesTheRecordsOnWhichWhatMendsWasTried() {
        Remedy longer = longer(4, Trial.Reach.EVERY_USER);
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), DAY, facts(1)));
        ShopChecks shop = new ShopChecks(engine, new CheckCatalogue(List.of(made("a.strength", size -> 2 / size, longer))));
        Finding proven = shop.prove(shop.ask(subject -> true, Progress.NONE), Progress.NONE).findings().get(0);
        Remedy mends = proven.remedies().get(0);
        assertEquals(Proof.MENDS, mends.proof());
        assertEquals(longer.trial(), shop.trial(proven, mends, Progress.NONE));
        assertEquals(Optional.empty(), shop.trial(proven, Remedy.advice("Mind your toes."), Progress.NONE));

        Map<String, Fact> mended = facts(1);
        mended.put("beam", new PlacementFacts("beam", "yyyy", Optional.empty(), Optional.empty()));
        engine.update(new ShopSnapshot(2, "Shop", SettingsFacts.commonPractice(), DAY, mended));
        assertEquals(Optional.empty(), shop.trial(proven, mends, Progress.NONE), "the shop is another one now");
    }

    /** Where no rule reaches, CAN'T SAY names what to do and nothing missing, also beside a check that has something to try. */
    @Test
    void anAnswerThatNamesOnlyARemedyStandsBesideOneThatIsTried() {
        CheckInfo info = new CheckInfo("b.rule", "Does a rule reach?", "common practice, no source", "Keep off.", List.of(), List.of());
        Check beyond = new Check() {
            @Override
            public CheckInfo info() {
                return info;
            }

            @Override
            public Scope scope() {
                return Scope.VISIT;
            }

            @Override
            public List<Finding> examine(Subject subject, Reader reader) {
                return List.of(new FindingBuilder(info, subject, "beam", "beam").remedy(Remedy.advice("Ask an engineer."))
                        .cantSay("No rule reaches so far.", List.of()));
            }
        };
        List<Finding> found = tried(1, made("a.strength", size -> 2 / size, longer(4, Trial.Reach.EVERY_USER)), beyond);
        assertEquals(List.of(Verdict.STOP, Verdict.CANT_SAY), found.stream().map(Finding::verdict).toList());
        assertEquals(List.of(Remedy.advice("Ask an engineer.")), found.get(1).remedies());
    }
}
