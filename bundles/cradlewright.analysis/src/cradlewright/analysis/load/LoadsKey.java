package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What everything carries at a visit in one situation.
 *
 * @param carId the car
 * @param visitId the visit
 * @param situation what happens
 * @param factored whether actions are factored for resistances of EN 1993: 1.35 own weight of the dolly, 1.5 what it carries and
 *        pushes (EN 1990 Table A1.2(B), from memory; everything carried counts as variable: common practice, no source); what is
 *        carried is where its give or take is heaviest, the dolly weighs what is listed
 */
public record LoadsKey(String carId, String visitId, Situation situation, boolean factored) implements Key<Loads> {

    /** Partial factor of the own weight of the dolly, EN 1990 Table A1.2(B) (from memory). */
    public static final double OWN = 1.35;
    /** Partial factor of what it carries and of pushes, EN 1990 Table A1.2(B) (from memory). */
    public static final double CARRIED = 1.5;

    @Override
    public Loads compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        if (standing.isEmpty()) {
            return Loads.none(situation, Loads.Outcome.MISSING, "which parts are on and what they rest on");
        }
        Loads loads = solve(reader, SettingKey.of(standing.get(), situation));
        if (!loads.found()) {
            return loads;
        }
        for (SettingKey other : others(standing.get())) {
            Loads there = solve(reader, other);
            if (!there.found() && !other.boltsPull()) {
                return there.outcome() == Loads.Outcome.FALLS ? Loads.none(situation, Loads.Outcome.MISSING, pullsNeeded(standing.get()))
                        : there;
            }
            loads = there.found() ? loads.widened(there) : loads;
        }
        return loads;
    }

    /**
     * Returns what else may be so. Bolts of which nobody said how hard they may be pulled: they may let go, and the others carry what
     * they held. Supports that lean: without friction they press harder against each other, if they hold it then at all.
     */
    private List<SettingKey> others(Standing standing) {
        List<SettingKey> others = new ArrayList<>();
        SettingKey first = SettingKey.of(standing, situation);
        if (!standing.boltsOfUnknownPull().isEmpty()) {
            others.add(first.withoutPull());
        }
        if (standing.leans() && !situation.pushedSideways()) {
            others.add(new SettingKey(carId, visitId, SettingKey.Sideways.FREE, true));
        }
        return others;
    }

    private static String pullsNeeded(Standing standing) {
        return standing.boltsOfUnknownPull().stream().map(support -> support.name()
                + ": how hard its bolt may be pulled; without that pull it falls over")
                .collect(Collectors.joining("; "));
    }

    private Loads solve(Reader reader, SettingKey key) {
        Optional<ContactSetting> setting = reader.read(key);
        if (setting.isEmpty()) {
            return Loads.none(situation, Loads.Outcome.MISSING, "the mass of what is carried");
        }
        if (!setting.get().missing().isEmpty()) {
            return Loads.none(situation, Loads.Outcome.MISSING, String.join("; ", setting.get().missing()));
        }
        return new LoadSolver(setting.get(), situation).solve(factored);
    }

    /** With factors it holds the forces in every member. */
    @Override
    public boolean bulky() {
        return factored;
    }
}
