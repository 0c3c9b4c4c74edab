package cradlewright.cli;

import cradlewright.analysis.check.Verdict;

/** The exit codes of the command line. */
final class ExitCode {

    static final int HELD = 0;
    static final int STOP = 1;
    static final int CANT_SAY = 2;
    static final int BAD_INPUT = 3;
    static final int INTERNAL_ERROR = 4;
    static final int TIGHT = 5;

    private ExitCode() {
    }

    /** Returns the code for a verdict; TIGHT counts only when {@code strict}. */
    static int of(Verdict verdict, boolean strict) {
        return switch (verdict) {
            case STOP -> STOP;
            case CANT_SAY -> CANT_SAY;
            case TIGHT -> strict ? TIGHT : HELD;
            case HOLDS -> HELD;
        };
    }
}
