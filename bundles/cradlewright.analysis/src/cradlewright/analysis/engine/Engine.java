package cradlewright.analysis.engine;

import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Memoised values over a snapshot of the shop. A value is worked out again only when something that it read has changed;
 * when the new value equals the old one, whatever depends on it stays as it is. Of values that take much room only those
 * worked out last are kept.
 *
 * <p>Not safe for use by several threads at once: one job owns an engine.
 */
public final class Engine {

    /** A record of the shop by its id. */
    public record FactKey<T extends Fact>(Class<T> type, String id) implements Key<Optional<T>> {
        @Override
        public Optional<T> compute(Reader reader) {
            throw new IllegalStateException("an input is not worked out: " + this);
        }
    }

    /** The ids of all records of a type, in file order. */
    public record IdsKey<T extends Fact>(Class<T> type) implements Key<List<String>> {
        @Override
        public List<String> compute(Reader reader) {
            throw new IllegalStateException("an input is not worked out: " + this);
        }
    }

    /** What the shop has settled. */
    public record SettingsKey() implements Key<SettingsFacts> {
        @Override
        public SettingsFacts compute(Reader reader) {
            throw new IllegalStateException("an input is not worked out: " + this);
        }
    }

    /** The day the answers are for. */
    public record TodayKey() implements Key<LocalDate> {
        @Override
        public LocalDate compute(Reader reader) {
            throw new IllegalStateException("an input is not worked out: " + this);
        }
    }

    private static final class Memo {
        private final Key<?> key;
        private Object value;
        private long changedAt;
        private long verifiedAt;
        private Memo[] dependencies = {};
        /** Whether the value was let go to save room; it is the same when it is worked out again. */
        private boolean dropped;
        private long keptAs;

        Memo(Key<?> key) {
            this.key = key;
        }
    }

    /** A bulky value in the order of working out; outdated when the memo was worked out once more since. */
    private record Bulky(Memo memo, long number) {
    }

    /** Bulky values that are kept: those of the cars at hand, however many there are in the shop. */
    static final int KEPT_BULKY = 2000;

    /** Values that nobody asked for through that many updates are forgotten, so that an engine kept all day does not grow without end. */
    private static final int KEPT_UPDATES = 200;

    private final int keptBulky;
    private final Map<Key<?>, Memo> memos = new HashMap<>();
    private final Deque<Set<Memo>> recording = new ArrayDeque<>();
    private final Deque<Bulky> bulky = new ArrayDeque<>();
    private long bulkyStored;
    private final Set<Key<?>> running = new HashSet<>();
    private final List<Key<?>> recomputed = new ArrayList<>();
    private final Reader recorder = new Recorder();
    private ShopSnapshot snapshot;
    private long revision;
    /** What was tried last on this snapshot: as a rule the next question is about the same change. */
    private WhatIf tried;
    private Progress progress = Progress.NONE;

    /** Creates an engine without a snapshot. */
    public Engine() {
        this(KEPT_BULKY);
    }

    Engine(int keptBulky) {
        this.keptBulky = keptBulky;
    }

    /** Takes a new snapshot; values worked out before are kept until something they read turns out to differ. */
    public void update(ShopSnapshot next) {
        snapshot = Objects.requireNonNull(next);
        revision++;
        tried = null;
        recomputed.clear();
        // Whatever a value depends on was looked at no earlier than the value itself, so no value outlives what it rests on.
        memos.values().removeIf(memo -> memo.verifiedAt < revision - KEPT_UPDATES);
    }

    /** Returns the snapshot in use. */
    public ShopSnapshot snapshot() {
        return snapshot;
    }

    /** Returns the keys that were worked out since the last update, in order; inputs are not among them. */
    public List<Key<?>> recomputed() {
        return List.copyOf(recomputed);
    }

    /** Returns the number of values that are remembered, inputs included. */
    public int size() {
        return memos.size();
    }

    /** Returns the value named by the key; throws CancelledException when {@code watched} says so in between. */
    public <T> T read(Key<T> key, Progress watched) {
        progress = watched;
        try {
            return value(key);
        } finally {
            progress = Progress.NONE;
            recording.clear();
            running.clear();
        }
    }

    /** Returns a reader for whoever shows values and watches no progress. */
    public Reader reader() {
        return new Reader() {
            @Override
            public <T> T read(Key<T> key) {
                return Engine.this.read(key, Progress.NONE);
            }
        };
    }

    @SuppressWarnings("unchecked") // a memo is filled only by the compute method of its own key
    private <T> T value(Key<T> key) {
        Memo known = memos.get(key);
        Memo memo = filled(known == null ? new Memo(key) : known);
        if (!recording.isEmpty()) {
            recording.peek().add(memo);
        }
        return (T) memo.value;
    }

