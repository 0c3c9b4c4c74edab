package cradlewright.mechanics.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import cradlewright.mechanics.formula.Require;

/**
 * The contact forces while load and gaps move along w0 + t dw, g0 + t dg from t = 0: straight pieces between breakpoints at
 * which a support lifts or touches down.
 *
 * <p>On each piece the rates solve a contact problem of their own: contacts that press are held, contacts that just touch may
 * only begin to press, open ones are left out. That needs no rule for ties: several supports may lift or touch at once. Where
 * the rates have no answer the body stands in balance on an edge: it rocks over onto the next support, or, where none is in
 * the way, falls over. First slopes are never drawn on beyond a breakpoint.
 *
 * @see ContactFormulas#LOAD_PATH
 */
public final class LoadPath {

    /** How the path ends. */
    public enum End {
        /** The end that was asked for. */
        REACHED,
        /** Beyond the last t nothing balances the load. */
        FALLS,
        /** The calculation could not go on: see {@link LoadPath#status()}. */
        FAILED
    }

    /** What a support does at a breakpoint. */
    public enum Change {
        /** Its force reaches zero. */
        GOES_LIGHT,
        /** Its gap reaches zero. */
        TOUCHES
    }

    /**
     * A point at which the slope may change.
     *
     * @param at t
     * @param contact which contact
     * @param change what it does
     */
    public record Breakpoint(double at, int contact, Change change) {
    }

    private record Piece(double from, double[] force, double[] gap, double[] forceRate, double[] gapRate) {
    }

    private static final double TOUCH_TOLERANCE = 1e-10;
    private static final double MOTION_TOLERANCE = 1e-9;
    private static final int PIECES_PER_CONTACT = 20;
    private static final int EXTRA_PIECES = 20;

    private final ContactProblem problem;
    private final double[] loadRate;
    private final double[] gapRate;
    private final double end;
    private final double scale;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Breakpoint> breakpoints = new ArrayList<>();
    private SolveStatus status = SolveStatus.OK;
    private End ending = End.REACHED;
    private double reached;

    private LoadPath(ContactProblem problem, double[] loadRate, double[] gapRate, double end) {
        this.problem = problem;
        this.loadRate = ContactProblem.checked(loadRate, problem.rowCount(), "load rate");
        this.gapRate = ContactProblem.checked(gapRate, problem.size(), "gap rate");
        this.end = Require.positive(end, "end of the path");
        double[] last = problem.load();
        Dense.addTimes(last, end, this.loadRate);
        this.scale = Math.max(problem.forceScale(), problem.withLoad(last).forceScale());
    }

    /**
     * Follows the path.
     *
     * @param start problem at t = 0
     * @param loadRate dw, per unit of t
     * @param gapRate dg, m per unit of t
     * @param end last t, above zero
     * @throws IllegalArgumentException for lengths that do not agree, numbers that are not finite, an end not above zero
     */
    public static LoadPath follow(ContactProblem start, double[] loadRate, double[] gapRate, double end) {
        LoadPath path = new LoadPath(start, loadRate, gapRate, end);
        path.run();
        return path;
    }

    private void run() {
        ContactSolution start = ContactSolver.solve(problem);
        if (!start.isOk()) {
            fail(start.status());
            return;
        }
        double[] force = start.forces();
        double[] gap = start.gaps();
        double t = 0;
        int rocked = 0;
        int cap = PIECES_PER_CONTACT * problem.size() + EXTRA_PIECES;
        while (t < end) {
            if (pieces.size() + rocked == cap) {
                fail(SolveStatus.ITERATION_CAP);
                return;
            }
            Piece piece = piece(t, force, gap);
            if (piece == null && ending == End.FALLS && rocks(t, force, gap)) {
                ending = End.REACHED;
                rocked++;
                continue;
            }
            if (piece == null) {
                return;
            }
            pieces.add(piece);
            double step = firstEvent(piece);
            boolean reachesEnd = t + step >= end;
            step = reachesEnd ? end - t : step;
            t = reachesEnd ? end : t + step;
            force = force.clone();
            gap = gap.clone();
            Dense.addTimes(force, step, piece.forceRate);
            Dense.addTimes(gap, step, piece.gapRate);
            settle(piece, force, gap, t);
            reached = t;
        }
    }

    private void fail(SolveStatus why) {
        status = why;
        ending = End.FAILED;
    }

