package cradlewright.cli;

import cradlewright.analysis.engine.Progress;
import java.io.PrintWriter;

/** Tells on the error channel, a line for each car, dolly and piece of gear, how far a long run has come. */
final class CountedProgress implements Progress {

    private final PrintWriter err;
    private int total;
    private int done;

    CountedProgress(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void begin(int steps) {
        total = steps;
        done = 0;
    }

    @Override
    public void step(String what) {
        done++;
        err.println(done + " of " + total + ": " + what);
        err.flush();
    }
}
