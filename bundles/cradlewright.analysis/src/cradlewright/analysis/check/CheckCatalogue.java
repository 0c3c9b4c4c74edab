package cradlewright.analysis.check;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The checks in force, by their ids. */
public final class CheckCatalogue {

    private final Map<String, Check> checks = new LinkedHashMap<>();

    /** Takes the checks in order; throws IllegalArgumentException when two share an id. */
    public CheckCatalogue(Collection<? extends Check> all) {
        for (Check check : all) {
            if (checks.put(check.info().id(), check) != null) {
                throw new IllegalArgumentException("two checks with the id " + check.info().id());
            }
        }
    }

    /** Returns all checks in order. */
    public List<Check> all() {
        return List.copyOf(checks.values());
    }

    /** Returns the checks of a scope in order. */
    public List<Check> of(Scope scope) {
        return checks.values().stream().filter(check -> check.scope() == scope).toList();
    }

    /** Returns the check of that id. */
    public Optional<Check> find(String id) {
        return Optional.ofNullable(checks.get(id));
    }
}
