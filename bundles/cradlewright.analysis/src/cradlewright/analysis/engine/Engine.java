package cradlewright.analysis.engine;

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

/**
 * Memoised values over a snapshot of the shop. A value is worked out again only when something that it read has changed;
 * when the new value equals the old one, whatever depends on it stays as it is.
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
        private Object value;
        private long changedAt;
        private long verifiedAt;
        private Set<Key<?>> dependencies = Set.of();
    }

    /** Values that nobody asked for through that many updates are forgotten, so that an engine kept all day does not grow without end. */
    private static final int KEPT_UPDATES = 200;

    private final Map<Key<?>, Memo> memos = new HashMap<>();
    private final Deque<Set<Key<?>>> recording = new ArrayDeque<>();
    private final Set<Key<?>> running = new HashSet<>();
    private final List<Key<?>> recomputed = new ArrayList<>();
    private ShopSnapshot snapshot;
    private long revision;
    private Progress progress = Progress.NONE;

    /** Takes a new snapshot; values worked out before are kept until something they read turns out to differ. */
    public void update(ShopSnapshot next) {
        snapshot = Objects.requireNonNull(next);
        revision++;
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

    @SuppressWarnings("unchecked") // a memo is filled only by the compute method of its own key
    private <T> T value(Key<T> key) {
        if (!recording.isEmpty()) {
            recording.peek().add(key);
        }
        return (T) fresh(key).value;
    }

    private Memo fresh(Key<?> key) {
        if (progress.cancelled()) {
            throw new CancelledException();
        }
        Memo memo = memos.get(key);
        if (memo != null && memo.verifiedAt == revision) {
            return memo;
        }
        if (isInput(key)) {
            return input(key, memo);
        }
        if (memo != null && unchangedSince(memo)) {
            memo.verifiedAt = revision;
            return memo;
        }
        return work(key, memo);
    }

    private boolean unchangedSince(Memo memo) {
        for (Key<?> dependency : memo.dependencies) {
            if (fresh(dependency).changedAt > memo.verifiedAt) {
                return false;
            }
        }
        return true;
    }

    private Memo work(Key<?> key, Memo old) {
        if (!running.add(key)) {
            throw new CycleException(key);
        }
        Set<Key<?>> reads = new LinkedHashSet<>();
        recording.push(reads);
        Object value;
        try {
            value = key.compute(this::value);
        } finally {
            recording.pop();
            running.remove(key);
        }
        recomputed.add(key);
        return store(key, old, value, reads);
    }

    private Memo store(Key<?> key, Memo old, Object value, Set<Key<?>> reads) {
        Memo memo = old == null ? new Memo() : old;
        if (old == null || !Objects.equals(old.value, value)) {
            memo.value = value;
            memo.changedAt = revision;
        }
        memo.verifiedAt = revision;
        memo.dependencies = reads;
        memos.put(key, memo);
        return memo;
    }

    private static boolean isInput(Key<?> key) {
        return key instanceof FactKey || key instanceof IdsKey || key instanceof SettingsKey || key instanceof TodayKey;
    }

    private Memo input(Key<?> key, Memo old) {
        Object value;
        if (key instanceof FactKey<?> fact) {
            value = snapshot.find(fact.type(), fact.id());
        } else if (key instanceof IdsKey<?> ids) {
            value = snapshot.all(ids.type()).stream().map(Fact::id).toList();
        } else if (key instanceof SettingsKey) {
            value = snapshot.settings();
        } else {
            value = snapshot.today();
        }
        return store(key, old, value, Set.of());
    }
}
