package cradlewright.analysis.check;

/**
 * A number that went into a finding, for the explain page.
 *
 * @param name what it is
 * @param amount its value
 * @param origin where it comes from, for example {@code weighed} or {@code common practice, no source}
 */
public record Input(String name, Amount amount, String origin) {
}
