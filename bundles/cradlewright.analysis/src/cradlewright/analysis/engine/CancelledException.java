package cradlewright.analysis.engine;

/** The run was called off; what had been worked out before stays valid. */
public final class CancelledException extends RuntimeException {

    private static final long serialVersionUID = 1L;
}
