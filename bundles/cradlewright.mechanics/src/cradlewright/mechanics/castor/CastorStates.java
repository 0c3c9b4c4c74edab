package cradlewright.mechanics.castor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Every way in which a rigid load can stand on three of its castors while an uneven floor leaves the others in the air
 * ({@link CastorFormulas#THREE_CARRY}).
 *
 * <p>These states are the corners of the set of all loads that balance with no castor pulling. So the worst of them bounds
 * the load of a castor for any floor and any stiffness of frame, castors and floor. Static, level on average, vertical
 * forces only. Immutable.
 */
public final class CastorStates {

    /** Most castors that are taken; every triple is looked at. */
    public static final int MOST_CASTORS = 64;

    private static final double TOLERANCE = 1e-9;

    /**
     * One state.
     *
     * @param carrying the three castors on the floor, by index, rising
     * @param loads load of every castor of the load, N; zero for those in the air
     */
    public record State(List<Integer> carrying, List<Double> loads) {

        /** Copies the lists. */
        public State {
            carrying = List.copyOf(carrying);
            loads = List.copyOf(loads);
        }
    }

    private final int count;
    private final List<State> states;

    private CastorStates(int count, List<State> states) {
        this.count = count;
        this.states = List.copyOf(states);
    }

    /**
     * Returns all states.
     *
     * @param contacts floor contacts of the castors, m, from 3 to {@value #MOST_CASTORS}; z is ignored
     * @param balancePoint balance point, m; z is ignored
     * @param weight weight, N, above zero
     * @throws IllegalArgumentException for input out of range
     */
    public static CastorStates of(List<Vec3> contacts, Vec3 balancePoint, double weight) {
        Require.within(contacts.size(), 3, MOST_CASTORS, "number of castors");
        Require.positive(weight, "weight");
        Require.finite(balancePoint.x(), "balance point x");
        Require.finite(balancePoint.y(), "balance point y");
        List<Vec3> arms = new ArrayList<>();
        for (Vec3 contact : contacts) {
            arms.add(new Vec3(Require.finite(contact.x() - balancePoint.x(), "castor x"),
                    Require.finite(contact.y() - balancePoint.y(), "castor y"), 0));
        }
        List<State> states = new ArrayList<>();
        for (int i = 0; i < arms.size(); i++) {
            for (int j = i + 1; j < arms.size(); j++) {
                for (int k = j + 1; k < arms.size(); k++) {
                    addIfStanding(states, arms, List.of(i, j, k), weight);
                }
            }
        }
        return new CastorStates(contacts.size(), states);
    }

    private static void addIfStanding(List<State> states, List<Vec3> arms, List<Integer> carrying, double weight) {
        Vec3 a = arms.get(carrying.get(0));
        Vec3 b = arms.get(carrying.get(1));
        Vec3 c = arms.get(carrying.get(2));
        Vec3 ab = b.minus(a);
        Vec3 ac = c.minus(a);
        double area = ab.cross(ac).z();
        double longest = Math.max(c.minus(b).norm(), Math.max(ab.norm(), ac.norm()));
        if (Math.abs(area) <= TOLERANCE * longest * longest) {
            return;
        }
        double[] shares = {b.cross(c).z() / area, c.cross(a).z() / area, a.cross(b).z() / area};
        Double[] loads = new Double[arms.size()];
        Arrays.fill(loads, 0.0);
        for (int n = 0; n < 3; n++) {
            if (shares[n] < -TOLERANCE) {
                return;
            }
            loads[carrying.get(n)] = weight * Math.max(0, shares[n]);
        }
        states.add(new State(carrying, List.of(loads)));
    }

    /** Returns whether the load stands at all: some three castors hold the balance point between them. */
    public boolean stands() {
        return !states.isEmpty();
    }

    /** Returns the states; none when the load falls over. */
    public List<State> states() {
        return states;
    }

    /**
     * Returns the greatest load of a castor over all states, N.
     *
     * @throws IllegalArgumentException for an index out of range
     * @throws IllegalStateException when the load does not stand
     */
    public double worst(int castor) {
        checkIndex(castor);
        return standing().stream().mapToDouble(state -> state.loads().get(castor)).max().orElseThrow();
    }

    /** Returns the least load of a castor over all states, N; exceptions as {@link #worst(int)}. */
    public double least(int castor) {
        return leastSum(List.of(castor));
    }

    /** Returns the least sum of the loads of some castors over all states, N, for example of the braked ones. */
    public double leastSum(List<Integer> castors) {
        castors.forEach(this::checkIndex);
        return standing().stream().mapToDouble(state -> castors.stream().distinct().mapToDouble(state.loads()::get).sum()).min()
                .orElseThrow();
    }

    /** Returns the castor that can get the greatest load, the lowest index where several can. */
    public int worstCastor() {
        int worst = 0;
        for (int castor = 1; castor < count; castor++) {
            if (worst(castor) > worst(worst)) {
                worst = castor;
            }
        }
        return worst;
    }

    /** Returns the greatest load that any castor can get, N. */
    public double worst() {
        return worst(worstCastor());
    }

    private List<State> standing() {
        if (!stands()) {
            throw new IllegalStateException("the balance point lies outside all castors: the load falls over");
        }
        return states;
    }

    private void checkIndex(int castor) {
        Require.within(castor, 0, count - 1, "castor index");
    }
}
