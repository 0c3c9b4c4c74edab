package cradlewright.analysis.job;

import cradlewright.analysis.facts.SignOffFacts;
import java.util.Optional;

/**
 * Whether a hold point is signed.
 *
 * @param kind how it stands
 * @param last the last sign-off up to the day of the answers
 * @param missing what cannot be told, with how to mend it; for {@link Kind#UNCLEAR} only
 */
public record SignState(Kind kind, Optional<SignOffFacts> last, Optional<String> missing) {

    /** How a hold point stands. */
    public enum Kind {
        /** Nobody has signed. */
        OPEN,
        /** Signed, and everything is as it was. */
        SIGNED,
        /** Signed, and something that it was signed for is not as it was. */
        LAPSED,
        /** Signed, but it cannot be told for what. */
        UNCLEAR
    }

    static SignState open() {
        return new SignState(Kind.OPEN, Optional.empty(), Optional.empty());
    }

    static SignState unclear(SignOffFacts signOff, String missing) {
        return new SignState(Kind.UNCLEAR, Optional.of(signOff), Optional.of(missing));
    }

    /** Returns who signed when, for example {@code Hanna on 2026-11-20}. */
    public String who() {
        return last.map(signOff -> signOff.by().orElse("nobody named")
                + signOff.at().map(at -> " on " + at.toLocalDate()).orElse("")).orElse("nobody");
    }
}
