package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Questions to the open shop: they go before a run of the checks, leave nothing behind, and agree with an engine of their own. */
class QuestionsTest {

    private static WorkingShop shop;

    @BeforeAll
    static void open() throws Exception {
        shop = DemoShop.open(DemoShop.copy());
    }

    @AfterAll
    static void close() {
        WorkingShop.close();
    }

    /** How many records the shop has; slow when it is told to be. */
    private record CountKey(long pause) implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            try {
                Thread.sleep(pause);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return 42;
        }
    }

    private record BrokenKey() implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            throw new IllegalStateException("on purpose");
        }
    }

    @Test
    void aQuestionIsAnsweredWhileTheChecksRunAndTheyGoOnAfterwards() {
        shop.checkNow();
        List<Integer> found = new ArrayList<>();
        shop.ask(new CountKey(0), found::add);
        Bot.await("the answer comes", () -> !found.isEmpty());
        assertTrue(shop.workingOut(), "the question did not wait for the checks");
        assertEquals(List.of(42), found);
        DemoShop.awaitAnswers();
        assertEquals(WorkingShop.State.CURRENT, shop.state());
    }

    @Test
    void whatWouldBeAgreesWithAnEngineOfItsOwnAndChangesNothing() {
        DemoShop.awaitAnswers();
        ShopSnapshot before = shop.snapshot();
        SettingsFacts fewer = before.settings().withWalkingSpeed(before.settings().walkingSpeed() * 2);
        Change change = Change.of(fewer);
        Predicate<Subject> wanted = subject -> subject.scope() == Scope.VISIT && subject.label().contains("coupe, white");
        List<ShopAnswers> found = new ArrayList<>();
        shop.foresee(change, wanted, found::add);
        Bot.await("the answer comes", () -> !found.isEmpty());
        ShopSnapshot changed = new ShopSnapshot(before.number(), before.name(), fewer, before.today(), before.facts());
        List<Finding> expected = anew(changed, wanted);
        assertFalse(expected.isEmpty());
        assertEquals(expected, bare(found.get(0).findings()));
        assertNotEquals(anew(before, wanted), expected, "the change makes a difference");
        assertSame(before, shop.snapshot());
        assertEquals(WorkingShop.State.CURRENT, shop.state());
        assertFalse(shop.stack().canUndo());
    }

    private static List<Finding> anew(ShopSnapshot snapshot, Predicate<Subject> wanted) {
        Engine engine = new Engine();
        engine.update(snapshot);
        return bare(new ShopChecks(engine, BuiltInChecks.catalogue()).ask(wanted, Progress.NONE).findings());
    }

    /** What to do is not looked for in what is not yet so. */
    private static List<Finding> bare(List<Finding> findings) {
        return findings.stream().map(finding -> finding.withRemedies(List.of())).toList();
    }

    @Test
    void aQuestionThatWasGivenUpIsNotAnswered() {
        List<Integer> found = new ArrayList<>();
        Question slow = shop.ask(new CountKey(300), found::add);
        slow.giveUp();
        List<Integer> next = new ArrayList<>();
        shop.ask(new CountKey(1), next::add);
        Bot.await("the next one is answered", () -> !next.isEmpty());
        Bot.settle();
        assertEquals(List.of(), found);
    }

    @Test
    void aQuestionThatBreaksOffSaysSo() {
        List<RuntimeException> why = new ArrayList<>();
        shop.ask(new BrokenKey(), new Answer<Integer>() {
            @Override
            public void is(Integer value) {
                throw new AssertionError("no answer was expected");
            }

            @Override
            public void failed(RuntimeException reason) {
                why.add(reason);
            }
        });
        Bot.await("it breaks off", () -> !why.isEmpty());
        assertEquals("on purpose", why.get(0).getMessage());
    }
}
