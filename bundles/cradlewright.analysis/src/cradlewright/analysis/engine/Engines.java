package cradlewright.analysis.engine;

import cradlewright.analysis.facts.ShopSnapshot;
import java.util.ArrayList;
import java.util.List;

/**
 * Several engines over one snapshot, so that as many threads can work at once, each with an engine of its own. What one has worked out
 * the others do not know: whoever shares out the work gives what belongs together to one of them.
 */
public final class Engines {

    private final List<Engine> engines = new ArrayList<>();

    /**
     * Makes engines that hold a snapshot. Together they keep about as many bulky values as one engine would.
     *
     * @param number how many, at least one
     */
    public Engines(int number, ShopSnapshot snapshot) {
        if (number < 1) {
            throw new IllegalArgumentException("at least one engine, not " + number);
        }
        for (int i = 0; i < number; i++) {
            Engine engine = new Engine(Math.max(1, Engine.KEPT_BULKY / number));
            engine.update(snapshot);
            engines.add(engine);
        }
    }

    /** Returns the engines. */
    public List<Engine> all() {
        return List.copyOf(engines);
    }

    /**
     * Returns a reader that takes each value from an engine which has worked it out before, else from the first. To be used by one thread,
     * and only while no other uses one of the engines.
     */
    public Reader reader() {
        return new Reader() {
            @Override
            public <T> T read(Key<T> key) {
                return engines.stream().filter(engine -> engine.remembers(key)).findFirst().orElse(engines.get(0))
                        .read(key, Progress.NONE);
            }
        };
    }
}
