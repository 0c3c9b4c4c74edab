package cradlewright.quantity;

import java.util.Arrays;
import java.util.Optional;

/** Where a number comes from; decides how far it is trusted. */
public enum Source {
    /** Read from a scale. */
    WEIGHED("weighed"),
    /** From the maker's printed data. */
    MAKERS_SHEET("maker's sheet"),
    /** Taken over from a similar car. */
    LIKE_ANOTHER_CAR("like another car"),
    /** Somebody's guess. */
    GUESSED("guessed"),
    /** Read from a tape, rule, gauge or other instrument that is not a scale. */
    MEASURED("measured"),
    /** From a drawing. */
    DRAWING("drawing"),
    /** Worked out from other values. */
    DERIVED("derived"),
    /** From the plate on the device. */
    PLATE("plate"),
    /** Nobody said. */
    UNSTATED("");

    private final String word;

    Source(String word) {
        this.word = word;
    }

    /** Returns the word that files and screens write; empty when nobody said. */
    public String word() {
        return word;
    }

    /** Finds the source by its exact word; the empty word finds nothing. */
    public static Optional<Source> ofWord(String word) {
        return Arrays.stream(values()).filter(source -> source != UNSTATED && source.word.equals(word)).findFirst();
    }
}
