package cradlewright.analysis.checks;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import java.util.List;
import java.util.Optional;

/** Leaves off what made an answer worst: people at the car, or rolling it over what jolts it. */
public final class KeepOff {

    private KeepOff() {
    }

    /**
     * Returns what to leave off.
     *
     * @param worst what was going on
     * @param standing where
     * @param settings of the shop
     * @return nothing when it was at rest
     */
    public static Optional<Remedy> remedy(Situation worst, Standing standing, SettingsFacts settings) {
        return switch (worst.kind()) {
            case AT_REST -> Optional.empty();
            case LEAN -> Optional.of(people("Nobody leans on it while it stands like this.", WorkPointFacts.Kind.LEAN, standing));
            case BAR -> Optional.of(people("Nobody pulls on a bar while it stands like this.", WorkPointFacts.Kind.BAR, standing));
            case STAND_ON -> Optional.of(people("Nobody stands on it while it stands like this.", WorkPointFacts.Kind.STAND_ON, standing));
            case HOLE -> Optional.of(Remedy.trial("Keep it off holes and drains while it is this heavy.",
                    Trial.here(Change.of(settings.withUnevenness(0)))));
            case JOINT -> Optional.of(Remedy.trial("Do not roll it over joints while it is this heavy.",
                    Trial.here(Change.of(settings.withJointFactor(1)))));
        };
    }

    private static Remedy people(String words, WorkPointFacts.Kind kind, Standing standing) {
        CarFacts car = standing.car();
        List<WorkPointFacts> left = car.workPoints().stream().filter(point -> point.kind().filter(kind::equals).isEmpty()).toList();
        String[] gone = car.workPoints().stream().filter(point -> !left.contains(point)).map(WorkPointFacts::id).toArray(String[]::new);
        return Remedy.trial(words, Trial.here(Change.of(car.withWorkPoints(left)), gone));
    }
}
