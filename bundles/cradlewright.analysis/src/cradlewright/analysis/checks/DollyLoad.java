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
import cradlewright.mechanics.mass.MassPoint;
import cradlewright.mechanics.mass.MassUncertainty;
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
 * @param carried what it carries
 * @param both dolly and load together
 */
public record DollyLoad(DollyFacts dolly, List<Wheel> wheels, EstimatedBalance carried, EstimatedBalance both) {

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
        if (weight.estimate().filter(estimate -> estimate.expanded(Quantity.MASS) >= estimate.balance().mass()).isPresent()) {
            missing.add("what is carried, weighed: by its give or take it could weigh nothing");
        }
        DollyFacts dolly = standing.dolly().orElseThrow();
        if (dolly.mass().isEmpty() || dolly.balancePoint().isEmpty()) {
            missing.addAll(body(dolly, reader).missing());
        }
        return missing;
    }

    /** Returns dolly and load as one; throws NoSuchElementException when something of {@link #missing} is missing. */
    public static DollyLoad of(Standing standing, Reader reader) {
        EstimatedBalance carried = Carriers.toCarrier(reader.read(new WeightKey(standing.car().id(), standing.visit().id())).estimate()
                .orElseThrow(), standing.setup());
        DollyFacts dolly = standing.dolly().orElseThrow();
        DollyBody body = body(dolly, reader);
        Vec3 own = body.centre().orElse(carried.balance().point());
        MassPoint empty = new MassPoint(body.mass(), own, dolly.mass().map(Value::u).orElse(0.0), Vec3.ZERO, MassPoint.NO_COMMON_SCALE);
        EstimatedBalance both = empty.mass() > 0 ? MassUncertainty.with(carried, empty) : carried;
        return new DollyLoad(dolly, wheels(dolly, reader), carried, both);
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

    /** Returns the common balance point with the masses as listed, m. */
    public Vec3 balance() {
        return both.balance().point();
    }

    /** Returns the mass of both at its upper end, kg. */
    public double massHigh() {
        return both.balance().mass() + both.expanded(Quantity.MASS);
    }

    /** Returns the mass of what is carried at its upper end, kg. */
    public double carriedHigh() {
        return carried.balance().mass() + carried.expanded(Quantity.MASS);
    }

    /** Returns the weight at its upper end, N. */
    public double weightHigh() {
        return massHigh() * Constants.GRAVITY;
    }

    /** Tells whether every castor swivels, so that the dolly rolls sideways as well. */
    public boolean rollsSideways() {
        return wheels.stream().allMatch(wheel -> wheel.castor().swivel());
    }
}
