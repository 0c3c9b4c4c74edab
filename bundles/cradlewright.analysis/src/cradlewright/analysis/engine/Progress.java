package cradlewright.analysis.engine;

/** Tells how far a run is and whether it is still wanted. */
public interface Progress {

    /** Says nothing and never cancels. */
    Progress NONE = new Progress() {
    };

    /** Called before the work starts with the number of steps. */
    default void begin(int steps) {
    }

    /** Called after each step with what it was about. */
    default void step(String what) {
    }

    /** Tells whether the run is to be called off. */
    default boolean cancelled() {
        return false;
    }
}
