package cradlewright.benchmarks;

import cradlewright.mechanics.frame.CutSide;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.InternalForces;
import cradlewright.mechanics.geometry.Vec3;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/** Compares speed and numbers of frame and contacts with the program ccx; see the README beside. */
public final class FrameBenchmark {

    private static final int WARM_UP = 20;
    private static final int RUNS = 9;
    private static final int ALONE = 10;
    private static final int ROUNDS = 40;
    private static final int CUTS = 4;
    private static final double ALLOWED = 0.005;

    private final GridDolly dolly = new GridDolly();
    private final Report report;
    private final CcxRun ccx;
    private double worst;

    private FrameBenchmark(Path target) throws IOException {
        report = new Report(target.resolve("result.txt"));
        ccx = new CcxRun(target.resolve("ccx"));
    }

    /** Runs everything; the argument is the folder for results. */
    public static void main(String[] args) throws IOException, InterruptedException {
        FrameBenchmark benchmark = new FrameBenchmark(Path.of(args[0]));
        benchmark.run();
        benchmark.report.write();
        if (!(benchmark.worst <= ALLOWED)) {
            System.err.printf(Locale.ROOT, "Numbers differ by more than %.1f %%.%n", 100 * ALLOWED);
            System.exit(1);
        }
    }

    private void run() throws IOException, InterruptedException {
        report.line("Frame and contacts beside ccx: %d freedoms, %d members, 12 pads, 4 castors, %d load cases, seed %d",
                dolly.freedoms(),
                dolly.bars.size(), GridDolly.CASES, GridDolly.SEED);
        bilateral();
        List<OwnSide.Answer> answers = List.of();
        double[] wall = new double[RUNS];
        double[] processor = new double[RUNS];
        for (int i = -WARM_UP; i < RUNS; i++) {
            Clock clock = new Clock();
            answers = OwnSide.solve(dolly);
            if (i >= 0) {
                Clock.Span span = clock.read();
                wall[i] = span.elapsed();
                processor[i] = span.processor();
            }
        }
        double own = report.spread("ours, all cases, elapsed s", wall);
        double ownProcessor = report.spread("ours, all cases, processor s (all threads)", processor);
        alone(answers, own, ownProcessor);
        together(answers, own, ownProcessor);
    }

    private void alone(List<OwnSide.Answer> answers, double own, double ownProcessor) throws IOException, InterruptedException {
        double elapsed = 0;
        double processor = 0;
        int processes = 0;
        double differs = 0;
        double moments = 0;
        for (int k = 0; k < ALONE; k++) {
            int c = k * GridDolly.CASES / ALONE;
            BitSet shut = new BitSet();
            shut.set(0, dolly.touches.size());
            CcxRun.Timed timed = null;
            double[] force = {};
            for (int round = 0;; round++) {
                if (round == ROUNDS) {
                    throw new IllegalStateException("the signs of case " + c + " did not settle in " + ROUNDS + " runs");
                }
                timed = ccx.run("alone", CcxDeck.single(dolly, dolly.cases.get(c), shut));
                processes++;
                elapsed += timed.elapsed();
                processor += timed.processor();
                force = CcxDeck.contactForces(dolly, timed.steps().get(0));
                BitSet next = pressing(force);
                if (next.equals(shut)) {
                    break;
                }
                shut = next;
            }
            differs = Math.max(differs, contactDifference(answers.get(c), force));
            moments = Math.max(moments, memberDifference(answers.get(c), timed.steps().get(0)));
        }
        report.line("ccx, one process a case and round: %d cases took %d processes, scaled to %d cases", ALONE, processes,
                GridDolly.CASES);
        ratios("one process", elapsed * GridDolly.CASES / ALONE, processor * GridDolly.CASES / ALONE, own, ownProcessor);
        shares("contact forces of these cases", differs);
        shares("member forces of these cases", moments);
    }

    private void together(List<OwnSide.Answer> answers, double own, double ownProcessor) throws IOException,
            InterruptedException {
        List<BitSet> shut = answers.stream().map(a -> pressing(a.contacts())).toList();
        CcxRun.Timed timed = ccx.run("together", CcxDeck.steps(dolly, dolly.cases, shut));
        if (timed.steps().size() != GridDolly.CASES) {
            throw new IllegalStateException("ccx answered " + timed.steps().size() + " of " + GridDolly.CASES + " steps");
        }
        ratios("one deck of " + GridDolly.CASES + " steps with our contact sets", timed.elapsed(), timed.processor(), own,
                ownProcessor);
        double contacts = 0;
        double members = 0;
        for (int c = 0; c < GridDolly.CASES; c++) {
            contacts = Math.max(contacts, contactDifference(answers.get(c), CcxDeck.contactForces(dolly, timed.steps().get(c))));
            members = Math.max(members, memberDifference(answers.get(c), timed.steps().get(c)));
        }
        shares("contact forces of all cases", contacts);
        shares("member forces of all cases", members);
    }

