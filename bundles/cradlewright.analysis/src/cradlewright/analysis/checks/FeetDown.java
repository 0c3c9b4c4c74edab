package cradlewright.analysis.checks;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.standing.Standing;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts the screw feet of a dolly down, so that nothing is asked of its castors any more. */
public final class FeetDown {

    private FeetDown() {
    }

    /** Returns that, in these words; nothing for a dolly without feet, or with one down. */
    public static Optional<Remedy> remedy(String words, Standing standing) {
        Optional<DollyFacts> dolly = standing.dolly().filter(d -> !d.feet().isEmpty() && !DollyLoad.onFeet(d));
        return dolly.map(d -> Remedy.trial(words, Trial.here(Change.of(d.feetDown()),
                Stream.concat(Stream.of("castor"), d.castors().stream().map(CastorFacts::id)).toArray(String[]::new))));
    }
}
