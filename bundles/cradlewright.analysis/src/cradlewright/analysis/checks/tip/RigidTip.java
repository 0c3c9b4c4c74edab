package cradlewright.analysis.checks.tip;

import cradlewright.analysis.load.Situation.Push;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.tipping.SupportEdge;
import cradlewright.mechanics.tipping.SupportPolygon;
import java.util.List;

/**
 * A rigid load on points at one height, and how many times a push can be laid on before it goes over an edge: statics, moments
 * about each
 * edge of the points. The same question as that of the coupled bodies, which take every stiffness into account that does not
 * matter
 * here; it serves the unfavourable end of mass and balance point and the search for remedies.
 *
 * @param points where it stands, m
 * @param height of the points, m
 * @param load mass and balance point, kg and m; each edge is asked at the point of their give or take that is worst for it
 * @param inward how far the points may move inward, as castors do when they swivel, m
 */
record RigidTip(List<Vec3> points, double height, EstimatedBalance load, double inward) {

    /** Copies the list. */
    RigidTip {
        points = List.copyOf(points);
    }

    /** Returns how many times the push can be laid on; infinite when it upsets nothing, zero for what does not stand. */
    double ratio(Push push) {
        SupportPolygon polygon = SupportPolygon.of(points);
        if (polygon.edges().isEmpty() || load.expanded(Quantity.MASS) >= load.balance().mass()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (SupportEdge edge : polygon.edges()) {
            Vec3 out = edge.outward();
            // What holds is m g (d - inward), d the distance to the edge: it shrinks with the mass and along the way out.
            double arm = edge.distance(load.balance().point()) - inward;
            Balance worst = load.worst(-arm, out.times(load.balance().mass()));
            double holding = worst.mass() * Constants.GRAVITY * (edge.distance(worst.point()) - inward);
            // Pushing down within the edge helps to hold, so this may be below zero.
            double tipping = push.force().dot(out) * (push.at().z() - height) + push.force()
                    .z() * (edge.distance(push.at()) - inward);
            if (holding <= 0) {
                return 0;
            }
            if (tipping > 0) {
                least = Math.min(least, holding / tipping);
            }
        }
        return least;
    }
}
