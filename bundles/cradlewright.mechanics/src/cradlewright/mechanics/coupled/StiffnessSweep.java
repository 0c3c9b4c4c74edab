package cradlewright.mechanics.coupled;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;

import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.contact.StaticsBounds;
import cradlewright.mechanics.formula.Require;

/**
 * Contact forces over six torsional stiffnesses of the shell, since neither a soft nor a stiff shell governs: five spaced
 * evenly by ratio from a lower to an upper value, and rigid.
 *
 * @see CoupledFormulas#STIFFNESS_SWEEP
 */
public final class StiffnessSweep {

    private static final int ELASTIC = 5;

    private final List<Double> stiffnesses;
    private final List<CoupledSolution> solutions;
    private final StaticsBounds bounds;
    private final SolveStatus status;

    private StiffnessSweep(List<Double> stiffnesses, List<CoupledSolution> solutions, StaticsBounds bounds, SolveStatus status) {
        this.stiffnesses = List.copyOf(stiffnesses);
        this.solutions = List.copyOf(solutions);
        this.bounds = bounds;
        this.status = status;
    }

    /**
     * Runs the sweep.
     *
     * @param lower least torsional stiffness, N m/rad, above zero
     * @param upper largest elastic one, N m/rad, above {@code lower}
     * @param withStiffness the problem with that stiffness
     * @param rigid the solution with a rigid shell
     * @throws IllegalArgumentException for stiffnesses out of order
     */
    public static StiffnessSweep run(double lower, double upper, DoubleFunction<CoupledProblem> withStiffness,
            CoupledSolution rigid) {
        Require.positive(lower, "lower torsional stiffness");
        Require.finite(upper, "upper torsional stiffness");
        if (upper <= lower) {
            throw new IllegalArgumentException("upper torsional stiffness must lie above " + lower + ", found " + upper);
        }
        Objects.requireNonNull(rigid, "rigid");
        List<Double> stiffnesses = new ArrayList<>(List.of(Double.POSITIVE_INFINITY));
        List<CoupledSolution> solutions = new ArrayList<>(List.of(rigid));
        for (int i = ELASTIC - 1; i >= 0; i--) {
            double k = lower * Math.pow(upper / lower, (double) i / (ELASTIC - 1));
            stiffnesses.add(0, k);
            // The next stiffer shell mostly keeps the same contacts shut.
            solutions.add(0, withStiffness.apply(k).solve(solutions.get(0)));
        }
        SolveStatus status = SolveStatus.OK;
        for (CoupledSolution solution : solutions) {
            status = status == SolveStatus.OK ? solution.status() : status;
        }
        StaticsBounds bounds = rigid.problem().staticsBounds();
        return new StiffnessSweep(stiffnesses, solutions, bounds, status == SolveStatus.OK ? bounds.status() : status);
    }

    /** Returns OK when all six were solved and the bounds stand, else the first failure. */
    public SolveStatus status() {
        return status;
    }

    /** Returns the six stiffnesses, N m/rad, the last infinite. */
    public List<Double> stiffnesses() {
        return stiffnesses;
    }

    /** Returns the six solutions in the same order. */
    public List<CoupledSolution> solutions() {
        return solutions;
    }

    /** Returns the least force of a contact over all six, N. */
    public double least(String contact) {
        return solutions.stream().mapToDouble(s -> s.force(contact)).min().orElseThrow();
    }

    /** Returns the largest force of a contact over all six, N. */
    public double largest(String contact) {
        return solutions.stream().mapToDouble(s -> s.force(contact)).max().orElseThrow();
    }

    /** Returns the largest gap of a contact over all six, m. */
    public double largestGap(String contact) {
        return solutions.stream().mapToDouble(s -> s.gap(contact)).max().orElseThrow();
    }

    /** Returns what statics alone allow, in the order of the unknowns. */
    public StaticsBounds bounds() {
        return bounds;
    }

    /** Returns the least force that statics alone allow, N. */
    public double staticsLeast(String contact) {
        return bounds.least(solutions.get(0).problem().indexOf(contact));
    }

    /** Returns the largest force that statics alone allow, N. */
    public double staticsLargest(String contact) {
        return bounds.largest(solutions.get(0).problem().indexOf(contact));
    }
}
