package cradlewright.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs one command line. */
public final class CommandLineMain {

    private CommandLineMain() {
    }

    /**
     * Runs the verb named by the arguments.
     *
     * @return 0 all HOLDS or TIGHT, 1 a STOP, 2 a CAN'T SAY and no STOP, 3 bad input, 4 internal error, 5 a TIGHT under {@code --strict}
     */
    public static int run(String[] arguments, PrintStream out, PrintStream err) {
        Objects.requireNonNull(arguments);
        PrintWriter text = new PrintWriter(out, true, StandardCharsets.UTF_8);
        PrintWriter errors = new PrintWriter(err, true, StandardCharsets.UTF_8);
        CommandLine line = new CommandLine(new RootVerb());
        line.setOut(text).setErr(errors).setUsageHelpWidth(100).setExpandAtFiles(false)
                .setParameterExceptionHandler(CommandLineMain::badArguments).setExecutionExceptionHandler(CommandLineMain::broke);
        // A reading ahead of the marks' zero begins with a minus.
        line.getSubcommands().get("weigh").setUnmatchedOptionsArePositionalParams(true);
        int code = line.execute(arguments);
        text.flush();
        errors.flush();
        return code;
    }

    private static int badArguments(CommandLine.ParameterException e, String[] arguments) {
        PrintWriter err = e.getCommandLine().getErr();
        err.println("cradlewright: " + (e instanceof UnmatchedArgumentException unmatched ? Near.unmatched(unmatched) : e.getMessage()));
        err.println("Help: cradlewright " + (e.getCommandLine().getParent() == null ? "" : e.getCommandLine().getCommandName() + " ")
                + "--help");
        return ExitCode.BAD_INPUT;
    }

    static int broke(Exception e, CommandLine line, CommandLine.ParseResult parsed) {
        if (e instanceof BadInputException) {
            line.getErr().println("cradlewright: " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        line.getErr().println("cradlewright: internal error, please report it: " + e);
        return ExitCode.INTERNAL_ERROR;
    }
}
