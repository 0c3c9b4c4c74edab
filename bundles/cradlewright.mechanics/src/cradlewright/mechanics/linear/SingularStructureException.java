package cradlewright.mechanics.linear;

/** A matrix lets some motion pass without resistance: it is singular or not positive definite. */
public final class SingularStructureException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int dof;
    private final double pivot;
    private final double diagonal;
    private final double[] motion;

    SingularStructureException(int dof, double pivot, double diagonal, double[] motion) {
        super("unknown " + dof + " moves without resistance: pivot " + pivot + " of a diagonal of " + diagonal);
        this.dof = dof;
        this.pivot = pivot;
        this.diagonal = diagonal;
        this.motion = motion;
    }

    /** Returns the row, in the numbering of the assembly, at which elimination stopped. */
    public int dof() {
        return dof;
    }

    /** Returns what elimination left of the diagonal of that row. */
    public double pivot() {
        return pivot;
    }

    /** Returns the diagonal of that row before elimination. */
    public double diagonal() {
        return diagonal;
    }

    /** Returns the motion that meets no resistance, in the numbering of the assembly, 1 at {@link #dof()}. */
    public double[] motion() {
        return motion.clone();
    }
}
