package cradlewright.model.io;

/** A file that cannot be read at all, with the reason for a person. */
final class Refused extends Exception {

    private static final long serialVersionUID = 1L;

    private final int line;
    private final String what;
    private final String mend;

    Refused(int line, String what, String mend) {
        super(what, null, false, false);
        this.line = line;
        this.what = what;
        this.mend = mend;
    }

    ReadProblem in(String file) {
        return ReadProblem.of(file, line, what, mend, Severity.ERROR);
    }
}
