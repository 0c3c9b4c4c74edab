package cradlewright.benchmarks;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Times the checks of a whole shop, and from an edit to the findings; see the README beside. */
public final class ShopBenchmark {

    private static final int EDITS = 50;
    private static final int ROUNDS = 5;
    private static final int SITUATIONS = 60;
    private static final int WARM_UP = 4;
    private static final int WARM_CARS = 5;
    private static final double SHARE = 0.95;
    private static final long SEED = 20250314L;
    private static final CheckCatalogue CATALOGUE = BuiltInChecks.catalogue();

    private ShopBenchmark() {
    }

    /**
     * Runs; arguments: folder for results, then the smaller and the larger number of cars, the edits, the rounds of a full check,
     * of which the median counts, and the situations a visit (20, 200, 50, 5, 60 if left out).
     */
    public static void main(String[] args) throws IOException {
        int few = number(args, 1, 20);
        int many = number(args, 2, 200);
        int edits = number(args, 3, EDITS);
        int rounds = number(args, 4, ROUNDS);
        int situations = Math.max(GeneratedShop.OTHER_SITUATIONS, number(args, 5, SITUATIONS));
        Report report = new Report(Path.of(args[0]).resolve("result.txt"));
        report.line("Shop of %d and %d cars: 3 visits, %d situations a visit, 8 pads, 4 castors, %d members each; most heap %d MB; "
                + "seed %d", few, many, situations, GeneratedShop.MEMBERS, Runtime.getRuntime().maxMemory() >> 20, SEED);
        for (int i = 0; i < WARM_UP; i++) {
            full(new GeneratedShop(Math.min(few, WARM_CARS), situations), new Engine());
        }
        bare(few, situations, report);
        Clock.Span small = measure(few, situations, edits, rounds, report);
        Clock.Span large = measure(many, situations, edits, rounds, report);
        for (String kind : Clock.Span.KINDS) {
            report.line("growth exponent of the full check, %s: %.2f", kind,
                    Math.log(large.of(kind) / small.of(kind)) / Math.log((double) many / few));
        }
        report.write();
    }

    /** A full check beside the mechanics calls alone, both warm. */
    private static void bare(int cars, int situations, Report report) {
        Engine engine = new Engine();
        Clock clock = new Clock();
        full(new GeneratedShop(cars, situations), engine);
        Clock.Span whole = clock.read();
        BareSolves bare = new BareSolves(engine);
        Clock.Span alone = bare.run();
        for (String kind : Clock.Span.KINDS) {
            report.line("%d cars, s %s: full check %.2f, its %d solves alone %.2f; ratio %.2f", cars, kind, whole.of(kind), bare.count(),
                    alone.of(kind), whole.of(kind) / alone.of(kind));
        }
    }

    private static int number(String[] args, int index, int otherwise) {
        return args.length > index ? Integer.parseInt(args[index]) : otherwise;
    }

    private static ShopAnswers full(GeneratedShop shop, Engine engine) {
        engine.update(shop.snapshot());
        return new ShopChecks(engine, CATALOGUE).ask(subject -> true, Progress.NONE);
    }

    private static Clock.Span measure(int cars, int situations, int edits, int rounds, Report report) {
        List<Clock.Span> checks = new ArrayList<>();
        GeneratedShop shop = new GeneratedShop(cars, situations);
        Engine engine = null;
        ShopAnswers answers = null;
        for (int i = 0; i < rounds; i++) {
            engine = new Engine();
            Clock clock = new Clock();
            answers = full(shop, engine);
            checks.add(clock.read());
        }
        report.line("%d cars: %d subjects, %d findings %s, %d values remembered, heap in use %d MB", cars,
                answers.subjects().size(), answers.findings().size(), answers.counts(), engine.size(), usedMegabytes());
        Random random = new Random(SEED);
        List<Clock.Span> after = new ArrayList<>();
        for (int e = 0; e < edits; e++) {
            shop.weigh(random.nextInt(cars), GeneratedShop.BODY + 100 * random.nextDouble());
            Clock clock = new Clock();
            full(shop, engine);
            after.add(clock.read());
        }
        double[] whole = new double[Clock.Span.KINDS.size()];
        for (String kind : Clock.Span.KINDS) {
            double check = report.spread("  full check, s " + kind, times(checks, kind));
            whole[Clock.Span.KINDS.indexOf(kind)] = check;
            double[] sorted = times(after, kind);
            report.spread("  from the edit of a mass to all findings, s " + kind, sorted);
            double high = sorted[(int) Math.ceil(SHARE * edits) - 1];
            report.line("    95 of 100 within %.3f s; full check over that: %.1f", high, check / high);
        }
        return new Clock.Span(whole[0], whole[1], whole[2]);
    }

    private static double[] times(List<Clock.Span> spans, String kind) {
        return spans.stream().mapToDouble(span -> span.of(kind)).sorted().toArray();
    }

    private static long usedMegabytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory() >> 20;
    }
}
