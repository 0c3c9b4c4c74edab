package cradlewright.report;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import java.util.Optional;

/**
 * The numbers of a visit that every report shows before any verdict: what it weighs, where its balance point lies, what each support
 * and castor carries at rest.
 *
 * @param standing what stands or hangs on what
 * @param weight what is carried
 * @param loads what each support and castor carries at rest, with the masses as listed; not found when something is missing
 */
public record VisitNumbers(Standing standing, Weight weight, Loads loads) {

    /** Returns the numbers of a visit; nothing for other subjects and for what is away. */
    public static Optional<VisitNumbers> of(Reader reader, Subject subject) {
        if (subject.scope() != Scope.VISIT) {
            return Optional.empty();
        }
        String car = subject.ownerId();
        String visit = subject.visitId().orElseThrow();
        return reader.read(new StandingKey(car, visit)).filter(standing -> !standing.supports().isEmpty())
                .map(standing -> new VisitNumbers(standing, reader.read(new WeightKey(car, visit)),
                        reader.read(new LoadsKey(car, visit, Situation.atRest(), false))));
    }
}
