package cradlewright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line without a verb. */
@Command(name = "cradlewright", mixinStandardHelpOptions = true, version = "Cradlewright 0.1.0",
        description = "Checks a shop that restores taken-apart cars: what every support, castor, lift and dolly carries, and what stops.",
        footer = {"", "Exit codes: 0 all holds or is tight, 1 a STOP, 2 a CAN'T SAY and no STOP, 3 bad input,",
            "            4 internal error, 5 something is tight (only with --strict).",
            "Results are estimates from the numbers in the files, no certificate."},
        subcommands = {CheckVerb.class, MayComeOffVerb.class, SignVerb.class, WeighVerb.class, StockVerb.class, ListChecksVerb.class,
            ExplainVerb.class, ValidateVerb.class, ConvertVerb.class})
final class RootVerb implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a verb is missing: " + String.join(", ", spec.subcommands().keySet()));
    }
}
