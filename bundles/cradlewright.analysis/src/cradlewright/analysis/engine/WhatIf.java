package cradlewright.analysis.engine;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.SettingsKey;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Values over the shop as it would be after a change. A value that the engine remembers is taken over when everything that it read is
 * the same after the change; all else is worked out anew, once for all who ask about the same change. Every input that is looked at is
 * noted with each of them, so that the answer is worked out again when one of them is edited.
 */
final class WhatIf {

    /** A value after the change and what it was worked out from; compared as an object. */
    private static final class Found {
        private final Key<?> key;
        private final Object value;
        private final Set<Found> reads;

        Found(Key<?> key, Object value, Set<Found> reads) {
            this.key = key;
            this.value = value;
            this.reads = reads;
        }
    }

    private final Engine engine;
    private final Change change;
    private final Map<Key<?>, Found> found = new HashMap<>();
    private final Deque<Set<Found>> reading = new ArrayDeque<>();
    private final Set<Key<?>> running = new HashSet<>();

    WhatIf(Engine engine, Change change) {
        this.engine = engine;
        this.change = change;
    }

    Change change() {
        return change;
    }

    /** Returns a reader for the value of the engine that is being worked out. */
    Reader reader() {
        return new Asking();
    }

    /** Reads for a value of the engine, with which every input beneath is noted. */
    private final class Asking implements Reader {

        private final Set<Found> noted = Collections.newSetFromMap(new IdentityHashMap<>());

        @Override
        @SuppressWarnings("unchecked") // a value is stored only under its own key
        public <T> T read(Key<T> key) {
            Set<Found> reads = new LinkedHashSet<>();
            reading.push(reads);
            try {
                return (T) value(key);
            } finally {
                reading.pop();
                reads.forEach(this::note);
            }
        }

        @Override
        public boolean tried() {
            return true;
        }

        private void note(Found value) {
            if (noted.add(value)) {
                if (Engine.isInput(value.key)) {
                    engine.readInput(value.key);
                }
                value.reads.forEach(this::note);
            }
        }
    }

    /** Reads for a value that is worked out after the change. */
    private final class Beneath implements Reader {

        @Override
        @SuppressWarnings("unchecked") // a value is stored only under its own key
        public <T> T read(Key<T> key) {
            return (T) value(key);
        }

        @Override
        public boolean tried() {
            return true;
        }
    }

    private Object value(Key<?> key) {
        engine.stopWhenCancelled();
        Found known = found.get(key);
        if (known == null) {
            known = Engine.isInput(key) ? new Found(key, input(key), Set.of()) : workedOut(key);
            found.put(key, known);
        }
        reading.peek().add(known);
        return known.value;
    }

    private Found workedOut(Key<?> key) {
        if (!running.add(key)) {
            throw new CycleException(key);
        }
        Set<Found> reader = reading.peek();
        Set<Found> reads = new LinkedHashSet<>();
        reading.push(reads);
        try {
            return new Found(key, untouched(key) ? engine.remembered(key) : key.compute(new Beneath()), reads);
        } catch (RuntimeException e) {
            // Whoever gets over the failure rests on what it rests on.
            reader.addAll(reads);
            throw e;
        } finally {
            reading.pop();
            running.remove(key);
        }
    }

    private boolean untouched(Key<?> key) {
        if (!engine.remembers(key)) {
            return false;
        }
        try {
            for (Key<?> dependency : engine.dependencies(key)) {
                Object then = value(dependency);
                Object now = engine.remembered(dependency);
                if (then != now && !Objects.equals(then, now)) {
                    return false;
                }
            }
            return true;
        } catch (CancelledException | CycleException e) {
            throw e;
        } catch (RuntimeException e) {
            // Something beneath breaks off; whoever reads it has to meet the failure by itself.
            return false;
        }
    }

    private Object input(Key<?> key) {
        Object now = engine.readInput(key);
        if (key instanceof FactKey<?> fact) {
            Optional<Fact> changed = change.find(fact.id());
            return changed.isPresent() ? changed.filter(fact.type()::isInstance) : now;
        }
        if (key instanceof IdsKey<?> ids) {
            List<Object> all = new ArrayList<>((List<?>) now);
            change.facts().stream().filter(fact -> ids.type().isInstance(fact) && !all.contains(fact.id())).map(Fact::id).forEach(all::add);
            return all.equals(now) ? now : List.copyOf(all);
        }
        return key instanceof SettingsKey && change.settings().isPresent() ? change.settings().get() : now;
    }
}
