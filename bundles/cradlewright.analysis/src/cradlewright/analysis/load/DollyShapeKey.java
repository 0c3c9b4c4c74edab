package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.RigidFit;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the dolly under a car bends in one situation, with the masses as listed and without factors; nothing when that is not known, or
 * when it has no members.
 *
 * @param carId the car
 * @param visitId the visit
 * @param situation what happens
 */
public record DollyShapeKey(String carId, String visitId, Situation situation) implements Key<Optional<DollyShape>> {

    /** So many pieces of equal length of each member are drawn. */
    private static final int PIECES = 8;

    @Override
    public Optional<DollyShape> compute(Reader reader) {
        return reader.read(new StandingKey(carId, visitId)).flatMap(standing -> reader.read(SettingKey.of(standing, situation)))
                .filter(setting -> setting.missing().isEmpty() && setting.frame().isPresent()).flatMap(this::shape);
    }

    private Optional<DollyShape> shape(ContactSetting setting) {
        CoupledSolution solution = setting.listed(situation).solve();
        if (solution.status() != SolveStatus.OK) {
            return Optional.empty();
        }
        FrameResult result = setting.dollyResult(solution, situation, 1);
        FrameModel model = result.loads().model();
        List<DollyShape.Bent> moved = model.members().stream().map(member -> bent(member.name(), result)).toList();
        RigidFit rigid = rigid(setting, result);
        return Optional.of(new DollyShape(situation, moved.stream().map(member -> without(rigid, member)).toList()));
    }

    private static DollyShape.Bent bent(String member, FrameResult result) {
        double length = result.loads().model().axes(member).length();
        List<DollyShape.Moved> points = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double distance = length * i / PIECES;
            points.add(new DollyShape.Moved(result.loads().model().axes(member).point(distance),
                    result.motion(member, distance).translation()));
        }
        return new DollyShape.Bent(member, points);
    }

    private static RigidFit rigid(ContactSetting setting, FrameResult result) {
        List<Vec3> places = new ArrayList<>();
        List<Vec3> movements = new ArrayList<>();
        setting.floorNodes().forEach(node -> {
            places.add(result.loads().model().node(node).position());
            movements.add(result.motion(node).translation());
        });
        return RigidFit.of(places, movements);
    }

    private static DollyShape.Bent without(RigidFit rigid, DollyShape.Bent member) {
        return new DollyShape.Bent(member.memberId(), member.points().stream()
                .map(point -> new DollyShape.Moved(point.at(), point.by().minus(rigid.at(point.at()).translation()))).toList());
    }

    /** It holds nine points of every member. */
    @Override
    public boolean bulky() {
        return true;
    }
}
