package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.mechanics.contact.LoadPath;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.coupled.CoupledProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far each support is from lift-off when it alone sinks. No answers when an input is missing or nothing holds the car.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record LiftOffKey(String carId, String visitId) implements Key<List<LiftOff>> {

    /** Sinking beyond which nobody asks, m. */
    private static final double FARTHEST = 0.05;

    @Override
    public List<LiftOff> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        Optional<ContactSetting> setting = standing.flatMap(s -> reader.read(SettingKey.atRest(s))).filter(s -> s.missing().isEmpty());
        if (setting.isEmpty()) {
            return List.of();
        }
        Situation rest = Situation.atRest();
        CoupledProblem rigid = setting.get().problem(rest);
        if (rigid.solve().status() != SolveStatus.OK) {
            return List.of();
        }
        Optional<ContactSetting.Known> known = setting.get().known();
        CoupledProblem stiff = known.map(k -> setting.get().problem(rest, Optional.of(k.high()))).orElse(rigid);
        CoupledProblem soft = known.map(k -> setting.get().problem(rest, Optional.of(k.low())))
                .orElseGet(() -> setting.get().twistMatters() ? setting.get().elastic(rest, setting.get().softest()) : rigid);
        List<LiftOff> answers = new ArrayList<>();
        setting.get().supports().forEach(support -> answers.add(new LiftOff(support.contactId(), sinking(stiff,
                support.contactId()), sinking(soft, support.contactId()))));
        return List.copyOf(answers);
    }

    private static OptionalDouble sinking(CoupledProblem problem, String contactId) {
        double[] gapRate = new double[problem.matrices().size()];
        int index = problem.indexOf(contactId);
        gapRate[index] = 1;
        LoadPath path = LoadPath.follow(problem.matrices(), new double[problem.matrices().rowCount()], gapRate, FARTHEST);
        return path.status() == SolveStatus.OK || path.ending() == LoadPath.End.FALLS ? path.goesLight(index)
                : OptionalDouble.of(0);
    }
}
