package cradlewright.analysis.checks.castor;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.DollyLoad.Wheel;
import cradlewright.analysis.checks.Fall;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.castor.Brake;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What braked castors hold least against what the fall of the floor asks of them: a rigid load on any three castors, as an uneven floor
 * leaves it, on a floor that falls in any direction, with mass and balance point at the end of their give or take that is worst.
 *
 * <p>Over the floor plan, what three castors hold is flat as long as the same of them are held by friction and the others by their
 * brake test; the faces meet on the lines between two castors. On each face and each line the gradient leads to the worst point of the
 * ellipsoid, where it is worked out anew.
 */
final class WorstBrakes {

    /** Directions of the fall that are looked at. */
    private static final int DIRECTIONS = 16;
    /** Share of its length below which the height of a triangle counts as none, and of the weight below which a share counts as zero. */
    private static final double SLIVER = 1e-9;

    private final DollyLoad load;
    private final Fall fall;
    private final Set<Integer> braked;
    private final double friction;

    private WorstBrakes(DollyLoad load, Fall fall, Set<Integer> braked, double friction) {
        this.load = load;
        this.fall = fall;
        this.braked = braked;
        this.friction = friction;
    }

    /** A castor that carries: its share of the weight is (p - foot) . growth, p the place right below the balance point. */
    private record Share(int castor, Vec3 foot, Vec3 growth) {

        double at(Vec3 point) {
            return point.minus(foot).dot(growth);
        }
    }

    /** Two or three castors that carry all, and the line on which the balance point must lie where they are two. */
    private record Carrying(List<Share> shares, Optional<Vec3> across) {
    }

    /** Returns the least hold for what is asked; nothing when the load stands nowhere within its give or take. */
    static Optional<Brake> of(DollyLoad load, Fall fall, Set<Integer> braked, double friction) {
        WorstBrakes all = new WorstBrakes(load, fall, braked, friction);
        return all.carrying().stream().flatMap(all::ends).min(Comparator.comparingDouble(Brake::ratio)
                .thenComparingDouble(Brake::capacity));
    }

    private List<Carrying> carrying() {
        List<Vec3> castors = load.castors();
        List<Carrying> all = new ArrayList<>();
        for (int i = 0; i < castors.size(); i++) {
            for (int j = i + 1; j < castors.size(); j++) {
                line(i, j, castors).ifPresent(all::add);
                for (int k = j + 1; k < castors.size(); k++) {
                    face(List.of(i, j, k), castors).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private static Optional<Carrying> line(int one, int other, List<Vec3> castors) {
        Vec3 along = castors.get(other).minus(castors.get(one));
        double square = along.dot(along);
        if (square == 0) {
            return Optional.empty();
        }
        Vec3 growth = along.times(1 / square);
        return Optional.of(new Carrying(List.of(new Share(other, castors.get(one), growth),
                new Share(one, castors.get(other), growth.times(-1))), Optional.of(Vec3.UP.cross(along))));
    }

    private static Optional<Carrying> face(List<Integer> three, List<Vec3> castors) {
        List<Share> shares = new ArrayList<>();
        for (int n = 0; n < three.size(); n++) {
            Vec3 one = castors.get(three.get((n + 1) % three.size()));
            Vec3 normal = Vec3.UP.cross(castors.get(three.get((n + 2) % three.size())).minus(one));
            double far = castors.get(three.get(n)).minus(one).dot(normal);
            if (Math.abs(far) <= SLIVER * normal.dot(normal)) {
                return Optional.empty();
            }
            shares.add(new Share(three.get(n), one, normal.times(1 / far)));
        }
        return Optional.of(new Carrying(shares, Optional.empty()));
    }

    private Stream<Brake> ends(Carrying carrying) {
        List<Share> holding = carrying.shares().stream().filter(share -> braked.contains(share.castor())).toList();
        List<Brake> ends = new ArrayList<>();
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = 2 * Math.PI * i / DIRECTIONS;
            Vec3 downhill = new Vec3(Math.cos(angle), Math.sin(angle), 0);
            hold(carrying, downhill, load.both().balance()).ifPresent(ends::add);
            for (int slipping = 0; slipping < 1 << holding.size(); slipping++) {
                worst(carrying, holding, slipping, downhill).flatMap(end -> hold(carrying, downhill, end)).ifPresent(ends::add);
            }
        }
        return ends.stream();
    }

    /** Returns where what is asked grows most over what is held, as long as the castors of that set are held by friction alone. */
    private Optional<Balance> worst(Carrying carrying, List<Share> holding, int slipping, Vec3 downhill) {
        Balance middle = load.both().balance();
        double needed = Constants.GRAVITY * Math.sin(fall.angle());
        double gripped = Constants.GRAVITY * Math.cos(fall.angle()) * friction;
        double capacity = 0;
        double byMass = 0;
        Vec3 byPlace = Vec3.ZERO;
        for (int n = 0; n < holding.size(); n++) {
            Share share = holding.get(n);
            if ((slipping >> n & 1) == 0) {
                capacity += Brake.testForce(rated(share.castor()));
            } else {
                byMass += gripped * share.at(below(middle.point(), downhill));
                byPlace = byPlace.plus(share.growth().times(gripped * middle.mass()));
            }
        }
        capacity = Math.max(0, capacity + byMass * middle.mass());
        // The gradient of asked over held, times held squared.
        double asked = needed * middle.mass();
        double growth = needed * capacity - asked * byMass;
        Vec3 way = lifted(byPlace.times(-asked), downhill);
        return carrying.across().isEmpty() ? Optional.of(load.both().worst(growth, way))
                : load.both().worstIn(growth, way, lifted(carrying.across().get(), downhill), carrying.shares().get(0).foot());
    }

    /** A higher balance point lies further downhill: a gradient over the floor plan as one over the balance point. */
    private Vec3 lifted(Vec3 plan, Vec3 downhill) {
        return plan.plus(Vec3.UP.times(fall.slope() * plan.dot(downhill)));
    }

    private Vec3 below(Vec3 balance, Vec3 downhill) {
        return balance.plus(downhill.times(fall.slope() * Math.max(0, balance.z())));
    }

    /** Returns what is asked and held there; nothing where these castors alone do not carry. */
    private Optional<Brake> hold(Carrying carrying, Vec3 downhill, Balance at) {
        Vec3 below = below(at.point(), downhill);
        boolean stands = carrying.shares().stream().allMatch(share -> share.at(below) >= -SLIVER)
                && carrying.across().map(across -> Math.abs(below.minus(carrying.shares().get(0).foot()).dot(across))
                <= SLIVER * across.dot(across)).orElse(true);
        if (!stands) {
            return Optional.empty();
        }
        double weight = at.mass() * Constants.GRAVITY;
        List<Brake.Braked> brakes = carrying.shares().stream().filter(share -> braked.contains(share.castor()))
                .map(share -> new Brake.Braked(weight * Math.cos(fall.angle()) * Math.max(0, share.at(below)), rated(share.castor())))
                .toList();
        return Optional.of(Brake.hold(weight, fall.angle(), brakes, friction));
    }

    private double rated(int castor) {
        Wheel wheel = load.wheels().get(castor);
        return wheel.type().flatMap(CastorType::ratedLoad).map(Value::low).orElseThrow();
    }
}
