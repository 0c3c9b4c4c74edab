package cradlewright.analysis.checks.use;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.load.SituationsKey;
import java.util.List;
import java.util.Optional;

/**
 * Reads the shop as if nothing else happened than one situation. What to do about an answer is not looked for.
 *
 * @param only the situation; nothing for all that there are
 */
record OneSituation(Reader inner, Optional<Situation> only) implements Reader {

    @Override
    @SuppressWarnings("unchecked") // the key of the situations names a list of situations
    public <T> T read(Key<T> key) {
        return key instanceof SituationsKey && only.isPresent() ? (T) List.of(only.get()) : inner.read(key);
    }

    @Override
    public boolean tried() {
        return true;
    }
}
