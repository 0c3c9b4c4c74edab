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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The situations that a visit is asked about; at rest comes first. Where people lean or pull and nobody said which way, each of the four
 * ways along and across the car is a situation of its own: nobody pushes straight down at an edge, and the worst way is not known
 * before it is worked out (common practice, no source). Who stands somewhere presses straight down, and may do so while one castor stands
 * low, which takes the load off that castor and its opposite and puts it on the other two. A dolly with a prop on the floor is not rolled.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record SituationsKey(String carId, String visitId) implements Key<List<Situation>> {

    /** The ways in which somebody may push, in the axes of the car. */
    private static final Map<String, Vec3> WAYS = new LinkedHashMap<>();

    static {
        WAYS.put("front", new Vec3(-1, 0, 0));
        WAYS.put("back", new Vec3(1, 0, 0));
        WAYS.put("left", new Vec3(0, -1, 0));
        WAYS.put("right", new Vec3(0, 1, 0));
    }

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
            standing.get().car().workPoints().forEach(point -> situations.addAll(work(point, standing.get(), settings)));
        }
        standing.get().dolly().filter(dolly -> !standing.get().proppedOnFloor()).ifPresent(dolly -> rolling(dolly, settings, situations));
        return List.copyOf(situations);
    }

    private static List<Situation> work(WorkPointFacts point, Standing standing, SettingsFacts settings) {
        if (point.position().isEmpty() || point.kind().isEmpty()) {
            return List.of();
        }
        return switch (point.kind().get()) {
            case LEAN -> ways(point, "one person leaning at " + point.name(), Situation.Kind.LEAN, settings.leanForce(), standing);
            case BAR -> ways(point, "one person pulling on " + bar(point.name()), Situation.Kind.BAR, settings.barForce(), standing);
            case STAND_ON -> List.of(pushed(point, "", "one person with tools standing at " + point.name(), Situation.Kind.STAND_ON,
                    Vec3.UP.times(-settings.personMass() * Constants.GRAVITY), standing));
        };
    }

    /** People call the place after the bar as often as after what it is bolted to. */
    private static String bar(String place) {
        return place.startsWith("bar ") ? "the " + place : "a bar at " + place;
    }

    private static List<Situation> ways(WorkPointFacts point, String words, Situation.Kind kind, double force, Standing standing) {
        if (point.direction().isPresent()) {
            return List.of(pushed(point, "", words, kind, point.direction().get().times(force), standing));
        }
        return WAYS.entrySet().stream().map(way -> pushed(point, "." + way.getKey(), words + ", towards the " + way.getKey(), kind,
                way.getValue().times(force), standing)).toList();
    }

    /** Returns a push at a work point, its force in the axes of the car. */
    private static Situation pushed(WorkPointFacts point, String suffix, String words, Situation.Kind kind, Vec3 onCar, Standing standing) {
        Vec3 at = Carriers.toCarrier(point.position().orElseThrow().at(), standing.setup());
        return new Situation(point.id() + suffix, Optional.of(point.id()), words, kind, 1,
                Optional.of(new Situation.Push(at, Carriers.turn(onCar, standing.setup()))), Optional.empty(), 0);
    }

    private static void rolling(DollyFacts dolly, SettingsFacts settings, List<Situation> situations) {
        if (dolly.feet().stream().anyMatch(FootFacts::down)) {
            return;
        }
        List<Situation> stoodOn = situations.stream().filter(situation -> situation.kind() == Situation.Kind.STAND_ON).toList();
        for (CastorFacts castor : dolly.castors()) {
            String hole = "castor " + castor.name() + " in a hole";
            situations.add(new Situation("hole." + castor.id(), Optional.of(castor.id()), hole, Situation.Kind.HOLE, 1, Optional.empty(),
                    Optional.of(castor.id()), settings.unevenness()));
            for (Situation stood : stoodOn) {
                situations.add(new Situation(stood.id() + "+hole." + castor.id(), stood.about(), stood.words() + ", " + hole, stood.kind(),
                        1,
                        stood.push(), Optional.of(castor.id()), settings.unevenness()));
            }
        }
        situations.add(new Situation("joint", Optional.empty(), "rolled over a joint in the floor", Situation.Kind.JOINT,
                settings.jointFactor(), Optional.empty(),
                Optional.empty(), 0));
    }
}
