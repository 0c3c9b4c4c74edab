package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import java.util.Optional;

/**
 * What everything carries at a visit in one situation.
 *
 * @param carId the car
 * @param visitId the visit
 * @param situation what happens
 * @param factored whether actions are factored for resistances of EN 1993: 1.35 own weight of the dolly, 1.5 what it carries and
 *        pushes (EN 1990 Table A1.2(B), from memory; everything carried counts as variable: common practice, no source)
 */
public record LoadsKey(String carId, String visitId, Situation situation, boolean factored) implements Key<Loads> {

    @Override
    public Loads compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        if (standing.isEmpty()) {
            return Loads.none(situation, Loads.Outcome.MISSING, "which parts are on and what they rest on");
        }
        boolean sideways = situation.push().map(push -> Math.hypot(push.force().x(), push.force().y()) > 0).orElse(false);
        Optional<ContactSetting> setting = reader.read(new SettingKey(carId, visitId, sideways));
        if (setting.isEmpty()) {
            return Loads.none(situation, Loads.Outcome.MISSING, "the mass of what is carried");
        }
        if (!setting.get().missing().isEmpty()) {
            return Loads.none(situation, Loads.Outcome.MISSING, String.join("; ", setting.get().missing()));
        }
        return new LoadSolver(setting.get(), situation).solve(factored);
    }
}
