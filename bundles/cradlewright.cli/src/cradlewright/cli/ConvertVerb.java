package cradlewright.cli;

import cradlewright.quantity.UnitConverter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Converts a value into another unit. */
@Command(name = "convert", mixinStandardHelpOptions = true,
        description = {"Converts a value into another unit, for example: convert 18 in mm",
            "Mass and force never convert into each other."})
final class ConvertVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0..*", arity = "1..*", paramLabel = "VALUE UNIT", hideParamSyntax = true,
            description = "the value with its unit, then the unit wanted")
    private List<String> words;

    @Override
    public Integer call() {
        if (words.size() < 2) {
            throw new BadInputException("say what to convert and into which unit, for example: convert 18 in mm");
        }
        String value = String.join(" ", words.subList(0, words.size() - 1));
        String unit = words.get(words.size() - 1);
        try {
            spec.commandLine().getOut().println(new UnitConverter(Locale.ROOT).convert(value, unit));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(e.getMessage());
        }
        return ExitCode.HELD;
    }
}
