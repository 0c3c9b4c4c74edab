package cradlewright.analysis.checks.castor;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.mechanics.castor.CastorStates;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The greatest load of each castor of a rigid load on any floor, with mass and balance point at the end of their give or take that is
 * worst for it. Over the floor plan that load is a roof: faces between the castor and two others, with ridges from it to each other one.
 * Along a face the gradient leads to the worst point of the ellipsoid; where that lies beyond a ridge, the worst is on the ridge. At
 * each point found the load is worked out anew.
 */
final class WorstCastors {

    /** Share of its length below which the height of a triangle counts as none. */
    private static final double SLIVER = 1e-9;

    private WorstCastors() {
    }

    /** Returns the loads in N in the order of the castors; none when the load stands nowhere within its give or take. */
    static List<Double> of(DollyLoad load) {
        List<Vec3> castors = load.castors();
        List<Double> worst = new ArrayList<>();
        for (int i = 0; i < castors.size(); i++) {
            int castor = i;
            worst.add(ends(castor, castors, load.both()).map(at -> CastorStates.of(castors, at.point(), at.mass() * Constants.GRAVITY))
                    .filter(CastorStates::stands).mapToDouble(states -> states.worst(castor)).max().orElse(Double.NaN));
        }
        return worst.stream().anyMatch(value -> value.isNaN()) ? List.of() : worst;
    }

    private static Stream<Balance> ends(int castor, List<Vec3> castors, EstimatedBalance load) {
        List<Balance> ends = new ArrayList<>(List.of(load.balance()));
        Vec3 at = castors.get(castor);
        for (int j = 0; j < castors.size(); j++) {
            if (j != castor) {
                onRidge(at, castors.get(j), load).ifPresent(ends::add);
            }
            for (int k = j + 1; k < castors.size(); k++) {
                if (j != castor && k != castor) {
                    onFace(at, castors.get(j), castors.get(k), load).ifPresent(ends::add);
                }
            }
        }
        return ends.stream();
    }

    /** The castor and two others carry: its share is how far the balance point is from the line of these two, over how far it is. */
    private static Optional<Balance> onFace(Vec3 at, Vec3 one, Vec3 other, EstimatedBalance load) {
        Vec3 normal = Vec3.UP.cross(other.minus(one));
        double far = at.minus(one).dot(normal);
        if (Math.abs(far) <= SLIVER * normal.norm() * normal.norm()) {
            return Optional.empty();
        }
        double share = load.balance().point().minus(one).dot(normal) / far;
        return Optional.of(load.worst(share, normal.times(load.balance().mass() / far)));
    }

    /** The castor and one other carry; nothing puts more on the castor than the balance point right above it. */
    private static Optional<Balance> onRidge(Vec3 at, Vec3 other, EstimatedBalance load) {
        Vec3 along = at.minus(other);
        double square = along.dot(along);
        if (square == 0) {
            return Optional.empty();
        }
        double share = load.balance().point().minus(other).dot(along) / square;
        return load.worstIn(share, along.times(load.balance().mass() / square), Vec3.UP.cross(along), at)
                .map(end -> end.point().minus(other).dot(along) <= square ? end : new Balance(end.mass(), at));
    }
}
