package cradlewright.report.dolly;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.StockFacts;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that the drawing of a dolly shows, as records.
 *
 * @param dolly the dolly
 * @param stock what its parts are of, by id
 * @param stand what stands on it; nothing when it is drawn empty
 */
public record DollySight(DollyFacts dolly, Map<String, StockFacts> stock, Optional<DollyStand> stand) {

    /** Copies the map. */
    public DollySight {
        stock = Map.copyOf(stock);
    }

    /** Returns what is there now with the numbers of before, until new ones are worked out. */
    public DollySight withNumbersOf(DollySight before) {
        return new DollySight(dolly, stock, stand.map(now -> before.stand.map(now::withNumbersOf).orElse(now)));
    }

    /** Returns what stands on it once that is worked out, be it from before an edit. */
    Optional<DollyStand> worked() {
        return stand.filter(known -> !known.loads().isEmpty());
    }

    /** Returns what is kept in stock under an id, if it is of that sort. */
    <T extends StockFacts> Optional<T> stock(Class<T> type, Optional<String> id) {
        return id.map(stock::get).filter(type::isInstance).map(type::cast);
    }
}
