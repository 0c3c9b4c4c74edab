package cradlewright.analysis.change;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.run.FindingsKey;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.WeightKey;
import java.util.ArrayList;
import java.util.List;

/**
 * What there is to say about a visit at which a car is lifted, asked on the records of {@link LiftQuestion#change}. What to do is not
 * tried.
 *
 * @param catalogue the checks in force
 * @param subject the visit
 */
public record LiftAnswerKey(CheckCatalogue catalogue, Subject subject) implements Key<LiftAnswer> {

    @Override
    public LiftAnswer compute(Reader reader) {
        String car = subject.ownerId();
        String visit = subject.visitId().orElseThrow();
        List<Finding> findings = new ArrayList<>();
        for (Check check : catalogue.of(subject.scope())) {
            findings.addAll(reader.read(new FindingsKey(check, subject)));
        }
        return new LiftAnswer(reader.read(new StandingKey(car, visit)), reader.read(new WeightKey(car, visit)),
                reader.read(new LoadsKey(car, visit, Situation.atRest(), false)), findings);
    }
}
