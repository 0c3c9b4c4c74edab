package cradlewright.analysis.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.CancelledException;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.testshop.DemoShop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Several threads answer as one engine does, on the demo shop; what goes wrong in one of them is not lost. */
class ShopRunTest {

    private static final CheckCatalogue ALL = BuiltInChecks.catalogue();
    /** Quick ones with something to try, so that the test need not ask all. */
    private static final CheckCatalogue SOME = new CheckCatalogue(ALL.all().stream()
            .filter(check -> check.info().id().startsWith("castor.") || check.info().id().startsWith("support.")).toList());

    private static ShopSnapshot shop;

    @BeforeAll
    static void read() {
        shop = DemoShop.on(LocalDate.of(2026, 11, 25), 7);
    }

    /** Steps that were told; begin and step come from one thread at a time. */
    private static final class Told implements Progress {
        private final List<String> steps = new ArrayList<>();
        private int announced;

        @Override
        public void begin(int number) {
            announced = number;
        }

        @Override
        public void step(String what) {
            steps.add(what);
        }
    }

    private static List<Finding> oneEngine() {
        Engine engine = new Engine();
        engine.update(shop);
        ShopChecks checks = new ShopChecks(engine, SOME);
        return checks.prove(checks.ask(subject -> true, Progress.NONE), Progress.NONE).findings();
    }

    @Test
    void anyNumberOfThreadsGivesTheAnswersOfOneEngineInTheSameOrder() {
        List<Finding> expected = oneEngine();
        assertTrue(expected.stream().anyMatch(finding -> finding.remedies().stream().anyMatch(remedy -> remedy.trial().isEmpty())));
        for (int threads : new int[] {1, 2, 3, 8}) {
            Told told = new Told();
            ShopAnswers answers = new ShopRun(shop, SOME, SOME, threads).answers(subject -> true, (subject, reader) -> { }, told);
            assertEquals(expected, answers.findings(), threads + " threads");
            assertEquals(7, answers.snapshot());
            assertEquals(answers.subjects().size(), told.announced);
            assertEquals(answers.subjects().stream().map(Subject::label).sorted().toList(), told.steps.stream().sorted().toList());
        }
    }

    @Test
    void everySubjectIsPreparedOnceByTheThreadThatAnswersIt() {
        Set<String> threads = ConcurrentHashMap.newKeySet();
        List<Subject> prepared = new ArrayList<>();
        ShopRun run = new ShopRun(shop, SOME, SOME, 2);
        ShopAnswers answers = run.answers(subject -> true, (subject, reader) -> {
            threads.add(Thread.currentThread().getName());
            synchronized (prepared) {
                prepared.add(subject);
            }
        }, Progress.NONE);
        assertEquals(new HashSet<>(answers.subjects()), new HashSet<>(prepared));
        assertEquals(answers.subjects().size(), prepared.size());
        assertEquals(2, threads.size(), threads.toString());
        assertEquals(answers.subjects(), run.reader().read(new SubjectsKey()));
    }

    @Test
    void onlyWhatIsWantedIsAsked() {
        String car = shop.all(CarFacts.class).get(0).id();
        ShopAnswers answers = new ShopRun(shop, SOME, SOME, 2).answers(subject -> subject.ownerId().equals(car), (s, r) -> { },
                Progress.NONE);
        assertEquals(Set.of(car), answers.subjects().stream().map(Subject::ownerId).collect(Collectors.toSet()));
        assertFalse(answers.findings().isEmpty());
        assertEquals(List.of(), new ShopRun(shop, SOME, SOME, 2).answers(subject -> false, (s, r) -> { }, Progress.NONE).findings());
    }

    @Test
    void aRunThatIsCalledOffEndsAndSaysSo() {
        AtomicInteger looks = new AtomicInteger();
        Progress impatient = new Progress() {
            @Override
            public boolean cancelled() {
                return looks.incrementAndGet() > 500;
            }
        };
        assertThrows(CancelledException.class,
                () -> new ShopRun(shop, SOME, SOME, 2).answers(subject -> true, (s, r) -> { }, impatient));
    }

    @Test
    void aFailureInAnyThreadIsThrownAndStopsTheOthers() {
        IllegalStateException failure = new IllegalStateException("the last subject");
        List<Subject> subjects = new ShopRun(shop, SOME, SOME, 1).reader().read(new SubjectsKey());
        Optional<Subject> last = Optional.of(subjects.get(subjects.size() - 1));
        for (int threads : new int[] {1, 2, 5}) {
            assertSame(failure, assertThrows(IllegalStateException.class,
                    () -> new ShopRun(shop, SOME, SOME, threads).answers(s -> true, (subject, reader) -> {
                        if (last.filter(subject::equals).isPresent()) {
                            throw failure;
                        }
                    }, Progress.NONE)));
        }
    }

    @Test
    void thereIsAtLeastOneEngine() {
        assertThrows(IllegalArgumentException.class, () -> new ShopRun(shop, SOME, SOME, 0));
    }
}
