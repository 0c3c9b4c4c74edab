package cradlewright.analysis.engine;

/**
 * Names a value and knows how to work it out. Implementations are records: two equal keys name the same value.
 *
 * @param <T> the value, compared by {@code equals} to find out whether an edit changed it
 */
public interface Key<T> {

    /** Works the value out from other values, each read through {@code reader} so that the dependency is noted. */
    T compute(Reader reader);

    /**
     * Tells whether the value takes so much room that it should not be kept for every car of a large shop. It is then worked
     * out again when it is needed once more, so it must depend on nothing but what is read.
     */
    default boolean bulky() {
        return false;
    }
}
