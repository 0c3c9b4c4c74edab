package cradlewright.cli;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.mechanics.formula.Formula;
import cradlewright.report.FindingWords;
import cradlewright.report.text.Lines;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains one check: its formulas with sources and limits, and the numbers of a shop put in. */
@Command(name = "explain", mixinStandardHelpOptions = true,
        description = {"Explains a check: formulas, sources, limits; with a shop also the numbers put in.",
            "For example: explain stand.load my-shop"})
final class ExplainVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "ID", description = "id of the check, see list-checks")
    private String id;

    @Parameters(index = "1", arity = "0..1", paramLabel = "SHOP", description = "folder of a shop whose numbers are put in")
    private Path shop;

    @Mixin
    private ReaderOptions reader;

    @Override
    public Integer call() {
        Check check = BuiltInChecks.catalogue().find(id).orElseThrow(() -> unknown(id));
        PrintWriter out = spec.commandLine().getOut();
        CheckInfo info = check.info();
        out.print(Lines.wrap(info.id() + "  ", info.title()));
        line(out, "follows", info.clause());
        line(out, "needs", String.join("; ", info.needs()));
        line(out, "caution", info.caution());
        info.formulas().forEach(formula -> print(out, formula));
        if (shop != null) {
            Engine engine = new Engine();
            engine.update(OpenShop.snapshot(shop, reader.day(), spec.commandLine().getErr()));
            ShopAnswers answers = new ShopChecks(engine, new CheckCatalogue(List.of(check)))
                    .ask(subject -> true, Progress.NONE);
            answers.findings().forEach(finding -> print(out, finding));
            if (answers.findings().isEmpty()) {
                out.print("\n" + Lines.wrap("", "In this shop the check has no answer: nothing there raises its question."));
            }
        }
        return ExitCode.HELD;
    }

    /** Returns the complaint about an id that no check has. */
    static BadInputException unknown(String id) {
        return new BadInputException("there is no check " + id
                + Near.hint(id, BuiltInChecks.catalogue().all().stream().map(check -> check.info().id()).toList(),
                        "list-checks shows the ids of all"));
    }

    private static void print(PrintWriter out, Formula formula) {
        out.print("\n" + Lines.wrap("  " + formula.id() + "  ", formula.title()));
        out.print(Lines.wrap("    ", formula.expression()));
        line(out, "source", formula.source());
        line(out, "limits", formula.limits());
        line(out, "left out", formula.neglected());
    }

    private void print(PrintWriter out, Finding finding) {
        out.print("\n" + Lines.wrap("", finding.subject().label() + ", " + finding.objectName() + ": " + finding.verdict().word()));
        out.print(Lines.wrap("  ", finding.words()));
        String numbers = FindingWords.against(finding, reader.units());
        if (!numbers.isEmpty()) {
            line(out, "numbers", numbers + "; " + finding.ratedBy());
        }
        if (!finding.situation().isEmpty()) {
            line(out, "when", finding.situation());
        }
        finding.inputs().forEach(input -> out.print(Lines.wrap(
                String.format("    %-36s %14s  ", input.name(), reader.units().text(input.amount())), input.origin())));
        finding.missing().forEach(missing -> line(out, "missing", missing));
    }

    private static void line(PrintWriter out, String head, String text) {
        out.print(Lines.wrap(String.format("    %-9s ", head), text));
    }
}
