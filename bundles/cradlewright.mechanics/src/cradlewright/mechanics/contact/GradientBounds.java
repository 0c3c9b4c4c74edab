package cradlewright.mechanics.contact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import cradlewright.mechanics.formula.Require;

/**
 * Contact forces at the unfavourable end of doubtful inputs (mass, balance point, pad heights ...).
 *
 * <p>The slope of each force on the present set of shut contacts gives the worst point of the k-fold uncertainty ellipse; the
 * problem is solved anew there, and the slope is taken again at most twice more, since supports may have lifted on the way.
 * For an open support the slope of its gap takes that part. A force that does not change with any input on the present set may still do so
 * where another support closes or lifts, so every solution met on the way counts for all contacts.
 *
 * @see ContactFormulas#GRADIENT_BOUNDS
 */
public final class GradientBounds {

    /**
     * Force of one contact.
     *
     * @param nominal at the best estimate, N
     * @param standardUncertainty from the slope, N; zero for an open support
     * @param low least force found at the k-fold ends, N
     * @param high largest force found there, N
     */
    public record Bound(double nominal, double standardUncertainty, double low, double high) {

        private Bound with(double force) {
            return new Bound(nominal, standardUncertainty, Math.min(low, force), Math.max(high, force));
        }
    }

    /**
     * Equations of one set of shut contacts.
     *
     * @param slopes by contact and input: of the force where shut, of the gap where open
     */
    private record Regime(ShutSystem system, double[][] slopes) {

        Regime filled(double[][] loadSlopes, double[][] gapSlopes) {
            for (int a = 0; slopes.length > 0 && a < slopes[0].length; a++) {
                double[] dg = column(gapSlopes, a);
                ShutSystem.Answer rate = system.solve(column(loadSlopes, a), dg);
                double[] gaps = system.gaps(rate, dg);
                for (int i = 0; i < slopes.length; i++) {
                    slopes[i][a] = system.isShut(i) ? rate.force[i] : gaps[i];
                }
            }
            return this;
        }
    }

    private static final int TURNS = 3;
    /** Share of the load by which a contact must stay shut or open so that no new solution is needed. */
    private static final double CLEAR = 1e-6;

    private final ContactProblem problem;
    private final double[][] loadSlopes;
    private final double[][] gapSlopes;
    private final double[][] covariance;
    private final double k;
    private final Bound[] bounds;
    /** What was worked out for each set of shut contacts met: most contacts share one. */
    private final Map<BitSet, Regime> regimes = new HashMap<>();
    /** What was solved at ends of the ellipse. */
    private final List<ContactSolution> solutions = new ArrayList<>();
    private SolveStatus status = SolveStatus.OK;
    private SolveStatus endStatus = SolveStatus.OK;

    private GradientBounds(ContactProblem problem, double[][] loadSlopes, double[][] gapSlopes, double[][] covariance, double k) {
        this.problem = Objects.requireNonNull(problem, "problem");
        int inputs = covariance.length;
        this.covariance = checked(covariance, inputs, inputs, "covariance");
        this.loadSlopes = checked(loadSlopes, problem.rowCount(), inputs, "slope of the load");
        this.gapSlopes = checked(gapSlopes, problem.size(), inputs, "slope of the gap");
        this.k = Require.positive(k, "coverage factor");
        for (int i = 0; i < inputs; i++) {
            Require.notNegative(covariance[i][i], "variance " + i);
            for (int j = 0; j < i; j++) {
                if (Math.abs(covariance[i][j] - covariance[j][i]) > 1e-9 * Math.sqrt(covariance[i][i] * covariance[j][j])) {
                    throw new IllegalArgumentException("covariance must be symmetric, found " + covariance[i][j] + " and "
                            + covariance[j][i]);
                }
            }
        }
        this.bounds = new Bound[problem.size()];
    }

    /**
     * Works out the bounds.
     *
     * @param problem the problem at the best estimate
     * @param loadSlopes change of w per unit of each input, m rows
     * @param gapSlopes change of g per unit of each input, n rows
     * @param covariance of the inputs, symmetric, no negative variance in any direction
     * @param k coverage factor, 2 for "19 times in 20"
     * @throws IllegalArgumentException for lengths that do not agree or numbers out of range
     */
    public static GradientBounds of(ContactProblem problem, double[][] loadSlopes, double[][] gapSlopes, double[][] covariance,
            double k) {
        GradientBounds result = new GradientBounds(problem, loadSlopes, gapSlopes, covariance, k);
        result.run();
        return result;
    }

    private static double[][] checked(double[][] given, int rows, int columns, String name) {
        Objects.requireNonNull(given, name);
        if (given.length != rows) {
            throw new IllegalArgumentException(name + " must have " + rows + " rows, found " + given.length);
        }
        double[][] copy = new double[rows][];
        for (int i = 0; i < rows; i++) {
            copy[i] = ContactProblem.checked(given[i], columns, name + " row " + i);
        }
        return copy;
    }

