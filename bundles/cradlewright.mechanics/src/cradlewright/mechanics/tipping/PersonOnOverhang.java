package cradlewright.mechanics.tipping;

import java.util.List;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A standing load with persons or parts out beyond the edge of its floor contacts ({@link TippingFormulas#OVERHANG},
 * {@link TippingFormulas#OVERHANG_EDGE}). Positions along an axis that points out over the edge.
 *
 * <p>Level floor, persons at rest: add a push for work, and a drop factor for a jump.
 */
public final class PersonOnOverhang {

    /**
     * A mass somewhere on the load.
     *
     * @param position where it acts, m; z is ignored
     * @param mass mass, kg, not below zero
     */
    public record Placed(Vec3 position, double mass) {

        /** Refuses coordinates that are not finite and a mass below zero. */
        public Placed {
            Require.finite(position.x(), "position x");
            Require.finite(position.y(), "position y");
            Require.notNegative(mass, "mass of the person");
        }
    }

    private PersonOnOverhang() {
    }

    /**
     * Returns the ratio of holding to tipping moment; positive infinity for a person not beyond the edge, at most zero when the
     * load does not even stand alone.
     *
     * @param edge position of the edge, m
     * @param balance position of the balance point, m
     * @param mass mass of the load, kg, above zero
     * @param personMass mass out on the overhang, kg, not below zero
     * @param person its position, m
     */
    public static double ratio(double edge, double balance, double mass, double personMass, double person) {
        Require.finite(edge, "position of the edge");
        Require.finite(person, "position of the person");
        double holding = Require.positive(mass, "mass of the load") * (edge - Require.finite(balance, "balance point"));
        return momentRatio(holding, Require.notNegative(personMass, "mass of the person") * (person - edge));
    }

    /** Returns holding over tipping moment; a load that does not stand alone never gets a good ratio from an idle person. */
    private static double momentRatio(double holding, double tipping) {
        if (tipping > 0) {
            return holding / tipping;
        }
        return holding > 0 ? Double.POSITIVE_INFINITY : 0;
    }

    /**
     * Returns the largest mass at a place beyond the edge for a ratio, kg; zero when the load does not stand alone; positive
     * infinity for a place not beyond the edge.
     */
    public static double largestMass(double edge, double balance, double mass, double person, double ratio) {
        double unit = ratio(edge, balance, mass, 1, person);
        return Math.max(0, unit) / Require.positive(ratio, "ratio");
    }

    /**
     * Returns where the edge (or the foot of an end prop) must be for a ratio, m; never more inward than the balance point.
     *
     * @param balance position of the balance point, m
     * @param mass mass of the load, kg, above zero
     * @param personMass mass out on the overhang, kg, not below zero
     * @param person its position, m
     * @param ratio ratio wanted, above zero
     */
    public static double edgeNeeded(double balance, double mass, double personMass, double person, double ratio) {
        Require.positive(mass, "mass of the load");
        double tipping = Require.positive(ratio, "ratio") * Require.notNegative(personMass, "mass of the person");
        Require.finite(balance, "balance point");
        Require.finite(person, "position of the person");
        double edge = (mass * balance + tipping * person) / (mass + tipping);
        return Math.max(balance, edge);
    }

    /**
     * Returns the least ratio over all edges of the polygon; positive infinity when nobody is beyond an edge. Persons inside an
     * edge are not counted as holding: they may step off.
     *
     * @param polygon support polygon with an area
     * @param balancePoint balance point of the load without persons, m
     * @param mass mass of the load without persons, kg, above zero
     * @param persons persons and loose parts
     * @throws IllegalArgumentException for input out of range or contacts that span no area
     */
    public static double leastRatio(SupportPolygon polygon, Vec3 balancePoint, double mass, List<Placed> persons) {
        if (polygon.kind() != SupportKind.AREA) {
            throw new IllegalArgumentException("the floor contacts must span an area, found a " + polygon.kind());
        }
        Require.positive(mass, "mass of the load");
        double least = Double.POSITIVE_INFINITY;
        for (SupportEdge edge : polygon.edges()) {
            double distance = Require.finite(edge.distance(balancePoint), "distance of the balance point from the edge");
            double tipping = 0;
            for (Placed person : persons) {
                tipping += person.mass() * Math.max(0, -edge.distance(person.position()));
            }
            least = Math.min(least, momentRatio(mass * distance, tipping));
        }
        return least;
    }
}
