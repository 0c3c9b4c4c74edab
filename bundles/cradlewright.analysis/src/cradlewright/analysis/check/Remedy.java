package cradlewright.analysis.check;

import java.util.Optional;

/**
 * Something to do about a finding.
 *
 * @param words what to do, in shop words
 * @param after the verdict that the same check gives on the changed records; empty for advice that was not worked out
 */
public record Remedy(String words, Optional<Verdict> after) {

    /** Advice that cannot be worked out beforehand. */
    public static Remedy advice(String words) {
        return new Remedy(words, Optional.empty());
    }

    /** A change that the check has been run on again. */
    public static Remedy proven(String words, Verdict after) {
        return new Remedy(words, Optional.of(after));
    }
}
