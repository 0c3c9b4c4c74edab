package cradlewright.cli;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopRun;
import cradlewright.analysis.run.SubjectsKey;
import cradlewright.report.VisitNumbers;
import cradlewright.report.html.HtmlReport;
import cradlewright.report.json.JsonReport;
import cradlewright.report.text.TextReport;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a shop, or what is named of it. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = {"Checks every car as it stands or hangs, every dolly and all lifting gear of a shop.",
            "For example: check my-shop --only \"red coupe\" --html pages"},
        footer = {"", "Exit codes: 0 all holds or is tight, 1 a STOP, 2 a CAN'T SAY and no STOP, 3 bad input,",
            "            4 internal error, 5 something is tight (only with --strict)."})
final class CheckVerb implements Callable<Integer> {

    /** More threads than this gain little in a shop of some ten cars, and each has values of its own to keep. */
    private static final int MOST_THREADS = 4;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "SHOP", description = "folder of the shop")
    private Path shop;

    @Option(names = "--only", paramLabel = "NAME",
            description = "only what has this in its name or is this id: a car, a visit, a dolly, a lift")
    private String only;

    @Option(names = "--check", paramLabel = "ID", description = "only the check with this id, see list-checks")
    private String check;

    @Mixin
    private ReaderOptions reader;

    @Option(names = "--all", description = "write out what holds, too")
    private boolean all;

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @Option(names = "--html", paramLabel = "FOLDER", description = "also write pages with drawings into this folder")
    private Path html;

    @Option(names = "--strict", description = "exit with 5 when something is tight")
    private boolean strict;

    @Option(names = "--progress", description = "tell on the error channel how far it is, for a large shop")
    private boolean progress;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        LocalDate date = reader.day();
        CheckCatalogue catalogue = BuiltInChecks.catalogue();
        ShopSnapshot snapshot = OpenShop.snapshot(shop, date, spec.commandLine().getErr());
        // What to do is tried against all checks, also when only one was asked for.
        ShopRun run = new ShopRun(snapshot, wanted(catalogue), catalogue, threads());
        ShopAnswers answers = run.answers(wanted(), this::prepare, progress());
        Reader values = run.reader();
        if (answers.subjects().isEmpty()) {
            throw new BadInputException(only == null ? "there are no cars, dollies or lifting gear in this shop yet: nothing to check"
                    : "nothing in this shop is called " + only + Near.hint(only, names(values),
                            "run the check without --only to see the names of everything"));
        }
        if (html != null) {
            writeHtml(answers, values, date);
        }
        out.print(json ? new JsonReport().write(answers, date, values) : new TextReport(reader.units(), all).write(answers, date, values));
        return ExitCode.of(answers.worst(), strict);
    }

    private CheckCatalogue wanted(CheckCatalogue catalogue) {
        if (check == null) {
            return catalogue;
        }
        return new CheckCatalogue(List.of(catalogue.find(check).orElseThrow(() -> ExplainVerb.unknown(check))));
    }

    private static int threads() {
        return Math.max(1, Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    private void prepare(Subject subject, Reader values) {
        VisitNumbers.of(values, subject);
        if (html != null) {
            HtmlReport.prepare(subject, values);
        }
    }

    private static List<String> names(Reader values) {
        return values.read(new SubjectsKey()).stream().map(Subject::label).toList();
    }

    private Progress progress() {
        return progress ? new CountedProgress(spec.commandLine().getErr()) : Progress.NONE;
    }

    private Predicate<Subject> wanted() {
        if (only == null) {
            return subject -> true;
        }
        String part = only.toLowerCase(Locale.ROOT);
        return subject -> subject.ownerId().equals(only) || subject.visitId().filter(only::equals).isPresent()
                || subject.label().toLowerCase(Locale.ROOT).contains(part);
    }

    private void writeHtml(ShopAnswers answers, Reader values, LocalDate date) {
        if (Files.exists(html) && !Files.isDirectory(html)) {
            throw new BadInputException("--html " + html + " is a file: name a folder for the pages");
        }
        try {
            new HtmlReport(reader.units()).write(answers, values, date, html);
        } catch (IOException e) {
            String reason = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() + "; " : "";
            throw new BadInputException("the pages cannot be written into " + html + ": " + reason
                    + "name another folder, or check rights and room on this one");
        }
    }
}