    private boolean presses(double[] force, int i) {
        return !problem.isUnilateral(i) || force[i] > TOUCH_TOLERANCE * scale;
    }

    private boolean touches(double[] gap, int i) {
        return gap[i] <= TOUCH_TOLERANCE * scale * problem.compliance(i, i);
    }

    /** The rates from here on, or null where the path ends. */
    private Piece piece(double t, double[] force, double[] gap) {
        int n = problem.size();
        boolean[] in = new boolean[n];
        for (int i = 0; i < n; i++) {
            in[i] = presses(force, i) || touches(gap, i);
        }
        int[] index = ShutSystem.indices(in);
        double[][] c = new double[index.length][index.length];
        double[] g = new double[index.length];
        double[][] all = problem.equilibrium();
        double[][] e = new double[all.length][index.length];
        List<ContactKind> kinds = new ArrayList<>();
        for (int a = 0; a < index.length; a++) {
            g[a] = gapRate[index[a]];
            kinds.add(presses(force, index[a]) ? ContactKind.HELD : ContactKind.UNILATERAL);
            for (int b = 0; b < index.length; b++) {
                c[a][b] = problem.compliance(index[a], index[b]);
            }
            for (int k = 0; k < all.length; k++) {
                e[k][a] = all[k][index[a]];
            }
        }
        ContactSolution rates = ContactSolver.solve(new ContactProblem(c, g, e, loadRate, kinds));
        if (rates.status() == SolveStatus.NO_EQUILIBRIUM) {
            ending = End.FALLS;
            return null;
        }
        if (!rates.isOk()) {
            fail(rates.status());
            return null;
        }
        double[] forceRate = new double[n];
        for (int a = 0; a < index.length; a++) {
            forceRate[index[a]] = rates.force(a);
        }
        return new Piece(t, force, gap, forceRate, gapRates(all, index, in, forceRate, rates));
    }

    /**
     * Lets a body that stands in balance on an edge go over onto the next support: forces stay, gaps change by a finite
     * motion. Returns false where nothing catches it.
     */
    private boolean rocks(double t, double[] force, double[] gap) {
        int n = problem.size();
        boolean[] in = new boolean[n];
        for (int i = 0; i < n; i++) {
            in[i] = presses(force, i) || touches(gap, i);
        }
        int[] index = ShutSystem.indices(in);
        double[][] all = problem.equilibrium();
        double[][] wide = new double[all.length][index.length + 1];
        double size = problem.withLoad(loadRate).forceScale();
        for (int k = 0; k < all.length; k++) {
            for (int a = 0; a < index.length; a++) {
                wide[k][a] = all[k][index[a]];
            }
            wide[k][index.length] = loadRate[k] / size;
        }
        EquilibriumRows rows = new EquilibriumRows(wide, index.length + 1);
        double[][] matrix = new double[rows.rank()][index.length];
        double[] right = new double[rows.rank()];
        boolean[] free = new boolean[index.length];
        for (int a = 0; a < index.length; a++) {
            free[a] = presses(force, index[a]);
        }
        for (int k = 0; k < matrix.length; k++) {
            for (int a = 0; a < index.length; a++) {
                matrix[k][a] = rows.kept(k)[a];
            }
            right[k] = rows.kept(k)[index.length];
        }
        LinearProgramme.Answer none = new LinearProgramme(matrix, right, free).minimise(new double[index.length]);
        return none.end() == LinearProgramme.End.INFEASIBLE && moves(t, force, gap, rows.allMultipliers(none.multipliers()));
    }

    /** Moves along -y until an open contact shuts. */
    private boolean moves(double t, double[] force, double[] gap, double[] y) {
        double[][] all = problem.equilibrium();
        double[] closing = new double[gap.length];
        double way = Double.POSITIVE_INFINITY;
        for (int i = 0; i < gap.length; i++) {
            for (int k = 0; k < all.length; k++) {
                closing[i] += all[k][i] * y[k];
            }
            boolean open = !presses(force, i) && !touches(gap, i);
            if (open && closing[i] > MOTION_TOLERANCE) {
                way = Math.min(way, gap[i] / closing[i]);
            }
        }
        if (Double.isInfinite(way)) {
            return false;
        }
        for (int i = 0; i < gap.length; i++) {
            if (presses(force, i)) {
                continue;
            }
            boolean open = !touches(gap, i);
            gap[i] = Math.max(0, gap[i] - way * closing[i]);
            if (open && touches(gap, i)) {
                gap[i] = 0;
                breakpoints.add(new Breakpoint(t, i, Change.TOUCHES));
            }
        }
        return true;
    }

