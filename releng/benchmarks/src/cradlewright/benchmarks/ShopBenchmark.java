package cradlewright.benchmarks;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;

/** Times the checks of a whole shop, and from an edit to the findings; see the README beside. */
public final class ShopBenchmark {

    private static final int EDITS = 50;
    private static final long SEED = 20250314L;
    private static final CheckCatalogue CATALOGUE = BuiltInChecks.catalogue();

    private ShopBenchmark() {
    }

    /** Runs; arguments: folder for results, then the smaller and the larger number of cars (20 and 200 when left out). */
    public static void main(String[] args) throws IOException {
        int few = args.length > 1 ? Integer.parseInt(args[1]) : 20;
        int many = args.length > 2 ? Integer.parseInt(args[2]) : 200;
        Report report = new Report(Path.of(args[0]).resolve("result.txt"));
        report.line("Shop of %d and %d cars: 3 visits, 8 pads, 4 castors, %d members each; most heap %d MB; seed %d", few, many,
                GeneratedShop.MEMBERS, Runtime.getRuntime().maxMemory() >> 20, SEED);
        full(new GeneratedShop(Math.max(1, few / 4)), new Engine());
        double small = measure(few, report);
        double large = measure(many, report);
        report.line("growth exponent of the full check: %.2f", Math.log(large / small) / Math.log((double) many / few));
        report.write();
    }

    private static ShopAnswers full(GeneratedShop shop, Engine engine) {
        engine.update(shop.snapshot());
        return new ShopChecks(engine, CATALOGUE).ask(subject -> true, Progress.NONE);
    }

    private static double measure(int cars, Report report) {
        GeneratedShop shop = new GeneratedShop(cars);
        Engine engine = new Engine();
        long start = System.nanoTime();
        ShopAnswers answers = full(shop, engine);
        double whole = (System.nanoTime() - start) / 1e9;
        report.line("%d cars: full check %.2f s, %d subjects, %d findings %s, %d values kept, heap in use %d MB", cars, whole,
                answers.subjects().size(), answers.findings().size(), answers.counts(), engine.size(), usedMegabytes());
        Random random = new Random(SEED);
        double[] edits = new double[EDITS];
        for (int e = 0; e < EDITS; e++) {
            shop.weigh(random.nextInt(cars), GeneratedShop.BODY + 100 * random.nextDouble());
            start = System.nanoTime();
            full(shop, engine);
            edits[e] = (System.nanoTime() - start) / 1e9;
        }
        Arrays.sort(edits);
        double p95 = edits[(int) Math.ceil(0.95 * EDITS) - 1];
        report.line("  from an edit of a mass to all findings: median %.3f s, 95 of 100 within %.3f s, most %.3f s; full check over that: %.0f",
                edits[EDITS / 2], p95, edits[EDITS - 1], whole / p95);
        return whole;
    }

    private static long usedMegabytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory() >> 20;
    }
}
