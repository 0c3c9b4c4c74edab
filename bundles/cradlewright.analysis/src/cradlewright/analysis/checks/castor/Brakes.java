package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;

/** Fits brakes to the castors of a dolly. */
final class Brakes {

    private Brakes() {
    }

    /** Returns that every castor without a brake gets one that holds its wheel, in these words. */
    static Remedy onAll(String words, DollyFacts dolly) {
        return Remedy.trial(words, Trial.records(Change.of(dolly.withCastors(dolly.castors().stream()
                .map(castor -> castor.brake() == CastorFacts.Brake.NONE ? castor.withBrake(CastorFacts.Brake.WHEEL) : castor).toList()))));
    }
}
