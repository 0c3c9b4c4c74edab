package cradlewright.cli;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.report.text.Lines;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the checks. */
@Command(name = "list-checks", mixinStandardHelpOptions = true, description = "Lists all checks: id, question, clause.")
final class ListChecksVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        for (Check check : BuiltInChecks.catalogue().all()) {
            out.print(Lines.wrap(String.format("%-28s ", check.info().id()), check.info().title()));
            out.print(Lines.wrap(" ".repeat(29), check.info().clause()));
        }
        return ExitCode.HELD;
    }
}
