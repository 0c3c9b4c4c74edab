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
 * @param sideways how it is held sideways
 * @param boltsPull whether bolts of which nobody said how hard they may be pulled do pull
 */
record SettingKey(String carId, String visitId, Sideways sideways, boolean boltsPull) implements Key<Optional<ContactSetting>> {

    /** How pads and castors that only rest are held sideways. */
    enum Sideways {
        /** Not at all: what stands still needs no friction, unless a support leans. */
        FREE,
        /** By friction, as they must be under a push; whether friction suffices is asked after. */
        HELD,
        /** By friction, and each support pushes straight up where it stands: what tips, tips over the lines between them. */
        TIPPING
    }

    /** Returns the key of what stands still: held sideways only if the push of a support leans. */
    static SettingKey atRest(Standing standing) {
        return new SettingKey(standing.car().id(), standing.visit().id(), standing.leans() ? Sideways.HELD : Sideways.FREE, true);
    }

    /** Returns the key of a situation: what is pushed sideways must be held. */
    static SettingKey of(Standing standing, Situation situation) {
        return situation.pushedSideways() ? new SettingKey(standing.car().id(), standing.visit().id(), Sideways.HELD, true)
                : atRest(standing);
    }

    /** Returns the same without the pull of bolts of which nobody said how hard they may be pulled. */
    SettingKey withoutPull() {
        return new SettingKey(carId, visitId, sideways, false);
    }

    @Override
    public Optional<ContactSetting> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        Weight weight = reader.read(new WeightKey(carId, visitId));
        return standing.flatMap(s -> weight.estimate().map(carried -> new ContactSetting(reader, s, weight, carried, this)));
    }

    /** It holds the dolly condensed to its contacts. */
    @Override
    public boolean bulky() {
        return true;
    }
}
