package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactProblem;
import cradlewright.mechanics.contact.ContactSolution;
import cradlewright.mechanics.contact.ContactSolver;
import cradlewright.mechanics.coupled.CoupledProblem;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the supports carry at rest when one of them is set higher or lower, by contact in N: masses as listed, rigid shell. Nothing
 * when an input is missing or nothing holds it.
 *
 * @param carId the car
 * @param visitId the visit
 * @param contactId the support that is changed
 * @param raise by how much it is set higher, m; below zero for lower
 */
public record RaisedKey(String carId, String visitId, String contactId, double raise) implements Key<Optional<Map<String,
        Double>>> {

    @Override
    public Optional<Map<String, Double>> compute(Reader reader) {
        return reader.read(new StandingKey(carId, visitId)).flatMap(standing -> ContactSetting.of(reader, standing))
                .filter(setting -> setting.missing().isEmpty()).flatMap(this::solve);
    }

    private Optional<Map<String, Double>> solve(ContactSetting setting) {
        CoupledProblem problem = setting.problem(Situation.atRest());
        ContactProblem matrices = problem.matrices();
        double[] gap = matrices.gap();
        gap[problem.indexOf(contactId)] -= raise;
        ContactSolution solution = ContactSolver.solve(matrices.withGap(gap));
        if (!solution.isOk()) {
            return Optional.empty();
        }
        Map<String, Double> forces = new HashMap<>();
        for (Support support : setting.supports()) {
            forces.put(support.contactId(), solution.force(problem.indexOf(support.contactId())));
        }
        return Optional.of(Map.copyOf(forces));
    }
}
