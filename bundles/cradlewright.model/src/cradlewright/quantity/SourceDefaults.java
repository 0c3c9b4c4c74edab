package cradlewright.quantity;

import java.util.OptionalDouble;

/**
 * The standard uncertainty, as a share of the value, that is assumed when a value names its source but no uncertainty of
 * its own.
 *
 * <p>Only the four sources below have a share. A measured length has none: the error of a tape does not grow with the
 * reading, so the shop has to state it. Drawings, plates, derived values and values without a source have none either:
 * what is not known is not made up.
 *
 * @param weighed share for values from a scale
 * @param makersSheet share for values from the maker's data
 * @param likeAnotherCar share for values taken over from a similar car
 * @param guessed share for guesses
 */
public record SourceDefaults(double weighed, double makersSheet, double likeAnotherCar, double guessed) {

    /** 1 %, 5 %, 15 % and 40 %: common practice, no source. */
    public static final SourceDefaults COMMON_PRACTICE = new SourceDefaults(0.01, 0.05, 0.15, 0.40);

    /** Refuses shares that are not finite or below zero. */
    public SourceDefaults {
        requireShare(weighed, Source.WEIGHED);
        requireShare(makersSheet, Source.MAKERS_SHEET);
        requireShare(likeAnotherCar, Source.LIKE_ANOTHER_CAR);
        requireShare(guessed, Source.GUESSED);
    }

    private static void requireShare(double share, Source source) {
        if (!Double.isFinite(share) || share < 0) {
            throw new IllegalArgumentException(
                    "the uncertainty share for '" + source.word() + "' must be finite and not below zero, found " + share);
        }
    }

    /** Returns the share for a source, empty when the source has none. */
    public OptionalDouble share(Source source) {
        return switch (source) {
            case WEIGHED -> OptionalDouble.of(weighed);
            case MAKERS_SHEET -> OptionalDouble.of(makersSheet);
            case LIKE_ANOTHER_CAR -> OptionalDouble.of(likeAnotherCar);
            case GUESSED -> OptionalDouble.of(guessed);
            case MEASURED, DRAWING, DERIVED, PLATE, UNSTATED -> OptionalDouble.empty();
        };
    }
}
