package cradlewright.cli;

import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFolder;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks through the files of a shop without checking anything. */
@Command(name = "validate", mixinStandardHelpOptions = true,
        description = "Looks through the files of a shop: what is wrong, in which file and line, and how to mend it.")
final class ValidateVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SHOP", description = "folder of the shop")
    private Path shop;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        ShopFolder folder = OpenShop.folder(shop);
        List<ReadProblem> problems = OpenShop.problems(folder);
        problems.forEach(problem -> out.println(OpenShop.words(problem)));
        long errors = OpenShop.errors(problems);
        out.println(count(folder.files().size(), "file") + " read, " + count(errors, "error") + ", "
                + count(problems.size() - errors, "other remark"));
        return errors > 0 ? ExitCode.BAD_INPUT : ExitCode.HELD;
    }

    private static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
