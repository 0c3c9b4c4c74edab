package cradlewright.analysis.standing;

import cradlewright.mechanics.mass.PoseWeighing.Level;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What the scales say about what is carried at a visit.
 *
 * @param weighingId the weighing
 * @param at when, if anybody noted it
 * @param by who read the scales, if anybody noted it
 * @param level mass and balance point seen from above; nothing when readings lack something
 * @param missing what the readings lack
 */
public record Weighed(String weighingId, Optional<LocalDateTime> at, Optional<String> by, Optional<Level> level, List<String> missing) {

    /** Copies the list. */
    public Weighed {
        missing = List.copyOf(missing);
    }

    /**
     * Tells whether the parts list says the same: mass and place along and across the car each differ by no more than the give or
     * take of list and scales together, 19 times in 20 (JCGM 100, 5.1.2 and 6.2; independent errors).
     */
    public boolean agreesWith(Weight weight) {
        return level.isPresent() && weight.missing().isEmpty()
                && weight.estimate().map(listed -> Disagreement.of(level.get(), listed).stream().allMatch(Disagreement::within))
                .orElse(false);
    }
}
