package cradlewright.analysis.engine;

/** Gives values by key while one is being worked out. */
@FunctionalInterface
public interface Reader {

    /** Returns the value named by the key, worked out if need be; throws CancelledException when the run was called off. */
    <T> T read(Key<T> key);
}
