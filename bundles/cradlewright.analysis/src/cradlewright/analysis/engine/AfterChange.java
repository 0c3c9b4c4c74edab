package cradlewright.analysis.engine;

import cradlewright.analysis.facts.Change;

/**
 * A value as it would be after a change.
 *
 * @param key what is asked for
 * @param change the records as they would be
 */
public record AfterChange<T>(Key<T> key, Change change) implements Key<T> {

    @Override
    public T compute(Reader reader) {
        return reader.after(change).read(key);
    }

    @Override
    public boolean bulky() {
        return true;
    }
}
