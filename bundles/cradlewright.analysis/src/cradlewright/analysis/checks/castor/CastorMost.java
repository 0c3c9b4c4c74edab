package cradlewright.analysis.checks.castor;

import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import java.util.Comparator;
import java.util.Optional;

/**
 * What a castor carries in the situation in which that is most.
 *
 * @param situation what happens
 * @param carried what it carries then
 */
public record CastorMost(Situation situation, Carried carried) {

    /** Returns it for one castor; nothing when it carries in no situation that has an answer. */
    public static Optional<CastorMost> of(VisitLoads loads, String castorId) {
        return loads.found().stream().flatMap(found -> of(found, castorId).stream())
                .max(Comparator.comparingDouble(most -> most.carried().high()));
    }

    private static Optional<CastorMost> of(Loads loads, String castorId) {
        return loads.castors().stream().filter(carried -> carried.id().equals(castorId)).findFirst()
                .map(carried -> new CastorMost(loads.situation(), carried));
    }
}
