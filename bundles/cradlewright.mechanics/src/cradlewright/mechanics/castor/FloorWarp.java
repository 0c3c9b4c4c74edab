package cradlewright.mechanics.castor;

import java.util.List;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Four castors on a floor with one low spot, all still touching: how the load shifts and at what floor error the first castor
 * leaves the floor ({@link CastorFormulas#FLOOR_WARP}).
 *
 * <p>Four forces have one pattern n that balances by itself (for a rectangle plus, minus, plus, minus). A floor error presses
 * that pattern into the loads in proportion to 1/(sum n^2/k + c_body). Valid up to the first lift-off; beyond that a contact
 * solution is needed. The compliance of the body is taken to act in the pattern n only. Immutable.
 */
public final class FloorWarp {

    private final double[] flat;
    private final double[] pattern;
    private final double compliance;

    private FloorWarp(double[] flat, double[] pattern, double compliance) {
        this.flat = flat;
        this.pattern = pattern;
        this.compliance = compliance;
    }

    /**
     * Prepares the pattern and the loads on a flat floor.
     *
     * @param contacts four floor contacts, m, in order round the polygon; z is ignored
     * @param balancePoint balance point, m
     * @param weight weight, N, above zero
     * @param stiffness stiffness of castor and floor at each contact, N/m, above zero
     * @param bodyCompliance compliance of the body in the pattern n scaled to n = 1 at the first castor, m/N; zero is rigid; a
     *     rectangle of lateral spacing b and torsional stiffness K_t has b^2/K_t ({@link #torsionCompliance})
     * @throws IllegalArgumentException for input out of range, or contacts of which three lie on one line
     */
    public static FloorWarp of(List<Vec3> contacts, Vec3 balancePoint, double weight, List<Double> stiffness,
            double bodyCompliance) {
        Require.within(contacts.size(), 4, 4, "number of castors");
        Require.within(stiffness.size(), 4, 4, "number of stiffness values");
        Require.notNegative(bodyCompliance, "compliance of the body");
        double[] pattern = pattern(contacts);
        CastorStates states = CastorStates.of(contacts, balancePoint, weight);
        if (!states.stands()) {
            throw new IllegalArgumentException("the balance point must lie between the castors, found " + balancePoint);
        }
        List<Double> some = states.states().get(0).loads();
        double compliance = bodyCompliance;
        double shift = bodyCompliance * projection(some, pattern);
        for (int i = 0; i < 4; i++) {
            double k = Require.positive(stiffness.get(i), "stiffness of castor " + i);
            compliance += pattern[i] * pattern[i] / k;
            shift += pattern[i] * some.get(i) / k;
        }
        double[] flat = new double[4];
        for (int i = 0; i < 4; i++) {
            flat[i] = some.get(i) - shift / compliance * pattern[i];
        }
        return new FloorWarp(flat, pattern, compliance);
    }

    private static double projection(List<Double> loads, double[] pattern) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < 4; i++) {
            product += pattern[i] * loads.get(i);
            square += pattern[i] * pattern[i];
        }
        return product / square;
    }

    private static double[] pattern(List<Vec3> contacts) {
        double[] areas = new double[4];
        double longest = 0;
        for (int i = 0; i < 4; i++) {
            Vec3 a = contacts.get((i + 1) % 4);
            Vec3 ab = contacts.get((i + 2) % 4).minus(a);
            Vec3 ac = contacts.get((i + 3) % 4).minus(a);
            areas[i] = Require.finite(ab.x() * ac.y() - ab.y() * ac.x(), "area between castors") * (i % 2 == 0 ? 1 : -1);
            longest = Math.max(longest, Math.max(ab.norm(), ac.norm()));
        }
        double[] pattern = new double[4];
        for (int i = 0; i < 4; i++) {
            if (Math.abs(areas[i]) <= 1e-9 * longest * longest) {
                throw new IllegalArgumentException("no three castors may lie on one line, found " + contacts);
            }
            pattern[i] = areas[i] / areas[0];
        }
        return pattern;
    }

    /** Returns b^2/K_t, m/N, of a body on a rectangle: lateral spacing b (m), torsional stiffness K_t (N m/rad). */
    public static double torsionCompliance(double spacing, double torsionalStiffness) {
        Require.positive(torsionalStiffness, "torsional stiffness");
        return Require.positive(spacing, "lateral spacing") * spacing / torsionalStiffness;
    }

    /**
     * Returns the load of a castor, N, with the floor low by {@code low} (m, below zero: high) under another or the same one.
     * A value below zero means that the first lift-off has been passed.
     */
    public double load(int castor, int lowCastor, double low) {
        checkIndex(castor);
        checkIndex(lowCastor);
        return flat[castor] - pattern[lowCastor] * Require.finite(low, "floor error") / compliance * pattern[castor];
    }

    /** Returns by how much the floor must be low under a castor for the first castor to leave it, m; zero when one has. */
    public double firstUnloading(int lowCastor) {
        checkIndex(lowCastor);
        double first = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            double loss = pattern[lowCastor] * pattern[i] / compliance;
            if (loss > 0) {
                first = Math.min(first, Math.max(0, flat[i]) / loss);
            }
        }
        return first;
    }

    private static void checkIndex(int castor) {
        Require.within(castor, 0, 3, "castor index");
    }
}
