package cradlewright.benchmarks;

import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the mechanics of a check take alone: every contact problem, tipping limit and frame that a run solved, solved once more
 * on the same inputs, which are ready. Dollies are assembled and condensed again, once each, as in the run.
 */
final class BareSolves {

    /** Values that are little but solutions of mechanics. */
    private static final Set<String> SOLVED = Set.of("LoadsKey", "TipKey", "LiftOffKey", "RaisedKey");
    /** What they share and what is mechanics as well. */
    private static final Set<String> SHARED = Set.of("SettingKey", "DollyBodyKey");

    private final Engine engine;
    private final List<Key<?>> solved;

    BareSolves(Engine engine) {
        this.engine = engine;
        solved = engine.recomputed().stream().filter(key -> SOLVED.contains(key.getClass().getSimpleName())).toList();
    }

    int count() {
        return solved.size();
    }

    Clock.Span run() {
        Reader reader = new Reader() {
            private final Map<Key<?>, Object> shared = new HashMap<>();

            @Override
            @SuppressWarnings("unchecked") // filled by the compute method of its own key
            public <T> T read(Key<T> key) {
                if (!SHARED.contains(key.getClass().getSimpleName())) {
                    return engine.read(key, Progress.NONE);
                }
                Object value = shared.get(key);
                if (value == null) {
                    value = key.compute(this);
                    shared.put(key, value);
                }
                return (T) value;
            }
        };
        Clock clock = new Clock();
        for (Key<?> key : solved) {
            key.compute(reader);
        }
        return clock.read();
    }
}
