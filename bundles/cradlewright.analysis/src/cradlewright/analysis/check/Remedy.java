package cradlewright.analysis.check;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Something to do about a finding.
 *
 * @param words what to do, in shop words
 * @param proof how far it is known to help
 * @param after the verdict that the same check gives then; empty for advice and for what was not tried
 * @param group remedies of one group are sizes of one thing, smallest first: the first that mends is enough. Empty when it stands alone
 * @param trial the changed records, until it has been tried
 * @param harms what it makes worse elsewhere
 */
public record Remedy(String words, Proof proof, Optional<Verdict> after, String group, Optional<Trial> trial, List<Harm> harms) {

    /** How far a remedy is known to help. */
    public enum Proof {
        /** Nothing was worked out. */
        ADVICE,
        /** The check's own question was worked out again, nothing else: no record of the shop shows such a change. */
        ALONE,
        /** It can be worked out but was not: the number of trials is bounded. */
        UNTRIED,
        /** Every check of everybody it touches was asked again on the changed records: this answer is better, none is graver. */
        MENDS,
        /** It makes this answer better and others graver. */
        HARMS,
        /** No remedy: says that nothing of what was tried mends without harm. */
        NONE
    }

    /** Copies the list; refuses what contradicts itself. */
    public Remedy {
        Objects.requireNonNull(group);
        harms = List.copyOf(harms);
        boolean worked = proof == Proof.ALONE || proof == Proof.MENDS || proof == Proof.HARMS;
        if (words.isBlank() || worked != after.isPresent() || harms.isEmpty() == (proof == Proof.HARMS)
                || trial.isPresent() != (proof == Proof.UNTRIED)) {
            throw new IllegalArgumentException("a remedy needs words and what goes with its proof " + proof + ": " + words);
        }
    }

    /** Advice that cannot be worked out beforehand. */
    public static Remedy advice(String words) {
        return new Remedy(words, Proof.ADVICE, Optional.empty(), "", Optional.empty(), List.of());
    }

    /** A change that no record shows; the check alone was asked again. */
    public static Remedy alone(String words, Verdict after) {
        return new Remedy(words, Proof.ALONE, Optional.of(after), "", Optional.empty(), List.of());
    }

    /** A change of records that is still to be tried. */
    public static Remedy trial(String words, Trial trial) {
        return trial(words, "", trial);
    }

    /** One of several sizes of one thing that are still to be tried, added smallest first. */
    public static Remedy trial(String words, String group, Trial trial) {
        return new Remedy(words, Proof.UNTRIED, Optional.empty(), group, Optional.of(trial), List.of());
    }

    /** Returns that nothing of what was tried mends without harm, in these words. */
    public static Remedy none(String words) {
        return new Remedy(words, Proof.NONE, Optional.empty(), "", Optional.empty(), List.of());
    }

    /** Returns this remedy in other words. */
    public Remedy withWords(String other) {
        return new Remedy(other, proof, after, group, trial, harms);
    }

    /** Returns a change that mends without harm. */
    public static Remedy mends(String words, Verdict after) {
        return new Remedy(words, Proof.MENDS, Optional.of(after), "", Optional.empty(), List.of());
    }

    /** Returns a change that mends this and harms something else. */
    public static Remedy harms(String words, Verdict after, List<Harm> harms) {
        return new Remedy(words, Proof.HARMS, Optional.of(after), "", Optional.empty(), harms);
    }
}
