package cradlewright.mechanics.formula;

import java.util.Objects;

/**
 * What a formula says about itself: printed by the explain page and by the verification report.
 *
 * @param id stable identifier, {@code family.name} in lower case, for example {@code castor.three-carry}
 * @param title what it gives, in the words of the trade
 * @param expression the formula itself in plain text with its symbols and units
 * @param source the published source with its clause, or {@code common practice, no source}
 * @param limits the range in which the formula is valid
 * @param neglected the effects that it leaves out
 */
public record Formula(String id, String title, String expression, String source, String limits, String neglected) {

    /** Refuses a missing field: a formula that hides its source or limits is not fit to be shown. */
    public Formula {
        requireText(id, "id");
        requireText(title, "title");
        requireText(expression, "expression");
        requireText(source, "source");
        requireText(limits, "limits");
        requireText(neglected, "neglected");
        if (!id.matches("[a-z0-9-]+(\\.[a-z0-9-]+)+")) {
            throw new IllegalArgumentException("formula id must read family.name in lower case: " + id);
        }
    }

    private static void requireText(String text, String field) {
        Objects.requireNonNull(text, field);
        if (text.isBlank()) {
            throw new IllegalArgumentException("a formula needs its " + field);
        }
    }
}