    private double[] gapRates(double[][] rows, int[] index, boolean[] in, double[] forceRate, ContactSolution rates) {
        double[] result = new double[problem.size()];
        double[] q = rates.multipliers();
        for (int i = 0; i < result.length; i++) {
            if (in[i]) {
                continue;
            }
            double sum = gapRate[i];
            for (int j = 0; j < result.length; j++) {
                sum += problem.compliance(i, j) * forceRate[j];
            }
            for (int k = 0; k < rows.length; k++) {
                sum -= rows[k][i] * q[k];
            }
            result[i] = sum;
        }
        for (int a = 0; a < index.length; a++) {
            result[index[a]] = rates.gap(a);
        }
        return result;
    }

    private double firstEvent(Piece piece) {
        double first = Double.POSITIVE_INFINITY;
        for (int i = 0; i < problem.size(); i++) {
            first = Math.min(first, eventOf(piece, i));
        }
        return first;
    }

    private double eventOf(Piece piece, int i) {
        if (problem.isUnilateral(i) && presses(piece.force, i)) {
            return piece.forceRate[i] < 0 ? -piece.force[i] / piece.forceRate[i] : Double.POSITIVE_INFINITY;
        }
        boolean closes = !presses(piece.force, i) && !touches(piece.gap, i) && piece.gapRate[i] < 0;
        return closes ? -piece.gap[i] / piece.gapRate[i] : Double.POSITIVE_INFINITY;
    }

    /** Sets what has reached zero to zero and notes it. */
    private void settle(Piece piece, double[] force, double[] gap, double t) {
        for (int i = 0; i < force.length; i++) {
            if (!problem.isUnilateral(i)) {
                continue;
            }
            if (!presses(force, i)) {
                force[i] = 0;
                if (presses(piece.force, i)) {
                    breakpoints.add(new Breakpoint(t, i, Change.GOES_LIGHT));
                }
            }
            if (touches(gap, i)) {
                gap[i] = 0;
                if (!presses(piece.force, i) && !touches(piece.gap, i)) {
                    breakpoints.add(new Breakpoint(t, i, Change.TOUCHES));
                }
            }
        }
    }

    /** Returns OK unless the calculation failed; a fall is an answer, not a failure. */
    public SolveStatus status() {
        return status;
    }

    /** Returns how the path ends. */
    public End ending() {
        return ending;
    }

    /** Returns the last t that was reached; with {@link End#FALLS} that at which the body goes. */
    public double reached() {
        return reached;
    }

    /** Returns the breakpoints in the order of t, lower contacts first. */
    public List<Breakpoint> breakpoints() {
        return List.copyOf(breakpoints);
    }

    /**
     * Returns the forces at t, N.
     *
     * @throws IllegalArgumentException outside the path
     * @throws IllegalStateException when the path has no start
     */
    public double[] forcesAt(double t) {
        Piece piece = pieceAt(t);
        double[] result = piece.force.clone();
        Dense.addTimes(result, t - piece.from, piece.forceRate);
        return result;
    }

    /** Returns the change of the forces per unit of t just after t, N; exceptions as {@link #forcesAt}. */
    public double[] ratesAt(double t) {
        return pieceAt(t).forceRate.clone();
    }

    private Piece pieceAt(double t) {
        if (pieces.isEmpty()) {
            throw new IllegalStateException("the path has no first piece: " + status + ", " + ending);
        }
        Require.within(t, 0, reached, "t");
        Piece result = pieces.get(0);
        for (Piece piece : pieces) {
            if (piece.from <= t) {
                result = piece;
            }
        }
        return result;
    }

    /** Returns the first t at which the contact carries nothing: 0 when it carries nothing from the start. */
    public OptionalDouble goesLight(int contact) {
        if (!pieces.isEmpty() && !presses(pieces.get(0).force, contact)) {
            return OptionalDouble.of(0);
        }
        return breakpoints.stream().filter(b -> b.contact() == contact && b.change() == Change.GOES_LIGHT)
                .mapToDouble(Breakpoint::at).findFirst();
    }

    /** Returns the first t at which any support that carries goes light. */
    public OptionalDouble firstLight() {
        return breakpoints.stream().filter(b -> b.change() == Change.GOES_LIGHT).mapToDouble(Breakpoint::at).findFirst();
    }
}
