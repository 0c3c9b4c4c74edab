package cradlewright.cli;

import cradlewright.analysis.change.PartOffAnswer;
import cradlewright.analysis.change.PartOffQuestion;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.report.sheet.PartOffSheet;
import cradlewright.report.sheet.PlainSheet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** May a part come off the car as it stands now? */
@Command(name = "may-come-off", mixinStandardHelpOptions = true,
        description = {"May this part come off now? Asks the checks with the part on and off; nothing is saved.",
            "For example: may-come-off my-shop bonnet --car \"red coupe\""},
        footer = {"", "The exit code follows the graver of both: as the car stands now, and with the part off."})
final class MayComeOffVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SHOP", description = "folder of the shop")
    private Path shop;

    @Parameters(index = "1", paramLabel = "PART", description = "id, name or piece of the name of the part")
    private String part;

    @Option(names = "--car", paramLabel = "NAME", description = "id or piece of the name of the car")
    private String car;

    @Mixin
    private ReaderOptions reader;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        ShopSnapshot snapshot = OpenShop.snapshot(shop, reader.day(), spec.commandLine().getErr());
        PartFinder.Found found = PartFinder.find(snapshot, car, part);
        PartOffQuestion question = new PartOffQuestion(snapshot, found.car(), found.part(), BuiltInChecks.catalogue());
        PartOffSheet sheet = new PartOffSheet(reader.units());
        String words = "May " + found.part().name() + " come off " + found.car().name() + " on " + reader.day() + "?";
        if (question.alreadyOff()) {
            throw new BadInputException(found.words() + " is already off on " + reader.day() + ": the stage of its visit says so");
        }
        Optional<String> missing = question.whyNot();
        if (missing.isPresent()) {
            out.print(PlainSheet.write(sheet.cantSay(words, missing.get())));
            return ExitCode.CANT_SAY;
        }
        List<PartOffAnswer> answers = question.ask(Progress.NONE);
        out.print(PlainSheet.write(sheet.write(words, answers)));
        return ExitCode.of(Verdict.worst(answers.stream().map(PartOffAnswer::verdict).toList()), false);
    }
}
