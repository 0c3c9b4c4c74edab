package cradlewright.cli;

import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.Severity;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ValueRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is wrong with the files of a shop, causes first: a file that cannot be read, then the rest by file and line. References to objects
 * that are nowhere mostly follow from a file that is broken or gone, so they are told once for each such object, or once in all.
 */
final class FileProblems {

    private final List<String> unread;
    private final List<ReadProblem> causes;
    private final List<ReadProblem> references;

    private FileProblems(List<String> unread, List<ReadProblem> causes, List<ReadProblem> references) {
        this.unread = unread;
        this.causes = causes;
        this.references = references;
    }

    /** Gathers what is wrong with the files and with the values in them. */
    static FileProblems of(ShopFolder folder) {
        List<String> unread = folder.files().stream().filter(file -> file.root().isEmpty()).map(ShopFile::path).toList();
        Comparator<ReadProblem> order = Comparator.comparing((ReadProblem problem) -> !unread.contains(problem.file()))
                .thenComparing(ReadProblem::file).thenComparingInt(ReadProblem::line);
        Map<Boolean, List<ReadProblem>> all = Stream.concat(folder.problems().stream(), ValueRules.check(folder).stream()).distinct()
                .sorted(order).collect(Collectors.partitioningBy(problem -> problem.unknownId().isEmpty()));
        return new FileProblems(unread, all.get(true), all.get(false));
    }

    /** Returns one line for each thing to mend, each beginning with its weight. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        causes.forEach(problem -> lines.add(words(problem)));
        if (!unread.isEmpty() && !references.isEmpty()) {
            lines.add("error: " + count(references.size(), "reference") + " to objects that were not found: most likely they lie in "
                    + String.join(", ", unread) + "; mend that first");
            return lines;
        }
        Map<String, List<ReadProblem>> byId = references.stream().collect(Collectors.groupingBy(ReadProblem::unknownId, LinkedHashMap::new,
                Collectors.toList()));
        byId.values().forEach(same -> lines.add(words(same.get(0)) + (same.size() == 1 ? ""
                : "; the same goes for " + count(same.size() - 1, "further reference") + " to it")));
        return lines;
    }

    /** Tells whether something must be mended before the shop can be used. */
    boolean serious() {
        return errors() + references.size() > 0;
    }

    /** Returns how much there is of everything, in words. */
    String count() {
        boolean follow = !unread.isEmpty() && !references.isEmpty();
        String errors = follow ? count(errors(), "error") + " and " + references.size() + " that most likely follow"
                : count(errors() + references.size(), "error");
        return errors + ", " + count(causes.size() - errors(), "other remark");
    }

    private long errors() {
        return causes.stream().filter(problem -> problem.severity() == Severity.ERROR).count();
    }

    private static String words(ReadProblem problem) {
        String weight = switch (problem.severity()) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case NOTE -> "note";
        };
        return weight + ": " + problem.text();
    }

    private static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
