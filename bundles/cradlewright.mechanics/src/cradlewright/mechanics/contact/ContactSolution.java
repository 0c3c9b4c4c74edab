package cradlewright.mechanics.contact;

/**
 * Answer of a {@link ContactProblem}. Asking a failed one for numbers throws IllegalStateException: a failure is never
 * read as a force.
 */
public final class ContactSolution {

    private final SolveStatus status;
    private final double[] force;
    private final double[] gap;
    private final double[] multiplier;
    private final boolean[] shut;
    private final Residuals residuals;
    private final int steps;

    ContactSolution(double[] force, double[] gap, double[] multiplier, boolean[] shut, Residuals residuals, int steps) {
        this.status = SolveStatus.OK;
        this.force = force;
        this.gap = gap;
        this.multiplier = multiplier;
        this.shut = shut;
        this.residuals = residuals;
        this.steps = steps;
    }

    private ContactSolution(SolveStatus status, int steps) {
        this.status = status;
        this.force = new double[0];
        this.gap = force;
        this.multiplier = force;
        this.shut = new boolean[0];
        this.residuals = null;
        this.steps = steps;
    }

    static ContactSolution failed(SolveStatus status, int steps) {
        return new ContactSolution(status, steps);
    }

    /** Returns how the calculation ended. */
    public SolveStatus status() {
        return status;
    }

    /** Returns whether there are numbers. */
    public boolean isOk() {
        return status == SolveStatus.OK;
    }

    /** Returns the force of a contact, N. */
    public double force(int i) {
        return numbers(force)[i];
    }

    /** Returns all contact forces, N. */
    public double[] forces() {
        return numbers(force).clone();
    }

    /** Returns the gap s of a contact, m; zero where it is shut. */
    public double gap(int i) {
        return numbers(gap)[i];
    }

    /** Returns all gaps, m. */
    public double[] gaps() {
        return numbers(gap).clone();
    }

    /**
     * Returns q, one entry per row of E: the rigid motions with their sign turned, that is, the body above sinks and turns by
     * q (m and rad). Rows that depend on others get zero.
     */
    public double[] multipliers() {
        return numbers(multiplier).clone();
    }

    /** Returns whether a contact is shut; a support that just touches without force counts as shut. */
    public boolean isShut(int i) {
        numbers(force);
        return shut[i];
    }

    /** Returns the shut contacts, which may be given to {@link ContactSolver#solve(ContactProblem, boolean[])}. */
    public boolean[] shut() {
        numbers(force);
        return shut.clone();
    }

    /** Returns how well the answer keeps its conditions. */
    public Residuals residuals() {
        numbers(force);
        return residuals;
    }

    /** Returns the number of steps taken by the active set method. */
    public int steps() {
        return steps;
    }

    private double[] numbers(double[] values) {
        if (status != SolveStatus.OK) {
            throw new IllegalStateException("the contact problem has no answer: " + status);
        }
        return values;
    }
}
