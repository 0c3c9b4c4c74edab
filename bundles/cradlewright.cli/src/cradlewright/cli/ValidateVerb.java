package cradlewright.cli;

import cradlewright.model.io.ShopFolder;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks through the files of a shop without checking anything. */
@Command(name = "validate", mixinStandardHelpOptions = true,
        description = "Looks through the files of a shop: what is wrong, in which file and line, and how to mend it.",
        footer = {"", "Exit codes: 0 in order or with remarks only, 3 something must be mended first."})
final class ValidateVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SHOP", description = "folder of the shop")
    private Path shop;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        ShopFolder folder = OpenShop.folder(shop);
        FileProblems problems = FileProblems.of(folder);
        problems.lines().forEach(out::println);
        int files = folder.files().size();
        out.println(files + (files == 1 ? " file read, " : " files read, ") + problems.count());
        return problems.serious() ? ExitCode.BAD_INPUT : ExitCode.HELD;
    }
}
