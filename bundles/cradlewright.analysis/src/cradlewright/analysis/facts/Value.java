package cradlewright.analysis.facts;

import cradlewright.quantity.Source;

/**
 * A number in SI units with its standard uncertainty and where it comes from.
 *
 * @param si the value in SI units
 * @param u its standard uncertainty in the same unit, not negative
 * @param source where it comes from
 */
public record Value(double si, double u, Source source) {

    /** Coverage factor of a verdict: the unfavourable end lies two standard uncertainties away (JCGM 100, 6.2.1; from memory). */
    public static final double COVERAGE = 2;

    /** Returns the upper end, 19 times in 20. */
    public double high() {
        return si + COVERAGE * u;
    }

    /** Returns the lower end, 19 times in 20. */
    public double low() {
        return si - COVERAGE * u;
    }

    /** Tells whether nobody measured or looked it up: such a value never gives HOLDS for lifting. */
    public boolean guessed() {
        return source == Source.GUESSED || source == Source.UNSTATED;
    }
}
