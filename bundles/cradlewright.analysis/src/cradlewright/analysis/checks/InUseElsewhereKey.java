package cradlewright.analysis.checks;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.standing.Standing;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The ids of all that other cars stand or hang on while a visit lasts: none of it may be offered to that visit. A visit without a first or
 * a last day is open at that end; visits that are history do not count.
 *
 * @param carId the car whose visit it is
 * @param from first day of the visit
 * @param to last day of the visit
 */
public record InUseElsewhereKey(String carId, Optional<LocalDate> from, Optional<LocalDate> to) implements Key<Set<String>> {

    /** Returns the ids of what other cars use while a visit lasts. */
    public static Set<String> during(Standing standing, Reader reader) {
        VisitFacts visit = standing.visit();
        return reader.read(new InUseElsewhereKey(standing.car().id(), visit.from(), visit.to()));
    }

    @Override
    public Set<String> compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        Set<String> used = new HashSet<>();
        for (String id : reader.read(new IdsKey<>(CarFacts.class))) {
            Optional<CarFacts> other = reader.read(new FactKey<>(CarFacts.class, id)).filter(car -> !id.equals(carId));
            other.ifPresent(car -> car.visits().stream().filter(visit -> !car.over(visit, today) && meets(visit))
                    .flatMap(visit -> visit.setupId().flatMap(car::setup).stream()).map(SetupFacts::carrierIds).forEach(used::addAll));
        }
        return Set.copyOf(used);
    }

    private boolean meets(VisitFacts visit) {
        return !before(to, visit.from()) && !before(visit.to(), from);
    }

    private static boolean before(Optional<LocalDate> last, Optional<LocalDate> first) {
        return last.isPresent() && first.isPresent() && last.get().isBefore(first.get());
    }
}
