package cradlewright.mechanics.contact;

import java.util.List;
import java.util.Objects;

import cradlewright.mechanics.formula.Require;

/**
 * The contact problem: minimise 1/2 f'Cf + g'f subject to E f = w, with f_i at or above zero for each
 * {@linkplain ContactKind#UNILATERAL unilateral} contact.
 *
 * <p>C (m/N, n by n, symmetric, positive definite) is the compliance of contacts and bodies, g (m) the gap of each
 * contact before any contact force acts, E (m by n) the equilibrium rows, w (N and N m) what the contact forces have to
 * balance. Rows may depend on each other. Immutable.
 *
 * @see ContactFormulas#ENERGY
 */
public final class ContactProblem {

    /** The least compliance of a contact, m/N: nothing is rigid, and the answer would otherwise not be unique. */
    public static final double LEAST_COMPLIANCE = 1e-9;

    private static final double SYMMETRY = 1e-8;

    private final double[][] compliance;
    private final double[] gap;
    private final double[] load;
    private final List<ContactKind> kinds;
    private final EquilibriumRows rows;

    /**
     * Takes copies of all arrays.
     *
     * @param compliance C in m/N; the diagonal at or above {@link #LEAST_COMPLIANCE}, symmetric to 1e-8 of its diagonal
     * @param gap g in m, above zero where the contact stands open
     * @param equilibrium E, one array per row, each with n entries
     * @param load w, one entry per row of E
     * @param kinds one per contact
     * @throws IllegalArgumentException for lengths that do not agree, numbers that are not finite, a compliance that is
     *         not symmetric or too small
     */
    public ContactProblem(double[][] compliance, double[] gap, double[][] equilibrium, double[] load,
            List<ContactKind> kinds) {
        this.kinds = List.copyOf(kinds);
        int n = this.kinds.size();
        this.compliance = checkedCompliance(compliance, n);
        this.gap = checked(gap, n, "gap");
        this.rows = new EquilibriumRows(equilibrium, n);
        this.load = checked(load, equilibrium.length, "load");
    }

    private ContactProblem(ContactProblem other, double[] gap, double[] load) {
        this.kinds = other.kinds;
        this.compliance = other.compliance;
        this.rows = other.rows;
        this.gap = gap;
        this.load = load;
    }

    /** Returns this problem with another load w. */
    public ContactProblem withLoad(double[] other) {
        return new ContactProblem(this, gap, checked(other, load.length, "load"));
    }

    /** Returns this problem with other gaps g. */
    public ContactProblem withGap(double[] other) {
        return new ContactProblem(this, checked(other, gap.length, "gap"), load);
    }

    /** Returns n, the number of contact unknowns. */
    public int size() {
        return gap.length;
    }

    /** Returns m, the number of equilibrium rows. */
    public int rowCount() {
        return load.length;
    }

    /** Returns the compliance between two contacts, m/N. */
    public double compliance(int i, int j) {
        return compliance[i][j];
    }

    /** Returns a copy of g. */
    public double[] gap() {
        return gap.clone();
    }

    /** Returns a copy of w. */
    public double[] load() {
        return load.clone();
    }

    /** Returns a copy of E. */
    public double[][] equilibrium() {
        return rows.original();
    }

    /** Returns the kind of a contact. */
    public ContactKind kind(int i) {
        return kinds.get(i);
    }

    /** Returns the kinds of all contacts. */
    public List<ContactKind> kinds() {
        return kinds;
    }

    /** Returns the energy 1/2 f'Cf + g'f (N m), whose least value over the allowed forces belongs to the answer. */
    public double energy(double[] force) {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            double flexed = 0;
            for (int j = 0; j < size(); j++) {
                flexed += compliance[i][j] * force[j];
            }
            sum += force[i] * (0.5 * flexed + gap[i]);
        }
        return sum;
    }

    EquilibriumRows rows() {
        return rows;
    }

    double[][] sharedCompliance() {
        return compliance;
    }

    double[] sharedGap() {
        return gap;
    }

    double[] sharedLoad() {
        return load;
    }

    boolean isUnilateral(int i) {
        return kinds.get(i) == ContactKind.UNILATERAL;
    }

    /** The force against which tolerances are measured: the largest load, or what the gaps alone can lock in. */
    double forceScale() {
        double w = rows.loadScale(load);
        if (w > 0) {
            return w;
        }
        double locked = 0;
        for (int i = 0; i < gap.length; i++) {
            locked = Math.max(locked, Math.abs(gap[i]) / compliance[i][i]);
        }
        return locked > 0 ? locked : 1;
    }

    static double[] checked(double[] values, int length, String name) {
        Objects.requireNonNull(values, name);
        if (values.length != length) {
            throw new IllegalArgumentException(name + " must have " + length + " entries, found " + values.length);
        }
        double[] copy = values.clone();
        for (int i = 0; i < length; i++) {
            if (!Double.isFinite(copy[i])) {
                Require.finite(copy[i], name + " " + i);
            }
        }
        return copy;
    }

    private static double[][] checkedCompliance(double[][] given, int n) {
        Objects.requireNonNull(given, "compliance");
        if (given.length != n) {
            throw new IllegalArgumentException("compliance must have " + n + " rows, found " + given.length);
        }
        double[][] c = new double[n][];
        for (int i = 0; i < n; i++) {
            c[i] = checked(given[i], n, "compliance row " + i);
            if (c[i][i] < LEAST_COMPLIANCE) {
                throw new IllegalArgumentException("compliance of contact " + i + " must be at least " + LEAST_COMPLIANCE
                        + " m/N, found " + c[i][i]);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double mean = 0.5 * (c[i][j] + c[j][i]);
                if (Math.abs(c[i][j] - c[j][i]) > SYMMETRY * Math.sqrt(c[i][i] * c[j][j])) {
                    throw new IllegalArgumentException("compliance must be symmetric, found " + c[i][j] + " and " + c[j][i]
                            + " between contacts " + i + " and " + j);
                }
                c[i][j] = mean;
                c[j][i] = mean;
            }
        }
        return c;
    }
}
