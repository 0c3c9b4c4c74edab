package cradlewright.analysis.checks;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.standing.Standing;
import java.util.List;

/** Fits the props that a dolly has and that are not in place. */
public final class FitProp {

    private FitProp() {
    }

    /** Returns each of them as something to do. */
    public static List<Remedy> remedies(Standing standing) {
        return standing.dolly().map(FitProp::of).orElse(List.of());
    }

    private static List<Remedy> of(DollyFacts dolly) {
        return dolly.props().stream().filter(prop -> !prop.fitted()).map(prop -> Remedy.trial("Fit " + prop.name()
                + " first, and look whether it touches.", Trial.here(Change.of(dolly.with(prop.inPlace()))))).toList();
    }
}
