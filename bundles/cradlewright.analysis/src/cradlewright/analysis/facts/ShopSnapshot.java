package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The whole shop at one moment.
 *
 * @param number grows with every edit
 * @param name of the shop
 * @param settings what the shop has settled
 * @param today the day the answers are for
 * @param facts every record by its id, in file order
 */
public record ShopSnapshot(long number, String name, SettingsFacts settings, LocalDate today, Map<String, Fact> facts) {

    /** Copies the map, keeping its order. */
    public ShopSnapshot {
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    /** Returns the record of that id and type. */
    public <T extends Fact> Optional<T> find(Class<T> type, String id) {
        return Optional.ofNullable(facts.get(id)).filter(type::isInstance).map(type::cast);
    }

    /** Returns all records of a type, in file order. */
    public <T extends Fact> List<T> all(Class<T> type) {
        return facts.values().stream().filter(type::isInstance).map(type::cast).toList();
    }
}