    private Memo filled(Memo memo) {
        fresh(memo);
        if (memo.dropped) {
            work(memo, true);
        }
        return memo;
    }

    /** Reads for a value that is being worked out. */
    private final class Recorder implements Reader {

        @Override
        public <T> T read(Key<T> key) {
            return value(key);
        }

        @Override
        public Reader after(Change change) {
            return whatIf(change).reader();
        }
    }

    private WhatIf whatIf(Change change) {
        if (tried == null || !tried.change().equals(change)) {
            tried = new WhatIf(this, change);
        }
        return tried;
    }

    /** Returns an input and notes that the value that is being worked out depends on it. */
    Object readInput(Key<?> key) {
        return value(key);
    }

    /** Tells whether a value was worked out before. */
    boolean remembers(Key<?> key) {
        return memos.containsKey(key);
    }

    /** Returns a value that was worked out before, without noting that anything depends on it. */
    Object remembered(Key<?> key) {
        return filled(memos.get(key)).value;
    }

    /** Returns what a value that was worked out before has read. */
    List<Key<?>> dependencies(Key<?> key) {
        return Stream.of(fresh(memos.get(key)).dependencies).<Key<?>>map(memo -> memo.key).toList();
    }

    /** Throws CancelledException when the run was called off. */
    void stopWhenCancelled() {
        if (progress.cancelled()) {
            throw new CancelledException();
        }
    }

    private Memo fresh(Memo memo) {
        stopWhenCancelled();
        if (memo.verifiedAt == revision) {
            return memo;
        }
        if (isInput(memo.key)) {
            store(memo, input(memo.key), false);
        } else if (memo.verifiedAt > 0 && unchangedSince(memo)) {
            memo.verifiedAt = revision;
        } else {
            work(memo, false);
        }
        return memo;
    }

    private boolean unchangedSince(Memo memo) {
        for (Memo dependency : memo.dependencies) {
            if (changed(dependency, memo.verifiedAt)) {
                return false;
            }
        }
        return true;
    }

    private boolean changed(Memo dependency, long since) {
        try {
            return fresh(dependency).changedAt > since;
        } catch (CancelledException | CycleException e) {
            throw e;
        } catch (RuntimeException e) {
            // Whoever reads it has to meet the failure by itself: it may know what to do about it.
            return true;
        }
    }

    private void work(Memo memo, boolean sameAsBefore) {
        if (!running.add(memo.key)) {
            throw new CycleException(memo.key);
        }
        Set<Memo> reads = new LinkedHashSet<>();
        recording.push(reads);
        Object value;
        try {
            value = memo.key.compute(recorder);
        } catch (RuntimeException e) {
            noteForReader(reads);
            throw e;
        } finally {
            recording.pop();
            running.remove(memo.key);
        }
        recomputed.add(memo.key);
        memo.dependencies = reads.toArray(Memo[]::new);
        store(memo, value, sameAsBefore);
    }

    /** A reader that gets over the failure has to look again when something changes that the failure rests on. */
    private void noteForReader(Set<Memo> reads) {
        Set<Memo> failed = recording.pop();
        if (!recording.isEmpty()) {
            recording.peek().addAll(reads);
        }
        recording.push(failed);
    }

    private void store(Memo memo, Object value, boolean sameAsBefore) {
        if (memo.dropped || memo.verifiedAt == 0 || !Objects.equals(memo.value, value)) {
            memo.value = value;
            memo.changedAt = sameAsBefore ? memo.changedAt : revision;
        }
        memo.dropped = false;
        memo.verifiedAt = revision;
        memos.put(memo.key, memo);
        if (memo.key.bulky()) {
            memo.keptAs = ++bulkyStored;
            bulky.add(new Bulky(memo, memo.keptAs));
            if (bulky.size() > keptBulky) {
                drop(bulky.remove());
            }
        }
    }

    private static void drop(Bulky oldest) {
        if (oldest.memo.keptAs == oldest.number) {
            oldest.memo.value = null;
            oldest.memo.dropped = true;
        }
    }

    static boolean isInput(Key<?> key) {
        return key instanceof FactKey || key instanceof IdsKey || key instanceof SettingsKey || key instanceof TodayKey;
    }

    private Object input(Key<?> key) {
        if (key instanceof FactKey<?> fact) {
            return snapshot.find(fact.type(), fact.id());
        }
        if (key instanceof IdsKey<?> ids) {
            return snapshot.all(ids.type()).stream().map(Fact::id).toList();
        }
        return key instanceof SettingsKey ? snapshot.settings() : snapshot.today();
    }
}
