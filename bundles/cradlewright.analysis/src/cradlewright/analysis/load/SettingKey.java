package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import java.util.Optional;

/**
 * Bodies and contacts of a visit, made once for all its situations so that the dolly is condensed once; nothing when the visit is
 * not resolved or nothing that weighs anything is carried.
 *
 * @param carId the car
 * @param visitId the visit
 * @param sideways whether pads and castors are held sideways, as they must be under a push
 */
record SettingKey(String carId, String visitId, boolean sideways) implements Key<Optional<ContactSetting>> {

    @Override
    public Optional<ContactSetting> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        Weight weight = reader.read(new WeightKey(carId, visitId));
        return standing.flatMap(s -> weight.estimate().map(carried -> new ContactSetting(reader, s, weight, carried, sideways)));
    }
}
