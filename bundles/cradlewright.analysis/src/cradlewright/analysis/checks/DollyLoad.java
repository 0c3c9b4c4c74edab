package cradlewright.analysis.checks;

import cradlewright.analysis.dolly.DollyBody;
import cradlewright.analysis.dolly.DollyBodyKey;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.tipping.SupportKind;
import cradlewright.mechanics.tipping.SupportPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dolly with what stands on it, taken as one rigid load on its castors; places in the axes of the dolly, the floor at z = 0.
 *
 * @param dolly the dolly
 * @param wheels its castors, those without a place left out
 * @param carriedMass mass of what it carries, kg
 * @param carriedHigh the same at its upper end, kg
 * @param mass of both together, kg
 * @param massHigh the same at its upper end, kg
 * @param balance common balance point, m
 * @param give how far the balance point may lie off along each axis, 19 times in 20, m
 */
public record DollyLoad(DollyFacts dolly, List<Wheel> wheels, double carriedMass, double carriedHigh, double mass,
        double massHigh,
        Vec3 balance, Vec3 give) {

    /**
     * A castor with a place.
     *
     * @param castor the castor
     * @param at where its swivel axis meets the floor, or a fixed castor touches it, m
     * @param type its type in stock
     */
    public record Wheel(CastorFacts castor, Vec3 at, Optional<CastorType> type) {
    }

    /** Copies the list. */
    public DollyLoad {
        wheels = List.copyOf(wheels);
    }

    /** Returns what must be known before mass and balance point of both together are; empty when all is. */
    public static List<String> missing(Standing standing, Reader reader) {
        List<String> missing = new ArrayList<>();
        Weight weight = reader.read(new WeightKey(standing.car().id(), standing.visit().id()));
        weight.missing().forEach(part -> missing.add(part + " of a part that is on"));
        if (weight.estimate().isEmpty() && missing.isEmpty()) {
            missing.add("the mass of what is carried");
        }
        DollyFacts dolly = standing.dolly().orElseThrow();
        if (dolly.mass().isEmpty() || dolly.balancePoint().isEmpty()) {
            missing.addAll(body(dolly, reader).missing());
        }
        return missing;
    }

    /** Returns dolly and load as one; throws NoSuchElementException when something of {@link #missing} is missing. */
    public static DollyLoad of(Standing standing, Reader reader) {
        EstimatedBalance carried = reader.read(new WeightKey(standing.car().id(), standing.visit().id())).estimate()
                .orElseThrow();
        DollyFacts dolly = standing.dolly().orElseThrow();
        DollyBody body = body(dolly, reader);
        double mass = carried.balance().mass();
        double more = carried.expanded(Quantity.MASS);
        double total = mass + body.mass();
        Vec3 on = Carriers.toCarrier(carried.balance().point(), standing.setup());
        Vec3 own = body.centre().orElse(on);
        Vec3 balance = on.times(mass / total).plus(own.times(body.mass() / total));
        double ownMore = dolly.mass().map(Value::u).orElse(0.0) * Value.COVERAGE;
        // A mass that is off moves the common balance point along the line between both.
        double slide = (more * body.mass() + ownMore * mass) / (total * total);
        Vec3 apart = on.minus(own);
        double c = Math.abs(Math.cos(standing.setup().heading()));
        double s = Math.abs(Math.sin(standing.setup().heading()));
        double x = carried.expanded(Quantity.X);
        double y = carried.expanded(Quantity.Y);
        double share = mass / total;
        Vec3 give = new Vec3(share * (c * x + s * y) + slide * Math.abs(apart.x()), share * (s * x + c * y)
                + slide * Math.abs(apart.y()),
                share * carried.expanded(Quantity.Z) + slide * Math.abs(apart.z()));
        return new DollyLoad(dolly, wheels(dolly, reader), mass, mass + more, total, total + more + ownMore, balance, give);
    }

    private static DollyBody body(DollyFacts dolly, Reader reader) {
        return reader.read(new DollyBodyKey(dolly.id()));
    }

    /** Returns the castors of a dolly that have a place. */
    public static List<Wheel> wheels(DollyFacts dolly, Reader reader) {
        List<Wheel> wheels = new ArrayList<>();
        for (CastorFacts castor : dolly.castors()) {
            onFloor(dolly, castor.nodeId()).ifPresent(at -> wheels.add(new Wheel(castor, at,
                    castor.typeId().flatMap(id -> reader.read(new FactKey<>(CastorType.class, id))))));
        }
        return wheels;
    }

    private static Optional<Vec3> onFloor(DollyFacts dolly, Optional<String> nodeId) {
        return nodeId.flatMap(dolly::node).flatMap(NodeFacts::at).map(at -> new Vec3(at.x(), at.y(), 0));
    }

    /** Tells whether a screw foot of the dolly is down, so that it does not stand on its castors. */
    public static boolean onFeet(DollyFacts dolly) {
        return dolly.feet().stream().anyMatch(FootFacts::down);
    }

    /** Returns where the screw feet of the dolly touch the floor when all are down, m. */
    public List<Vec3> feet() {
        return feet(dolly);
    }

    static List<Vec3> feet(DollyFacts dolly) {
        return dolly.feet().stream().flatMap(foot -> onFloor(dolly, foot.nodeId()).stream()).toList();
    }

    /** Returns where the castors stand, m. */
    public List<Vec3> castors() {
        return wheels.stream().map(Wheel::at).toList();
    }

    /** Tells whether the dolly has castors to stand on: every castor with a place, at least three, not all in one line. */
    public boolean standsOnCastors() {
        return wheels.size() == dolly.castors().size() && spans(castors());
    }

    /** Tells whether the dolly has feet to stand on: at least three with a place, not all in one line. */
    public boolean canStandOnFeet() {
        return feet().size() == dolly.feet().size() && spans(feet());
    }

    private static boolean spans(List<Vec3> points) {
        return SupportPolygon.of(points).kind() == SupportKind.AREA;
    }

    /** Returns the weight with the masses as listed, N. */
    public double weight() {
        return mass * Constants.GRAVITY;
    }

    /** Returns the weight at its upper end, N. */
    public double weightHigh() {
        return massHigh * Constants.GRAVITY;
    }

    /** Tells whether every castor swivels, so that the dolly rolls sideways as well. */
    public boolean rollsSideways() {
        return wheels.stream().allMatch(wheel -> wheel.castor().swivel());
    }
}