    private void ratios(String what, double elapsed, double processor, double own, double ownProcessor) {
        report.line("ccx, %s: %.3f s elapsed, %.3f s processor", what, elapsed, processor);
        report.line("  ratio ccx to ours: %.1f elapsed, %.1f processor", elapsed / own, processor / ownProcessor);
    }

    private static BitSet pressing(double[] force) {
        BitSet set = new BitSet();
        for (int t = 0; t < force.length; t++) {
            set.set(t, force[t] > 0);
        }
        return set;
    }

    /** Largest difference of a contact force as a share of the largest contact force. */
    private static double contactDifference(OwnSide.Answer answer, double[] other) {
        double most = Arrays.stream(answer.contacts()).max().orElseThrow();
        double difference = 0;
        for (int t = 0; t < other.length; t++) {
            difference = Math.max(difference, Math.abs(answer.contacts()[t] - Math.max(0, other[t])));
        }
        return difference / most;
    }

    /** Of bending, shear and torque in turn, the largest difference as a share of the largest value. */
    private double memberDifference(OwnSide.Answer answer, CcxOutput out) {
        List<double[]> ours = new ArrayList<>();
        List<double[]> others = new ArrayList<>();
        for (int b = 0; b < dolly.bars.size(); b++) {
            for (int end = 0; end < 2; end++) {
                InternalForces f = answer.members()[b][end];
                double[] s = out.section(b + 1, end, dolly.direction(dolly.bars.get(b)), Vec3.UP);
                ours.add(new double[] {f.my(), f.vz(), f.t()});
                others.add(new double[] {s[1], s[2], s[3] / CcxDeck.SHEAR_FACTOR});
            }
        }
        return Arrays.stream(differences(ours, others)).max().orElseThrow();
    }

    private static double[] differences(List<double[]> ours, List<double[]> others) {
        double[] result = new double[ours.get(0).length];
        for (int k = 0; k < result.length; k++) {
            double most = 0;
            double difference = 0;
            for (int i = 0; i < ours.size(); i++) {
                most = Math.max(most, Math.abs(others.get(i)[k]));
                difference = Math.max(difference, Math.abs(ours.get(i)[k] - others.get(i)[k]));
            }
            result[k] = difference / most;
        }
        return result;
    }

    private void shares(String what, double... share) {
        StringBuilder all = new StringBuilder();
        for (double s : share) {
            worst = Math.max(worst, Double.isNaN(s) ? Double.POSITIVE_INFINITY : s);
            all.append(String.format(Locale.ROOT, " %.4f", 100 * s));
        }
        report.line("  difference of %s, %% of the largest:%s (allowed %.1f)", what, all, 100 * ALLOWED);
    }

    private void bilateral() throws IOException, InterruptedException {
        Bilateral bilateral = Bilateral.of(dolly);
        FrameResult ours = bilateral.solve(dolly);
        CcxOutput other = ccx.run("bilateral", CcxDeck.paired(dolly, bilateral, CUTS)).steps().get(0);
        List<double[]> a = new ArrayList<>();
        List<double[]> b = new ArrayList<>();
        for (int n = 0; n < dolly.nodes.size(); n++) {
            var motion = ours.motion(GridDolly.name(n));
            a.add(new double[] {motion.translation().x(), motion.translation().y(), motion.translation().z(),
                    motion.rotation().x(),
                motion.rotation().y(), motion.rotation().z()});
            b.add(other.movement(CcxDeck.node(n)));
        }
        report.line("Supports that push and pull, loads along and about all axes, members cut in %d for ccx", CUTS);
        shares("shifts x y z and turns x y z", differences(a, b));
        a.clear();
        b.clear();
        for (int m = 0; m < dolly.bars.size(); m++) {
            for (int end = 0; end < 2; end++) {
                double at = end * dolly.length(dolly.bars.get(m));
                InternalForces f = ours.forces(GridDolly.barName(m), at, CutSide.BEFORE);
                a.add(new double[] {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()});
                int part = end * (CUTS - 1);
                Vec3 along = dolly.direction(dolly.bars.get(m));
                double[] up = other.section(CcxDeck.piece(m, part, CUTS, false), end, along, Vec3.UP);
                double[] side = other.section(CcxDeck.piece(m, part, CUTS, true), end, along, Vec3.UP.cross(along));
                b.add(new double[] {up[0] + side[0], side[2], up[2], (up[3] + side[3]) / CcxDeck.SHEAR_FACTOR, up[1], -side[1]});
            }
        }
        shares("member forces N Vy Vz T My Mz", differences(a, b));
    }
}
