package cradlewright.analysis.checks;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.facts.Value;
import cradlewright.quantity.Dimension;

/**
 * What something is stated to take. What a plate, a maker's sheet, a standard or a test rates it for is a least value that somebody
 * answers for and counts as stated. A rating taken over from something like it, one that is guessed, and one that was given a give or
 * take of its own count at the low end, 19 times in 20; whoever reads the files sees another number there, so the answer shows both.
 * The importer settles which of them have a give or take; every check that reads a rating goes by this class.
 *
 * @param value as stated, in SI units
 * @param dimension of the value
 */
public record Stated(Value value, Dimension dimension) {

    /** A mass in kg. */
    public static Stated mass(Value value) {
        return new Stated(value, Dimension.MASS);
    }

    /** A force in N. */
    public static Stated force(Value value) {
        return new Stated(value, Dimension.FORCE);
    }

    /** Returns the low end, not below zero. */
    public double low() {
        return Math.max(0, value.low());
    }

    /**
     * Sets what is asked against the low end.
     *
     * @param asked in the unit of the value
     * @param what what the value is, for example {@code rated load of the castor}
     */
    public FindingBuilder against(FindingBuilder finding, double asked, String what) {
        return against(finding, asked, 1, what);
    }

    /**
     * Sets what is asked against a share of the low end.
     *
     * @param asked in the unit of the value
     * @param share what counts of the value, for example the factor for how a strap is slung
     * @param what what the share is of which value
     */
    public FindingBuilder against(FindingBuilder finding, double asked, double share, String what) {
        return note(finding).against(new Amount(asked, dimension), new Amount(share * low(), dimension), what + ", " + origin());
    }

    /** Shows the value and what is taken off it; nothing when it is taken as stated. */
    public FindingBuilder note(FindingBuilder finding) {
        if (value.u() == 0) {
            return finding;
        }
        return finding.shown("stated", new Amount(value.si(), dimension), word()).shown("less its give or take",
                new Amount(Math.min(value.si(), Value.COVERAGE * value.u()), dimension), "19 times in 20");
    }

    /** Returns where the value comes from, and whether its give or take is taken off. */
    public String origin() {
        return value.u() == 0 ? word() : word() + ", less its give or take";
    }

    private String word() {
        return value.source().word().isEmpty() ? "source not stated" : value.source().word();
    }
}
