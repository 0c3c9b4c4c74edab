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
import cradlewright.mechanics.frame.ForceMoment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                    answers.add(new TipAnswer(situation, TipAnswer.Question.ON_SUPPORTS, false, 0, false, ""));
                } else {
                    ask(situation, standing.get(), setting.get(), answers);
                }
            }
        }
        return List.copyOf(answers);
    }

    private static void ask(Situation situation, Standing standing, ContactSetting setting, List<TipAnswer> answers) {
        // The push is what is laid on, so the steadying load stands without it.
        CoupledProblem problem = setting.problem(Situation.atRest());
        TippingQuestions questions = new TippingQuestions(problem);
        Situation.Push push = situation.push().orElseThrow();
        ForceMoment action = Body.force(push.at(), push.force());
        answers.add(answer(situation, TipAnswer.Question.ON_SUPPORTS, questions.onItsSupports(ContactSetting.SHELL, action), standing,
                setting));
        if (setting.hasDolly() && setting.restsBeyondAPin()) {
            answers.add(new TipAnswer(situation, TipAnswer.Question.ON_FLOOR, false, 0, false, ""));
        } else if (setting.hasDolly()) {
            answers.add(answer(situation, TipAnswer.Question.ON_FLOOR, questions.onTheFloor(action, setting.pivots()), standing, setting));
        }
    }

    private static TipAnswer answer(Situation situation, TipAnswer.Question question, TippingQuestions.Answer answer, Standing standing,
            ContactSetting setting) {
        boolean answered = answer.status() == SolveStatus.OK || answer.status() == SolveStatus.NO_EQUILIBRIUM;
        return new TipAnswer(situation, question, answered, answer.lambda(), answer.standsWithoutAction(), over(answer, setting));
    }

    private static String over(TippingQuestions.Answer answer, ContactSetting setting) {
        if (answer.motion().kind() == FallMotion.Kind.STAYS || answer.shut().isEmpty()) {
            return "";
        }
        return "over " + answer.shut().stream().map(setting::name).collect(Collectors.joining(" and "));
    }
}
