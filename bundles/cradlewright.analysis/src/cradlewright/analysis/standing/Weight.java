package cradlewright.analysis.standing;

import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.MassPoint;
import cradlewright.mechanics.mass.MassUncertainty;
import java.util.List;
import java.util.Optional;

/**
 * What the carried pieces weigh with the parts that are on.
 *
 * @param known every part and temporary load with a mass and a place, in the axes of the marks
 * @param missing names of parts and loads without mass or place
 * @param guessedMass mass in kg of those that were only guessed
 * @param guessed names of those that were only guessed
 */
public record Weight(List<MassPoint> known, List<String> missing, double guessedMass, List<String> guessed) {

    /** Copies the lists. */
    public Weight {
        known = List.copyOf(known);
        missing = List.copyOf(missing);
        guessed = List.copyOf(guessed);
    }

    /** Returns mass and balance point with their covariance, weighed parts as perhaps from one scale; nothing when nothing known is on. */
    public Optional<EstimatedBalance> estimate() {
        double sum = known.stream().mapToDouble(MassPoint::mass).sum();
        return sum > 0 ? Optional.of(MassUncertainty.ofPerhapsOneScale(known)) : Optional.empty();
    }
}
