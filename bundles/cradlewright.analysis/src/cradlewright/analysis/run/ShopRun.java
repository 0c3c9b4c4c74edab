package cradlewright.analysis.run;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.CancelledException;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Engines;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.ShopSnapshot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/**
 * One run of checks over a shop from which nothing is kept for a next one, by several threads at once: each takes the next car, dolly or
 * piece of gear with everything that is asked about it. The answers are the same whatever the number of threads.
 */
public final class ShopRun {

    private final Engines engines;
    private final CheckCatalogue asked;
    private final CheckCatalogue all;

    /**
     * Makes a run.
     *
     * @param asked the checks that are asked
     * @param all the checks that what to do is tried against
     * @param threads how many threads work, at least one
     */
    public ShopRun(ShopSnapshot snapshot, CheckCatalogue asked, CheckCatalogue all, int threads) {
        this.engines = new Engines(threads, snapshot);
        this.asked = asked;
        this.all = all;
    }

    /** Returns a reader of what was worked out, and of more; not to be used during {@link #answers}. */
    public Reader reader() {
        return engines.reader();
    }

    /**
     * Asks every check about every subject that {@code wanted} lets through, and tries what to do.
     *
     * @param also what else is worked out about each subject by the thread that has its values at hand
     * @param progress is told of one step a subject, from one thread at a time
     * @throws CancelledException when {@code progress} says so
     */
    public ShopAnswers answers(Predicate<Subject> wanted, BiConsumer<Subject, Reader> also, Progress progress) {
        Engine first = engines.all().get(0);
        List<Subject> subjects = first.read(new SubjectsKey(), progress).stream().filter(wanted).toList();
        progress.begin(subjects.size());
        Map<String, List<Subject>> owners = new LinkedHashMap<>();
        subjects.forEach(subject -> owners.computeIfAbsent(subject.ownerId(), id -> new ArrayList<>()).add(subject));
        Work work = new Work(owners.values(), also, progress);
        List<Thread> workers = new ArrayList<>();
        for (Engine engine : engines.all().subList(1, engines.all().size())) {
            Thread worker = new Thread(() -> work.share(engine), "checks " + (workers.size() + 2));
            worker.setDaemon(true);
            worker.start();
            workers.add(worker);
        }
        work.share(first);
        workers.forEach(ShopRun::await);
        work.rethrow();
        List<Finding> findings = subjects.stream().flatMap(subject -> work.findings.get(subject).stream()).toList();
        return new ShopAnswers(first.snapshot().number(), first.snapshot().name(), subjects, findings);
    }

    private static void await(Thread worker) {
        boolean interrupted = false;
        while (true) {
            try {
                worker.join();
                break;
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** What is left to do, and what was found. */
    private final class Work {

        private final Queue<List<Subject>> left;
        private final Map<Subject, List<Finding>> findings = new ConcurrentHashMap<>();
        private final AtomicReference<Throwable> failure = new AtomicReference<>();
        private final BiConsumer<Subject, Reader> also;
        private final Progress progress;

        Work(Collection<List<Subject>> groups, BiConsumer<Subject, Reader> also, Progress progress) {
            this.left = new ConcurrentLinkedQueue<>(groups);
            this.also = also;
            this.progress = progress;
        }

        /** Takes what is left, piece by piece, until nothing is; after a failure nobody takes more. */
        void share(Engine engine) {
            try {
                List<Subject> group = left.poll();
                while (group != null) {
                    answer(engine, group);
                    group = left.poll();
                }
            } catch (RuntimeException | Error e) {
                failure.compareAndSet(null, e);
                left.clear();
            }
        }

        private void answer(Engine engine, List<Subject> group) {
            Progress watched = new Progress() {
                @Override
                public boolean cancelled() {
                    return progress.cancelled() || failure.get() != null;
                }
            };
            ShopAnswers found = new ShopChecks(engine, asked).ask(group::contains, watched);
            ShopAnswers proven = new ShopChecks(engine, all).prove(found, watched);
            Map<Subject, List<Finding>> sorted = new HashMap<>();
            proven.findings().forEach(finding -> sorted.computeIfAbsent(finding.subject(), s -> new ArrayList<>()).add(finding));
            for (Subject subject : group) {
                also.accept(subject, engine.reader());
                findings.put(subject, sorted.getOrDefault(subject, List.of()));
                synchronized (this) {
                    progress.step(subject.label());
                }
            }
        }

        void rethrow() {
            Throwable e = failure.get();
            if (e instanceof Error error) {
                throw error;
            } else if (e != null) {
                throw (RuntimeException) e;
            }
        }
    }
}
