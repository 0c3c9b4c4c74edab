package cradlewright.mechanics.contact;

import java.util.Arrays;

/**
 * Solves a {@link ContactProblem} by a dual active set method.
 *
 * <p>All contacts start shut; the support that would pull most (lowest index at a tie) is opened; opened supports whose gap
 * would turn into overlap shut again on the way. The energy rises with each step, so no set comes twice, and a set that
 * cannot hold the body is never entered: where no opened support can shut again the load has no equilibrium at all. At the
 * end the shut set is put into a form that does not depend on the way it was found and solved once more, so that a warm
 * start gives the same bits as a cold one; the answer then has to pass its own optimality conditions.
 *
 * <p>A body on supports that cannot hold it (two, or all on one line) counts as solved when its load happens to balance on
 * them; {@link SupportRank} has to be asked first.
 *
 * @see ContactFormulas#ENERGY
 */
public final class ContactSolver {

    /** Largest relative error of equilibrium and of the other conditions that is let through. */
    public static final double RESIDUAL_TOLERANCE = 1e-9;

    private static final double PULL_TOLERANCE = 1e-11;
    private static final double TOUCH_TOLERANCE = 1e-10;
    private static final double DEPENDENCE_TOLERANCE = 1e-10;
    private static final int STEPS_PER_CONTACT = 10;
    private static final int EXTRA_STEPS = 20;

    private ContactSolver() {
    }

    /** Solves from the start. Never throws for a valid problem: see {@link ContactSolution#status()}. */
    public static ContactSolution solve(ContactProblem problem) {
        if (!hasBalancedRows(problem)) {
            return ContactSolution.failed(SolveStatus.NO_EQUILIBRIUM, 0);
        }
        boolean[] all = new boolean[problem.size()];
        Arrays.fill(all, true);
        ShutSystem system = new ShutSystem(problem, all);
        if (!system.isRegular()) {
            return ContactSolution.failed(SolveStatus.SINGULAR, 0);
        }
        ShutSystem.Answer answer = system.solve(problem.sharedLoad(), problem.sharedGap());
        if (mostPulling(problem, answer.force, all, problem.forceScale()) < 0) {
            return checked(problem, all, answer, system.gaps(answer, problem.sharedGap()), 0);
        }
        return new Search(problem, system, answer.force).run();
    }

    /**
     * Solves with a guess of the shut contacts, for example those of a neighbouring load. A right guess saves the search; the
     * answer is the same to the last bit.
     *
     * @throws IllegalArgumentException for a guess of another length
     */
    public static ContactSolution solve(ContactProblem problem, boolean[] shutGuess) {
        if (shutGuess.length != problem.size()) {
            throw new IllegalArgumentException("the guess must have " + problem.size() + " entries, found " + shutGuess.length);
        }
        boolean[] shut = shutGuess.clone();
        for (int i = 0; i < shut.length; i++) {
            shut[i] |= !problem.isUnilateral(i);
        }
        return solve(problem, new ShutSystem(problem, shut));
    }

    /** Solves with a guess for which the equations stand: those of a problem that differs in load and gaps only. */
    static ContactSolution solve(ContactProblem problem, ShutSystem system) {
        if (system.isRegular() && hasBalancedRows(problem)) {
            boolean[] shut = system.shut();
            ShutSystem.Answer answer = system.solve(problem.sharedLoad(), problem.sharedGap());
            double[] gaps = system.gaps(answer, problem.sharedGap());
            double scale = problem.forceScale();
            if (mostPulling(problem, answer.force, shut, scale) < 0 && noneOverlaps(problem, gaps, shut, scale)) {
                return settled(problem, shut, answer, gaps, 0);
            }
        }
        return solve(problem);
    }

    private static boolean hasBalancedRows(ContactProblem problem) {
        return problem.rows().agrees(problem.sharedLoad(), RESIDUAL_TOLERANCE * problem.forceScale());
    }

    private static boolean noneOverlaps(ContactProblem problem, double[] gaps, boolean[] shut, double scale) {
        for (int i = 0; i < gaps.length; i++) {
            if (!shut[i] && gaps[i] < -TOUCH_TOLERANCE * problem.compliance(i, i) * scale) {
                return false;
            }
        }
        return true;
    }

    private static int mostPulling(ContactProblem problem, double[] force, boolean[] candidates, double scale) {
        int worst = -1;
        double least = -PULL_TOLERANCE * scale;
        for (int i = 0; i < force.length; i++) {
            if (candidates[i] && problem.isUnilateral(i) && force[i] < least) {
                worst = i;
                least = force[i];
            }
        }
        return worst;
    }

