package cradlewright.analysis.load;

import cradlewright.analysis.engine.Engine.SettingsKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The situations that a visit is asked about; at rest comes first.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record SituationsKey(String carId, String visitId) implements Key<List<Situation>> {

    @Override
    public List<Situation> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        if (standing.isEmpty() || standing.get().carrier() == CarrierKind.AWAY) {
            return List.of();
        }
        SettingsFacts settings = reader.read(new SettingsKey());
        List<Situation> situations = new ArrayList<>();
        situations.add(Situation.atRest());
        if (!standing.get().lifted() && standing.get().carries(PieceKind.SHELL)) {
            // Nobody leans on, pulls at or climbs into what hangs: lift.hanging says so instead.
            standing.get().car().workPoints().forEach(point -> work(point, standing.get(), settings).ifPresent(situations::add));
        }
        standing.get().dolly().ifPresent(dolly -> rolling(dolly, settings, situations));
        return List.copyOf(situations);
    }

    private static Optional<Situation> work(WorkPointFacts point, Standing standing, SettingsFacts settings) {
        if (point.position().isEmpty() || point.kind().isEmpty()) {
            return Optional.empty();
        }
        Vec3 at = Carriers.toCarrier(point.position().get().at(), standing.setup());
        return Optional.of(switch (point.kind().get()) {
            case LEAN -> pushed(point, "one person leaning at " + point.name(), Situation.Kind.LEAN, at,
                    direction(point, standing).times(settings.leanForce()));
            case BAR -> pushed(point, "one person pulling on " + bar(point.name()), Situation.Kind.BAR, at,
                    direction(point, standing).times(settings.barForce()));
            case STAND_ON -> pushed(point, "one person with tools standing at " + point.name(), Situation.Kind.STAND_ON, at,
                    Vec3.UP.times(-settings.personMass() * Constants.GRAVITY));
        });
    }

    /** People call the place after the bar as often as after what it is bolted to. */
    private static String bar(String place) {
        return place.startsWith("bar ") ? "the " + place : "a bar at " + place;
    }

    private static Vec3 direction(WorkPointFacts point, Standing standing) {
        Vec3 onCar = point.direction().orElse(Vec3.UP.times(-1));
        return Carriers.turn(onCar, standing.setup());
    }

    private static Situation pushed(WorkPointFacts point, String words, Situation.Kind kind, Vec3 at, Vec3 force) {
        return new Situation(point.id(), words, kind, 1, Optional.of(new Situation.Push(at, force)), Optional.empty(), 0);
    }

    private static void rolling(DollyFacts dolly, SettingsFacts settings, List<Situation> situations) {
        if (dolly.feet().stream().anyMatch(FootFacts::down)) {
            return;
        }
        for (CastorFacts castor : dolly.castors()) {
            situations.add(new Situation("hole." + castor.id(), "castor " + castor.name() + " in a hole", Situation.Kind.HOLE, 1,
                    Optional.empty(), Optional.of(castor.id()), settings.unevenness()));
        }
        situations.add(new Situation("joint", "rolled over a joint in the floor", Situation.Kind.JOINT, settings.jointFactor(), Optional.empty(),
                Optional.empty(), 0));
    }
}
