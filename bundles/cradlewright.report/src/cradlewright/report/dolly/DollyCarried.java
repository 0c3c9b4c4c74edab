package cradlewright.report.dolly;

import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a castor, foot, prop or fixture carries.
 *
 * @param carried the numbers
 * @param situation in which it carries that
 */
public record DollyCarried(Carried carried, Situation situation) {

    /** Returns what one of them carries in the situation in which its upper end is largest; nothing when no answer names it. */
    static Optional<DollyCarried> most(List<Loads> all, String id) {
        return all.stream().filter(Loads::found).flatMap(loads -> List.of(loads.castors(), loads.props(), loads.supports()).stream()
                .flatMap(List::stream).filter(carried -> carried.id().equals(id)).map(carried -> new DollyCarried(carried,
                        loads.situation()))).max(Comparator.comparingDouble(most -> most.carried().high()));
    }
}
