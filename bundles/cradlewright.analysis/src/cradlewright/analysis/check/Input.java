package cradlewright.analysis.check;

/**
 * A number that went into a finding or comes with it.
 *
 * @param name what it is
 * @param amount its value
 * @param origin where it comes from, for example {@code weighed} or {@code common practice, no source}
 * @param shown whether every report shows it beside the answer, and not only the explain page
 */
public record Input(String name, Amount amount, String origin, boolean shown) {
}
