package cradlewright.mechanics.contact;

/** How a calculation ended. Only {@link #OK} carries numbers; {@link #SINGULAR} and {@link #ITERATION_CAP} mean "can't say". */
public enum SolveStatus {
    /** Solved, and the answer passed its own checks. */
    OK,
    /** The equations lose so many digits that the answer failed its checks. */
    SINGULAR,
    /** The iteration cap was reached. */
    ITERATION_CAP,
    /** No set of allowed contact forces balances the load. */
    NO_EQUILIBRIUM
}
