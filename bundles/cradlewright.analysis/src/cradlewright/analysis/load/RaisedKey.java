package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactSolution;
import cradlewright.mechanics.contact.ContactSolver;
import cradlewright.mechanics.coupled.CoupledProblem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the supports carry at rest when one of them is set higher or lower, by contact in N, one answer for each height: masses as
 * listed, the shell as stiff as is stated. Empty where nothing holds it; no answers at all when an input is missing.
 *
 * @param carId the car
 * @param visitId the visit
 * @param contactId the support that is changed
 * @param raises by how much it is set higher, m; below zero for lower
 */
public record RaisedKey(String carId, String visitId, String contactId, List<Double> raises) implements Key<List<Map<String,
        Double>>> {

    /** Copies the list. */
    public RaisedKey {
        raises = List.copyOf(raises);
    }

    @Override
    public List<Map<String, Double>> compute(Reader reader) {
        return reader.read(new StandingKey(carId, visitId)).flatMap(standing -> reader.read(SettingKey.atRest(standing)))
                .filter(setting -> setting.missing().isEmpty()).map(this::solve).orElse(List.of());
    }

    private List<Map<String, Double>> solve(ContactSetting setting) {
        CoupledProblem problem = setting.listed(Situation.atRest());
        return raises.stream().map(raise -> solve(setting, problem, raise)).toList();
    }

    private Map<String, Double> solve(ContactSetting setting, CoupledProblem problem, double raise) {
        double[] gap = problem.matrices().gap();
        gap[problem.indexOf(contactId)] -= raise;
        ContactSolution solution = ContactSolver.solve(problem.matrices().withGap(gap));
        Map<String, Double> forces = new HashMap<>();
        if (solution.isOk()) {
            setting.supports().stream().map(Support::contactId).forEach(id -> forces.put(id,
                    solution.force(problem.indexOf(id))));
        }
        return Map.copyOf(forces);
    }
}
