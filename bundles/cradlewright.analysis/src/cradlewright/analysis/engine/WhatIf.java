package cradlewright.analysis.engine;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.SettingsKey;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Values over the shop as it would be after a change. A value that the engine remembers is taken over when everything that it read is
 * the same after the change; all else is worked out anew. Every input that is looked at is noted with whoever asked for the change, so
 * that the answer is worked out again when one of them is edited.
 */
final class WhatIf implements Reader {

    private final Engine engine;
    private final Change change;
    private final Map<Key<?>, Object> values = new HashMap<>();
    private final Set<Key<?>> running = new HashSet<>();

    WhatIf(Engine engine, Change change) {
        this.engine = engine;
        this.change = change;
    }

    @Override
    @SuppressWarnings("unchecked") // a value is stored only under its own key
    public <T> T read(Key<T> key) {
        return (T) value(key);
    }

    private Object value(Key<?> key) {
        engine.stopWhenCancelled();
        if (values.containsKey(key)) {
            return values.get(key);
        }
        Object value;
        if (Engine.isInput(key)) {
            value = input(key);
        } else {
            if (!running.add(key)) {
                throw new CycleException(key);
            }
            try {
                value = untouched(key) ? engine.remembered(key) : key.compute(this);
            } finally {
                running.remove(key);
            }
        }
        values.put(key, value);
        return value;
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
