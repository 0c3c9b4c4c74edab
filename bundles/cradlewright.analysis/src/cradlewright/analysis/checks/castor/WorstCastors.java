package cradlewright.analysis.checks.castor;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.mechanics.castor.CastorStates;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;

/**
 * The greatest load of each castor of a rigid load on any floor, with the balance point anywhere within its give and the mass at
 * its
 * upper end. What statics allow is a linear programme in the loads of the castors and the place of the balance point; its
 * corners have the
 * balance point at a corner of its box, or on an edge of the box and on a line through two castors.
 */
final class WorstCastors {

    private WorstCastors() {
    }

    /** Returns the loads in N in the order of the castors; none when the load stands nowhere within the box. */
    static List<Double> of(DollyLoad load) {
        List<Vec3> castors = load.castors();
        List<CastorStates> states = places(load, castors).stream().map(at -> CastorStates.of(castors, at, load.weightHigh()))
                .filter(CastorStates::stands).toList();
        if (states.isEmpty()) {
            return List.of();
        }
        List<Double> worst = new ArrayList<>();
        for (int i = 0; i < castors.size(); i++) {
            int castor = i;
            worst.add(states.stream().mapToDouble(state -> state.worst(castor)).max().orElseThrow());
        }
        return worst;
    }

    private static List<Vec3> places(DollyLoad load, List<Vec3> castors) {
        Vec3 middle = load.balance();
        Vec3 give = load.give();
        List<Vec3> places = new ArrayList<>();
        places.add(middle);
        for (int side = -1; side <= 1; side += 2) {
            double x = middle.x() + side * give.x();
            double y = middle.y() + side * give.y();
            places.add(new Vec3(x, middle.y() - give.y(), 0));
            places.add(new Vec3(x, middle.y() + give.y(), 0));
            for (int i = 0; i < castors.size(); i++) {
                for (int j = i + 1; j < castors.size(); j++) {
                    Vec3 a = castors.get(i);
                    Vec3 way = castors.get(j).minus(a);
                    double crossY = a.y() + way.y() * (x - a.x()) / way.x();
                    double crossX = a.x() + way.x() * (y - a.y()) / way.y();
                    // A line along an edge of the box never crosses it; the quotient is not finite then and stays out of the box.
                    if (Math.abs(crossY - middle.y()) <= give.y()) {
                        places.add(new Vec3(x, crossY, 0));
                    }
                    if (Math.abs(crossX - middle.x()) <= give.x()) {
                        places.add(new Vec3(crossX, y, 0));
                    }
                }
            }
        }
        return places;
    }
}
