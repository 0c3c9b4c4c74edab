package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SettingsFacts.ShimTolerance;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.contact.SupportRank;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Is a stack of shims short, so that what it carries twists? The twist is how far one support lies off the plane through the others,
 * at the unfavourable end of what is known of the gaps.
 */
public final class ShimShortCheck extends VisitCheck {

    /** Heights closer than this are the same but for rounding, m. */
    private static final double SAME = 1e-9;

    /** Creates the check. */
    public ShimShortCheck() {
        super(new CheckInfo("support.shim-short", "Is a stack of shims short, so that what it carries twists?",
                "allowed twist of the shop, common practice, no source; plane of least squares", Cautions.SUPPORTS,
                List.of("measured gap or heights of mount, fixture, pad and shims at every support"),
                        List.of(ContactFormulas.SUPPORT_RANK)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        List<Support> supports = standing.supports();
        boolean fixtures = supports.stream().allMatch(support -> support.holder() instanceof Holder.OnFixture);
        boolean known = supports.stream().allMatch(Support::gapKnown);
        boolean spans = SupportRank.of(supports.stream().map(Support::inCarrier).toList(), Vec3.ZERO)
                .hold() == SupportRank.Hold.HELD;
        if (standing.lifted() || supports.size() < 4 || !spans || !fixtures && !known) {
            return List.of();
        }
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label()).situation("at rest");
        if (!known) {
            return List.of(finding.cantSay("Whether the supports lie in one plane is not known.",
                    supports.stream().filter(support -> !support.gapKnown())
                            .map(s -> s.name() + ": gap under it before it settles, or all heights from mount to fixture").toList()));
        }
        String what = standing.carries(PieceKind.SHELL) ? "the shell" : standing.carries(PieceKind.CHASSIS) ? "the chassis"
                : "what it carries";
        return List.of(judge(standing, settings(reader).shimTolerance(), what, subject, reader));
    }

    private Finding judge(Standing standing, ShimTolerance tolerance, String what, Subject subject, Reader reader) {
        List<Support> supports = standing.supports();
        List<Double> gaps = supports.stream().map(Support::gap).toList();
        List<Double> low = low(supports, gaps);
        int shortest = shortest(low, gaps);
        double listed = low.stream().mapToDouble(Math::abs).max().orElse(0);
        double twist = twist(supports, gaps);
        Support support = supports.get(shortest);
        Verdict verdict = verdict(twist, tolerance);
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation("at rest")
                .input("short of the plane of the others", Amount.length(low.get(shortest)), support.gapFrom().words())
                .input("allowed for welding", Amount.length(tolerance.welding()), "settled by the shop")
                .input("allowed for working", Amount.length(tolerance.working()), "settled by the shop")
                .input("allowed for storing", Amount.length(tolerance.storing()), "settled by the shop")
                .against(Amount.length(twist), Amount.length(decided(twist, tolerance)), "twist allowed for " + use(twist, tolerance));
        if (twist > listed) {
            finding.shown("twist with the gaps as listed", Amount.length(listed), "worked out")
                    .shown("what the give or take of the gaps adds", Amount.length(twist - listed), "19 times in 20");
        }
        if (twist <= tolerance.welding()) {
            return finding.say(verdict, "The supports lie in one plane, well enough even for welding.");
        }
        boolean doubt = decided(listed, tolerance) < decided(twist, tolerance) || listed <= tolerance.welding();
        Optional<Remedy> stack = remedy(standing, gaps, shortest, low.get(shortest), tolerance, reader);
        stack.ifPresent(finding::remedy);
        if (doubt) {
            finding.remedy(Remedy.advice("Measure the gaps anew and more closely, that at " + support.name() + " first."));
        } else if (stack.isEmpty()) {
            finding.remedy(Remedy.advice("Shim up " + support.name() + " by what it is short of the plane of the others."));
        }
        String may = doubt ? " may be" : " is";
        String fit = verdict == Verdict.STOP ? what + (doubt ? " may twist" : " twists") + " more than the shop allows even for storing."
                : twist > tolerance.working() ? what + " may be stored so, but" + may + " twisted too much to work on or weld."
                        : what + " may be worked on so, but" + may + " twisted too much to weld.";
        return finding.say(verdict, doubt ? "The gaps are not known closely enough: " + fit
                : "The stack at " + support.name() + " is short: " + fit);
    }

    /** By how much each support lies low against the plane of the others, m; zero where the others span none. */
    private static List<Double> low(List<Support> supports, List<Double> gaps) {
        List<Vec3> points = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            points.add(new Vec3(supports.get(i).inCarrier().x(), supports.get(i).inCarrier().y(), gaps.get(i)));
        }
        PlaneFit fit = new PlaneFit(points);
        List<Double> low = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            low.add(fit.offTheOthers(i).orElse(0));
        }
        return low;
    }

    /**
     * Of a diagonal pair both are equally short of the plane of the others, whatever rounding says. Where one
     * touches and the other shows daylight, that one is named, since shims under the one that touches would lift the car off its
     * neighbours; else the first.
     */
    private static int shortest(List<Double> low, List<Double> gaps) {
        int shortest = 0;
        for (int i = 1; i < low.size(); i++) {
            double more = low.get(i) - low.get(shortest);
            boolean daylight = Math.abs(gaps.get(shortest)) < SAME && gaps.get(i) > SAME;
            if (more > SAME || more > -SAME && daylight) {
                shortest = i;
            }
        }
        return shortest;
    }

    /** Returns the twist at the unfavourable end of what is known of the gaps, 19 times in 20, m. */
    private static double twist(List<Support> supports, List<Double> gaps) {
        List<Double> low = low(supports, gaps);
        double[] variance = new double[gaps.size()];
        for (int at = 0; at < gaps.size(); at++) {
            // How far each lies off the plane of the others goes straight with each gap.
            List<Double> one = new ArrayList<>(Collections.nCopies(gaps.size(), 0.0));
            one.set(at, supports.get(at).gapU());
            List<Double> moved = low(supports, one);
            for (int i = 0; i < variance.length; i++) {
                variance[i] += moved.get(i) * moved.get(i);
            }
        }
        double twist = 0;
        for (int i = 0; i < variance.length; i++) {
            twist = Math.max(twist, Math.abs(low.get(i)) + Value.COVERAGE * Math.sqrt(variance[i]));
        }
        return twist;
    }

    /** Returns the limit that decides: the least strict one that the twist is beyond, else the strictest. */
    private static double decided(double twist, ShimTolerance tolerance) {
        return twist > tolerance.storing() ? tolerance.storing() : twist > tolerance.working() ? tolerance.working() : tolerance.welding();
    }

    private static String use(double twist, ShimTolerance tolerance) {
        return twist > tolerance.storing() ? "storing" : twist > tolerance.working() ? "working" : "welding";
    }

    private static Verdict verdict(double twist, ShimTolerance tolerance) {
        return twist > tolerance.storing() ? Verdict.STOP : twist > tolerance.welding() ? Verdict.TIGHT : Verdict.HOLDS;
    }

    /** Lays the stack on hand that leaves the least twist and asks again. */
    private static Optional<Remedy> remedy(Standing standing, List<Double> gaps, int shortest, double missing,
            ShimTolerance tolerance, Reader reader) {
        List<Support> supports = standing.supports();
        double before = twist(supports, gaps);
        Optional<StockShims.Stack> best = StockShims.under(supports.get(shortest), 2 * missing, reader).stream()
                .min(Comparator.comparingDouble(stack -> twistWith(stack, supports, gaps, shortest)));
        return best.filter(stack -> twistWith(stack, supports, gaps, shortest) < before)
                .filter(stack -> verdict(twistWith(stack, supports, gaps, shortest), tolerance).compareTo(verdict(before,
                        tolerance)) < 0)
                .map(stack -> Remedy.trial("Lay " + stack.words() + " under " + supports.get(shortest).name() + ".",
                        stack.under(supports.get(shortest), standing)));
    }

    private static double twistWith(StockShims.Stack stack, List<Support> supports, List<Double> gaps, int at) {
        List<Double> changed = new ArrayList<>(gaps);
        changed.set(at, gaps.get(at) - stack.height());
        return twist(supports, changed);
    }
}