    /** Counts open contacts that touch as shut, so that the set is the same whatever way led to it, and solves on it. */
    private static ContactSolution settled(ContactProblem problem, boolean[] shut,
            ShutSystem.Answer answer, double[] gaps, int steps) {
        double scale = problem.forceScale();
        boolean[] settled = shut.clone();
        for (int i = 0; i < gaps.length; i++) {
            settled[i] |= gaps[i] <= TOUCH_TOLERANCE * problem.compliance(i, i) * scale;
        }
        if (Arrays.equals(settled, shut)) {
            return checked(problem, shut, answer, gaps, steps);
        }
        ShutSystem last = new ShutSystem(problem, settled);
        if (!last.isRegular()) {
            return ContactSolution.failed(SolveStatus.SINGULAR, steps);
        }
        ShutSystem.Answer again = last.solve(problem.sharedLoad(), problem.sharedGap());
        return checked(problem, settled, again, last.gaps(again, problem.sharedGap()), steps);
    }

    private static ContactSolution checked(ContactProblem problem, boolean[] shut, ShutSystem.Answer answer, double[] gaps,
            int steps) {
        double forceScale = problem.forceScale();
        double gapScale = 0;
        for (int i = 0; i < gaps.length; i++) {
            gapScale = Math.max(gapScale, Math.max(problem.compliance(i, i) * forceScale, Math.abs(problem.sharedGap()[i])));
        }
        double pull = 0;
        double overlap = 0;
        double closure = 0;
        double[] force = answer.force;
        for (int i = 0; i < gaps.length; i++) {
            if (shut[i]) {
                closure = Math.max(closure, Math.abs(gaps[i]) / gapScale);
                gaps[i] = 0;
            } else {
                overlap = Math.max(overlap, -gaps[i] / gapScale);
                gaps[i] = Math.max(gaps[i], 0);
            }
            if (problem.isUnilateral(i) && force[i] < 0) {
                pull = Math.max(pull, -force[i] / forceScale);
                force[i] = 0;
            }
        }
        double equilibrium = problem.rows().residual(force, problem.sharedLoad()) / forceScale;
        Residuals residuals = new Residuals(equilibrium, pull, overlap, closure);
        if (!(residuals.largest() <= RESIDUAL_TOLERANCE)) {
            return ContactSolution.failed(SolveStatus.SINGULAR, steps);
        }
        return new ContactSolution(force, gaps, problem.rows().allMultipliers(answer.multiplier), shut.clone(), residuals, steps);
    }

    /**
     * The search itself, in the space of self-stress: f = f0 + N v, least |v| with f at or above zero for supports that rest.
     * The rows of N that belong to opened supports are kept as an orthogonal factorisation that is turned, not rebuilt.
     */
    private static final class Search {
        private final ContactProblem problem;
        private final double[][] rows;
        private final double tolerance;
        private final double[] force;
        private final double scale;
        private final int space;
        /** Orthonormal columns; the first {@code count} span the rows of the opened supports. */
        private final double[][] basis;
        /** Columns of the triangle, one per opened support. */
        private final double[][] triangle;
        private final int[] opened;
        private final double[] gap;
        private final boolean[] shut;
        private int count;
        private int steps;

        Search(ContactProblem problem, ShutSystem system, double[] start) {
            this.problem = problem;
            this.rows = system.selfStressRows();
            this.force = start;
            this.scale = problem.forceScale();
            int n = problem.size();
            this.space = n - problem.rows().rank();
            this.basis = new double[space][space];
            for (int k = 0; k < space; k++) {
                basis[k][k] = 1;
            }
            this.triangle = new double[space][];
            this.opened = new int[space];
            this.gap = new double[space];
            this.shut = new boolean[n];
            Arrays.fill(shut, true);
            double largest = 0;
            for (double[] row : rows) {
                largest = Math.max(largest, Dense.norm(row));
            }
            this.tolerance = DEPENDENCE_TOLERANCE * largest;
        }

        ContactSolution run() {
            int cap = STEPS_PER_CONTACT * problem.size() + EXTRA_STEPS;
            int next = mostPulling(problem, force, shut, scale);
            while (next >= 0) {
                double own = 0;
                while (shut[next]) {
                    if (++steps > cap) {
                        return ContactSolution.failed(SolveStatus.ITERATION_CAP, steps);
                    }
                    own = step(next, own);
                    if (Double.isNaN(own)) {
                        return ContactSolution.failed(SolveStatus.NO_EQUILIBRIUM, steps);
                    }
                }
                next = mostPulling(problem, force, shut, scale);
            }
            ShutSystem last = new ShutSystem(problem, shut);
            if (!last.isRegular()) {
                return ContactSolution.failed(SolveStatus.SINGULAR, steps);
            }
            ShutSystem.Answer answer = last.solve(problem.sharedLoad(), problem.sharedGap());
            return settled(problem, shut, answer, last.gaps(answer, problem.sharedGap()), steps);
        }

