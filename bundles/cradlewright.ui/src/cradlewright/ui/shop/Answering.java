package cradlewright.ui.shop;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.engine.CancelledException;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;

/**
 * One engine for the checks of the whole shop and for single questions, used by one thread at a time. Questions go first: a run of the
 * checks steps back for them and goes on from what it knows already.
 */
final class Answering {

    /** How often a run that stepped back looks whether it is still wanted, in milliseconds. */
    private static final long LOOK_AGAIN = 50;

    private final Engine engine = new Engine();
    private final ShopChecks checks;
    private final ReentrantLock turn = new ReentrantLock();
    private final Condition quiet = turn.newCondition();
    private final AtomicInteger waiting = new AtomicInteger();
    private volatile ShopSnapshot latest;

    /** Uses the checks in force. */
    Answering(CheckCatalogue catalogue) {
        checks = new ShopChecks(engine, catalogue);
    }

    /** What is asked of the engine or of the checks on it. */
    @FunctionalInterface
    interface Asked<T> {
        T of(Engine engine, ShopChecks checks, Progress progress);
    }

    /** Takes the snapshot that answers are for from now on. */
    void take(ShopSnapshot snapshot) {
        latest = snapshot;
    }

    /** Tells that a question wants its turn; each such call must be followed by one of {@link #answer}. */
    void announceQuestion() {
        waiting.incrementAndGet();
    }

    /** Answers an announced question on the calling thread; empty when it was given up. */
    <T> Optional<T> answer(Asked<T> question, BooleanSupplier givenUp) {
        turn.lock();
        try {
            bringUpToDate();
            return givenUp.getAsBoolean() ? Optional.empty() : Optional.of(question.of(engine, checks, new Progress() {
                @Override
                public boolean cancelled() {
                    return givenUp.getAsBoolean();
                }
            }));
        } catch (CancelledException e) {
            return Optional.empty();
        } finally {
            waiting.decrementAndGet();
            quiet.signalAll();
            turn.unlock();
        }
    }

    /** Asks every check about everything and tries what to do, on the calling thread; empty when the progress called it off. */
    Optional<ShopAnswers> checkAll(Progress progress) {
        Progress patient = new SteppingBack(progress);
        while (!progress.cancelled()) {
            turn.lock();
            try {
                while (waiting.get() > 0 && !progress.cancelled()) {
                    quiet.await(LOOK_AGAIN, TimeUnit.MILLISECONDS);
                }
                bringUpToDate();
                return Optional.of(checks.prove(checks.ask(subject -> true, patient), patient));
            } catch (CancelledException e) {
                continue;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            } finally {
                turn.unlock();
            }
        }
        return Optional.empty();
    }

    private void bringUpToDate() {
        ShopSnapshot now = latest;
        if (engine.snapshot() == null || engine.snapshot().number() != now.number()) {
            engine.update(now);
        }
    }

    /** Also calls a run off, for now, when a question wants its turn. */
    private final class SteppingBack implements Progress {

        private final Progress run;

        SteppingBack(Progress run) {
            this.run = run;
        }

        @Override
        public void begin(int steps) {
            run.begin(steps);
        }

        @Override
        public void step(String what) {
            run.step(what);
        }

        @Override
        public boolean cancelled() {
            return run.cancelled() || waiting.get() > 0;
        }
    }
}
