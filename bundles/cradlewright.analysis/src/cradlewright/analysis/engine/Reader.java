package cradlewright.analysis.engine;

import cradlewright.analysis.facts.Change;

/** Gives values by key while one is being worked out. */
@FunctionalInterface
public interface Reader {

    /** Returns the value named by the key, worked out if need be; throws CancelledException when the run was called off. */
    <T> T read(Key<T> key);

    /**
     * Returns a reader of the shop as it would be after a change. What does not depend on the change is taken from here; what does is
     * worked out anew and kept until another change is tried.
     *
     * @throws UnsupportedOperationException when this reader cannot look ahead
     */
    default Reader after(Change change) {
        throw new UnsupportedOperationException("no change can be tried here");
    }

    /**
     * Tells whether this reads the shop as it would be after a change that is only tried: then the answers count, and what else to do
     * about them need not be looked for.
     */
    default boolean tried() {
        return false;
    }
}
