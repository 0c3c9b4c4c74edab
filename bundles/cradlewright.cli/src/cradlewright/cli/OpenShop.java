package cradlewright.cli;

import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.FileRoot;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.Severity;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ValueRules;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Reads a shop's folder for a verb. */
final class OpenShop {

    private OpenShop() {
    }

    /** Opens the folder; throws BadInputException when it is none. */
    static ShopFolder folder(Path path) {
        if (!Files.isDirectory(path)) {
            throw new BadInputException(path + " is not a folder: name the folder that holds shop.cwshop");
        }
        if (!Files.isReadable(path) || !Files.isExecutable(path)) {
            throw new BadInputException(path + " cannot be read: check the rights on the folder");
        }
        return ShopFolder.open(path);
    }

    /** Reads the shop; what is wrong with the files goes to {@code err}, and an error among it throws BadInputException. */
    static ShopSnapshot snapshot(Path path, LocalDate day, PrintWriter err) {
        ShopFolder folder = folder(path);
        List<ReadProblem> problems = problems(folder);
        problems.forEach(problem -> err.println(words(problem)));
        long errors = errors(problems);
        if (errors > 0) {
            throw new BadInputException((errors == 1 ? "one error" : errors + " errors")
                    + " in the files of the shop: mend what is listed above and run again");
        }
        List<FileRoot> roots = folder.files().stream().map(ShopFile::root).flatMap(root -> root.stream()).toList();
        try {
            return ShopImporter.importShop(roots, day, 1);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("shop.cwshop: " + e.getMessage());
        }
    }

    /** Returns what is wrong with the files and with the values in them, in the order of files and lines. */
    static List<ReadProblem> problems(ShopFolder folder) {
        return Stream.concat(folder.problems().stream(), ValueRules.check(folder).stream()).distinct()
                .sorted(Comparator.comparing(ReadProblem::file).thenComparingInt(ReadProblem::line)).toList();
    }

    /** Returns how many problems must be mended. */
    static long errors(List<ReadProblem> problems) {
        return problems.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
    }

    /** Returns a problem as one line that begins with its weight. */
    static String words(ReadProblem problem) {
        String weight = switch (problem.severity()) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
        };
        return weight + ": " + problem.text();
    }
}
