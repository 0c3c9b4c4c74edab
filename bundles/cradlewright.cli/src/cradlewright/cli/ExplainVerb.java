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
import cradlewright.report.UnitSystem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains one check: its formulas with sources and limits, and the numbers of a shop put in. */
@Command(name = "explain", mixinStandardHelpOptions = true,
        description = "Explains a check: formulas, sources, limits; with a shop also the numbers put in.")
final class ExplainVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "ID", description = "id of the check, see list-checks")
    private String id;

    @Parameters(index = "1", arity = "0..1", paramLabel = "SHOP", description = "folder of a shop whose numbers are put in")
    private Path shop;

    @Option(names = "--units", defaultValue = "metric", description = "metric or inch (default: ${DEFAULT-VALUE})")
    private UnitSystem units;

    @Override
    public Integer call() {
        Check check = BuiltInChecks.catalogue().find(id).orElseThrow(() -> unknown(id));
        PrintWriter out = spec.commandLine().getOut();
        CheckInfo info = check.info();
        out.printf("%s  %s%n  follows   %s%n  needs     %s%n  caution   %s%n", info.id(), info.title(), info.clause(),
                String.join("; ", info.needs()), info.caution());
        info.formulas().forEach(formula -> print(out, formula));
        if (shop != null) {
            Engine engine = new Engine();
            engine.update(OpenShop.snapshot(shop, LocalDate.now(), spec.commandLine().getErr()));
            ShopAnswers answers = new ShopChecks(engine, new CheckCatalogue(List.of(check)))
                    .ask(subject -> true, Progress.NONE);
            answers.findings().forEach(finding -> print(out, finding));
        }
        return ExitCode.HELD;
    }

    /** Returns the complaint about an id that no check has. */
    static BadInputException unknown(String id) {
        return new BadInputException("there is no check " + id + ": list-checks shows the ids of all");
    }

    private static void print(PrintWriter out, Formula formula) {
        out.printf("%n  %s  %s%n    %s%n    source    %s%n    limits    %s%n    left out  %s%n", formula.id(), formula.title(),
                formula.expression(), formula.source(), formula.limits(), formula.neglected());
    }

    private void print(PrintWriter out, Finding finding) {
        out.printf("%n%s, %s: %s%n  %s%n", finding.subject().label(), finding.objectName(), finding.verdict().word(), finding.words());
        String numbers = FindingWords.numbers(finding, units);
        if (!numbers.isEmpty()) {
            out.printf("  %s; %s%n", numbers, finding.ratedBy());
        }
        if (!finding.situation().isEmpty()) {
            out.printf("  when      %s%n", finding.situation());
        }
        finding.inputs().forEach(input -> out.printf("  %-36s %14s  %s%n", input.name(), units.text(input.amount()), input.origin()));
        finding.missing().forEach(missing -> out.printf("  missing   %s%n", missing));
    }
}
