package cradlewright.analysis.engine;

import cradlewright.analysis.facts.Change;

/** Gives values by key while one is being worked out. */
@FunctionalInterface
public interface Reader {

    /** Returns the value named by the key, worked out if need be; throws CancelledException when the run was called off. */
    <T> T read(Key<T> key);

    /**
     * Returns a reader of the shop as it would be after a change. What does not depend on the change is taken from here; what does is
     * worked out anew and forgotten with that reader.
     *
     * @throws UnsupportedOperationException when this reader cannot look ahead
     */
    default Reader after(Change change) {
        throw new UnsupportedOperationException("no change can be tried here");
    }
}
