package cradlewright.analysis.engine;

/** A value needs itself: a fault of the program, never of the input. */
public final class CycleException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CycleException(Key<?> key) {
        super("needs itself: " + key);
    }
}
