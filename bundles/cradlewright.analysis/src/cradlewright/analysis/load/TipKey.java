package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.mechanics.contact.FallMotion;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.coupled.Body;
import cradlewright.mechanics.coupled.CoupledProblem;
import cradlewright.mechanics.coupled.TippingQuestions;
import cradlewright.mechanics.coupled.TippingQuestions.Answer;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The tipping answers of a visit, for each of its pushes: on the supports, and on the floor when there is a dolly. Pads and
 * castors are taken as held sideways, and a support whose face leans as pushing straight up where it stands; whether friction suffices
 * is another question. An end prop that is in place counts as one more support: on the dolly when it is bolted to it, on the floor as
 * well when it stands there.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record TipKey(String carId, String visitId) implements Key<List<TipAnswer>> {

    @Override
    public List<TipAnswer> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        if (standing.isEmpty()) {
            return List.of();
        }
        Optional<ContactSetting> setting = reader.read(new SettingKey(carId, visitId, SettingKey.Sideways.TIPPING, true));
        List<TipAnswer> answers = new ArrayList<>();
        for (Situation situation : reader.read(new SituationsKey(carId, visitId))) {
            // Tipping takes no heed of gaps, so a castor in a hole changes nothing there.
            if (situation.push().isPresent() && situation.loweredCastor().isEmpty()) {
                if (setting.isEmpty() || !setting.get().missing().isEmpty()) {
                    answers.add(new TipAnswer(situation, TipAnswer.Question.ON_SUPPORTS, false, 0, 0, false, ""));
                } else {
                    ask(situation, setting.get(), answers);
                }
            }
        }
        return List.copyOf(answers);
    }

    private static void ask(Situation situation, ContactSetting setting, List<TipAnswer> answers) {
        // The push is what is laid on, so the steadying load stands without it.
        CoupledProblem problem = setting.problem(Situation.atRest());
        Situation.Push push = situation.push().orElseThrow();
        ForceMoment action = Body.force(push.at(), push.force());
        answers.add(answer(situation, TipAnswer.Question.ON_SUPPORTS, questions -> questions.onItsSupports(ContactSetting.SHELL, action),
                problem, setting));
        if (setting.hasDolly() && setting.restsBeyondAPin()) {
            answers.add(new TipAnswer(situation, TipAnswer.Question.ON_FLOOR, false, 0, 0, false, ""));
        } else if (setting.hasDolly()) {
            answers.add(answer(situation, TipAnswer.Question.ON_FLOOR, questions -> questions.onTheFloor(action, setting.pivots()),
                    problem, setting));
        }
    }

    private static TipAnswer answer(Situation situation, TipAnswer.Question question, Function<TippingQuestions, Answer> ask,
            CoupledProblem problem, ContactSetting setting) {
        Answer answer = ask.apply(new TippingQuestions(problem));
        if (!found(answer)) {
            return new TipAnswer(situation, question, false, 0, 0, false, "");
        }
        Optional<Answer> low = unfavourable(answer, setting.carried()).map(change -> ask.apply(new TippingQuestions(problem,
                ContactSetting.SHELL, change)));
        double ratio = low.map(end -> end.standsWithoutAction() ? Math.min(end.lambda(), answer.lambda()) : 0).orElse(0.0);
        return new TipAnswer(situation, question, low.map(TipKey::found).orElse(true), answer.lambda(), ratio, answer.standsWithoutAction(),
                over(answer, setting));
    }

    private static boolean found(Answer answer) {
        return answer.status() == SolveStatus.OK || answer.status() == SolveStatus.NO_EQUILIBRIUM;
    }

    /**
     * Returns by how much the load of what is carried differs at the end of its give or take that helps the motion most: the weight does
     * work m g times how far the motion raises the balance point. Nothing when the mass is so little known that it may be none. Of a
     * motion that turns about no level axis only the weight counts.
     */
    private static Optional<ForceMoment> unfavourable(Answer answer, EstimatedBalance carried) {
        if (carried.expanded(Quantity.MASS) >= carried.balance().mass()) {
            return Optional.empty();
        }
        FallMotion motion = answer.motion();
        Balance listed = carried.balance();
        Balance worst = carried.worst(-1, Vec3.ZERO);
        if (motion.kind() == FallMotion.Kind.TIPS) {
            Vec3 turn = motion.direction();
            double rise = turn.cross(listed.point().minus(motion.axisPoint())).z();
            worst = carried.worst(-rise, new Vec3(turn.y(), -turn.x(), 0).times(listed.mass()));
        }
        return Optional.of(weight(worst).plus(weight(listed).times(-1)));
    }

    private static ForceMoment weight(Balance balance) {
        return Body.weight(balance.mass(), balance.point());
    }

    private static String over(Answer answer, ContactSetting setting) {
        if (answer.motion().kind() == FallMotion.Kind.STAYS || answer.shut().isEmpty()) {
            return "";
        }
        return "over " + answer.shut().stream().map(setting::name).collect(Collectors.joining(" and "));
    }
}