        /** One step towards opening a support; returns its gap so far, NaN where nothing can give way. */
        private double step(int next, double own) {
            double[] turned = new double[space];
            double free = 0;
            for (int k = 0; k < space; k++) {
                turned[k] = Dense.dot(basis[k], rows[next]);
                if (k >= count) {
                    free += turned[k] * turned[k];
                }
            }
            double[] rate = closingRates(turned);
            int blocking = -1;
            double length = Double.POSITIVE_INFINITY;
            for (int k = 0; k < count; k++) {
                if (rate[k] > 0) {
                    double until = gap[k] / rate[k];
                    if (until < length || until == length && opened[k] < opened[blocking]) {
                        length = until;
                        blocking = k;
                    }
                }
            }
            boolean canOpen = Math.sqrt(free) > tolerance;
            double whole = canOpen ? -force[next] / free : Double.POSITIVE_INFINITY;
            if (blocking < 0 && !canOpen) {
                return Double.NaN;
            }
            boolean opens = whole <= length;
            length = Math.min(length, whole);
            for (int k = 0; k < count; k++) {
                gap[k] -= length * rate[k];
            }
            if (canOpen) {
                moveForces(turned, length);
            }
            if (opens) {
                open(next, turned, own + length);
            } else {
                shut(blocking);
            }
            return own + length;
        }

        /** How fast each open gap closes per unit of the new gap: solves the triangle. */
        private double[] closingRates(double[] turned) {
            double[] rate = Arrays.copyOf(turned, count);
            for (int k = count - 1; k >= 0; k--) {
                rate[k] /= triangle[k][k];
                for (int l = 0; l < k; l++) {
                    rate[l] -= triangle[k][l] * rate[k];
                }
            }
            return rate;
        }

        private void moveForces(double[] turned, double length) {
            double[] direction = new double[space];
            for (int k = count; k < space; k++) {
                Dense.addTimes(direction, turned[k], basis[k]);
            }
            for (int i = 0; i < force.length; i++) {
                force[i] = shut[i] ? force[i] + length * Dense.dot(rows[i], direction) : 0;
            }
        }

        private void open(int next, double[] turned, double ownGap) {
            for (int k = space - 1; k > count; k--) {
                rotate(k - 1, k, turned);
            }
            triangle[count] = Arrays.copyOf(turned, count + 1);
            opened[count] = next;
            gap[count] = ownGap;
            shut[next] = false;
            force[next] = 0;
            count++;
        }

        private void shut(int position) {
            shut[opened[position]] = true;
            for (int k = position; k < count - 1; k++) {
                opened[k] = opened[k + 1];
                gap[k] = gap[k + 1];
                triangle[k] = triangle[k + 1];
            }
            count--;
            for (int k = position; k < count; k++) {
                double[] column = triangle[k];
                double length = Math.hypot(column[k], column[k + 1]);
                double cos = column[k] / length;
                double sin = column[k + 1] / length;
                for (int l = k + 1; l < count; l++) {
                    turn(triangle[l], k, cos, sin);
                }
                column[k] = length;
                turnBasis(k, k + 1, cos, sin);
                triangle[k] = Arrays.copyOf(column, k + 1);
            }
        }

        /** Turns two columns of the basis so that the lower entry of {@code vector} vanishes. */
        private void rotate(int upperIndex, int lowerIndex, double[] vector) {
            double length = Math.hypot(vector[upperIndex], vector[lowerIndex]);
            if (length == 0) {
                return;
            }
            double cos = vector[upperIndex] / length;
            double sin = vector[lowerIndex] / length;
            vector[upperIndex] = length;
            vector[lowerIndex] = 0;
            turnBasis(upperIndex, lowerIndex, cos, sin);
        }

        private static void turn(double[] column, int k, double cos, double sin) {
            double a = column[k];
            double b = column[k + 1];
            column[k] = cos * a + sin * b;
            column[k + 1] = cos * b - sin * a;
        }

        private void turnBasis(int a, int b, double cos, double sin) {
            double[] first = basis[a];
            double[] second = basis[b];
            for (int i = 0; i < space; i++) {
                double x = first[i];
                double y = second[i];
                first[i] = cos * x + sin * y;
                second[i] = cos * y - sin * x;
            }
        }
    }
}