    private void run() {
        ContactSolution nominal = ContactSolver.solve(problem);
        status = nominal.status();
        endStatus = status;
        if (!nominal.isOk()) {
            return;
        }
        for (int i = 0; i < bounds.length; i++) {
            double[] slope = regime(nominal.shut()).slopes[i];
            double u = nominal.isShut(i) ? deviation(slope) : 0;
            double low = extreme(i, nominal, -1);
            double high = extreme(i, nominal, 1);
            bounds[i] = new Bound(nominal.force(i), u, low, high);
        }
        for (int i = 0; i < bounds.length; i++) {
            for (ContactSolution met : solutions) {
                bounds[i] = bounds[i].with(met.force(i));
            }
        }
    }

    /** Least (sign -1) or largest (sign 1) force met at the ends of the ellipse. */
    private double extreme(int contact, ContactSolution nominal, int sign) {
        double best = nominal.force(contact);
        ContactSolution at = nominal;
        for (int turn = 0; turn < TURNS; turn++) {
            Regime regime = regime(at.shut());
            double[] slope = regime.slopes[contact];
            double u = deviation(slope);
            if (u == 0) {
                return best;
            }
            int direction = at.isShut(contact) ? sign : -sign;
            double[] shift = new double[slope.length];
            for (int a = 0; a < shift.length; a++) {
                shift[a] = direction * k * Dense.dot(covariance[a], slope) / u;
            }
            if (at == nominal && stays(regime, nominal, shift)) {
                double force = nominal.force(contact) + Dense.dot(slope, shift);
                return at.isShut(contact) ? sign > 0 ? Math.max(best, force) : Math.min(best, force) : best;
            }
            ContactSolution next = ContactSolver.solve(shifted(shift), regime.system);
            if (!next.isOk()) {
                endStatus = worse(endStatus, next.status());
                return best;
            }
            solutions.add(next);
            best = sign > 0 ? Math.max(best, next.force(contact)) : Math.min(best, next.force(contact));
            if (Arrays.equals(next.shut(), at.shut())) {
                return best;
            }
            at = next;
        }
        return best;
    }

    /**
     * Whether the same contacts stay shut at another input, clear of any doubt: then every force follows its slope exactly and
     * a new solution would only repeat it.
     */
    private boolean stays(Regime regime, ContactSolution nominal, double[] shift) {
        double scale = problem.forceScale();
        for (int i = 0; i < bounds.length; i++) {
            double change = Dense.dot(regime.slopes[i], shift);
            if (!nominal.isShut(i)) {
                if (!(nominal.gap(i) + change > CLEAR * problem.compliance(i, i) * scale)) {
                    return false;
                }
            } else if (problem.isUnilateral(i) && !(nominal.force(i) + change > CLEAR * scale)) {
                return false;
            }
        }
        return rowsAgree(shift);
    }

    /** Loads that no contact can balance must come to light in a solution. */
    private boolean rowsAgree(double[] shift) {
        return problem.rows().agrees(load(shift), ContactSolver.RESIDUAL_TOLERANCE * problem.forceScale());
    }

    /** A failed calculation hides more than a fall, so it wins. */
    private static SolveStatus worse(SolveStatus a, SolveStatus b) {
        return a == SolveStatus.OK || a == SolveStatus.NO_EQUILIBRIUM ? b : a;
    }

    private ContactProblem shifted(double[] shift) {
        double[] g = problem.gap();
        for (int i = 0; i < g.length; i++) {
            g[i] += Dense.dot(gapSlopes[i], shift);
        }
        return problem.withLoad(load(shift)).withGap(g);
    }

    private double[] load(double[] shift) {
        double[] w = problem.load();
        for (int i = 0; i < w.length; i++) {
            w[i] += Dense.dot(loadSlopes[i], shift);
        }
        return w;
    }

    private Regime regime(boolean[] shut) {
        BitSet key = new BitSet(shut.length);
        for (int i = 0; i < shut.length; i++) {
            key.set(i, shut[i]);
        }
        return regimes.computeIfAbsent(key, set -> new Regime(new ShutSystem(problem, shut), new double[shut.length][covariance.length])
                .filled(loadSlopes, gapSlopes));
    }

    private static double[] column(double[][] matrix, int a) {
        double[] result = new double[matrix.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = matrix[i][a];
        }
        return result;
    }

    private double deviation(double[] slope) {
        double variance = 0;
        double size = 0;
        for (int a = 0; a < slope.length; a++) {
            variance += slope[a] * Dense.dot(covariance[a], slope);
            size += slope[a] * slope[a] * covariance[a][a];
        }
        if (variance < -1e-9 * size) {
            throw new IllegalArgumentException("covariance must not give a negative variance, found " + variance);
        }
        return Math.sqrt(Math.max(0, variance));
    }

    /** Returns how the calculation at the best estimate ended. */
    public SolveStatus status() {
        return status;
    }

    /**
     * Returns the gravest end met at the worst points: NO_EQUILIBRIUM means that it falls over within the doubt, whatever the
     * bounds say.
     */
    public SolveStatus endStatus() {
        return endStatus;
    }

    /** Returns the bounds of a contact; IllegalStateException when there is no answer at the best estimate. */
    public Bound bound(int contact) {
        if (status != SolveStatus.OK) {
            throw new IllegalStateException("there are no bounds: " + status);
        }
        return bounds[contact];
    }
}
