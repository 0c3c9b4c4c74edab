package cradlewright.analysis.check;

import java.util.Collection;

/** The four answers, from harmless to grave. */
public enum Verdict {
    /** Held at the unfavourable end, with room to spare. */
    HOLDS("HOLDS"),
    /** Held at the unfavourable end, but close to the limit. */
    TIGHT("TIGHT"),
    /** An input is missing or a calculation did not come to an end; never to be read as held. */
    CANT_SAY("CAN'T SAY"),
    /** Not held at the unfavourable end. */
    STOP("STOP");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** Returns the word that people see. */
    public String word() {
        return word;
    }

    /** Returns the graver of two. */
    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Returns the gravest of several, HOLDS when there is none. */
    public static Verdict worst(Collection<Verdict> verdicts) {
        return verdicts.stream().reduce(HOLDS, Verdict::worse);
    }

    /**
     * Judges a demand against a capacity, both at their unfavourable ends and in the same unit.
     *
     * @param demand not negative
     * @param capacity not negative
     * @param tightMargin share of capacity from which the answer reads TIGHT, 0.10 for the last tenth
     * @return STOP above capacity, TIGHT within the margin, HOLDS below; CANT_SAY for numbers that are not finite
     */
    public static Verdict of(double demand, double capacity, double tightMargin) {
        if (!Double.isFinite(demand) || Double.isNaN(capacity)) {
            return CANT_SAY;
        }
        if (demand > capacity) {
            return STOP;
        }
        return demand > (1 - tightMargin) * capacity ? TIGHT : HOLDS;
    }
}
