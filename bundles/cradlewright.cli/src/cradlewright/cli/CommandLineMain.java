package cradlewright.cli;

import java.io.PrintStream;

/** Runs one command line. */
public final class CommandLineMain {

    private CommandLineMain() {
    }

    /** Runs the verb named by the arguments and returns the exit code. */
    public static int run(String[] arguments, PrintStream out, PrintStream err) {
        out.println("Cradlewright " + String.join(" ", arguments));
        return 0;
    }
}
