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
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.contact.SupportRank;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.mass.MassFormulas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Do the supports hold it at all? Comes before every question of who carries how much: number and lie of the supports seen from
 * above, and the balance point against their outline.
 */
public final class SupportRankCheck extends VisitCheck {

    /** Creates the check. */
    public SupportRankCheck() {
        super(new CheckInfo("support.rank", "Do the supports hold it at all?", "common practice, no source", Cautions.SUPPORTS
                + " " + Cautions.LIFTING,
                List.of("places of all supports", "mass and balance point of what is carried"),
                List.of(ContactFormulas.SUPPORT_RANK, MassFormulas.BALANCE, MassFormulas.UNCERTAINTY)));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        if (standing.carrier() == CarrierKind.AWAY) {
            return List.of();
        }
        Optional<HookHang> hook = reader.read(HookHangKey.of(standing));
        if (hook.filter(HookHang::settled).isPresent()) {
            // It swings until its balance point is below the hook, so it need not lie between the straps; lift.hanging answers for it.
            return List.of();
        }
        FindingBuilder finding = finding(subject, standing.visit().id(), subject.label()).situation("at rest");
        if (standing.setup().contacts().isEmpty()) {
            return List.of(finding.cantSay("Nothing says what it rests on.", List.of("what it rests on: enter each support of "
                    + standing.setup().name())));
        }
        List<Support> known = standing.supports().stream().filter(support -> certain(support, standing)).filter(s -> s.normal()
                .z() > 0).toList();
        Weight weight = reader.read(new WeightKey(subject.ownerId(), standing.visit().id()));
        List<Finding> findings = new ArrayList<>();
        SupportRank rank = SupportRank.of(known.stream().map(Support::inCarrier).toList(), Vec3.ZERO);
        List<String> lengths = hook.map(hang -> hang.missingAt(known)).orElse(List.of());
        findings.add(rank.hold() == SupportRank.Hold.TWO && !lengths.isEmpty()
                ? finding.cantSay("Whether it stays hanging in two straps follows from how long they are.", lengths)
                : judge(known, weight, standing, finding));
        rank.coincident().forEach(pair -> findings.add(together(known.get(pair.first()), known.get(pair.second()), subject)));
        return findings;
    }

    private static boolean certain(Support support, Standing standing) {
        return standing.carrier() == CarrierKind.FLOOR || !(support.holder() instanceof Holder.Unknown);
    }

    private Finding together(Support first, Support second, Subject subject) {
        return finding(subject, second.objectId(), second.name()).situation("at rest")
                .remedy(Remedy.advice("Measure both places again; take one out of the files if it is the same support twice."))
                .say(Verdict.TIGHT, first.name() + " and " + second.name() + " stand at one place and count as one support.");
    }

    private static Finding judge(List<Support> known, Weight weight, Standing standing, FindingBuilder finding) {
        Optional<Vec3> balance = weight.estimate().map(e -> Carriers.toCarrier(e.balance().point(), standing.setup()));
        SupportRank rank = SupportRank.of(known.stream().map(Support::inCarrier).toList(), balance.orElse(Vec3.ZERO));
        boolean open = standing.setup().contacts().size() > standing.supports().size()
                || standing.supports().stream().anyMatch(support -> !certain(support, standing));
        if (rank.hold() != SupportRank.Hold.HELD) {
            if (open) {
                return open(finding, standing);
            }
            return finding.remedy(Remedy.advice("Bring in more supports, so that the balance point lies well inside their outline."))
                    .say(Verdict.STOP, reason(rank, known));
        }
        if (balance.isEmpty() || !weight.missing().isEmpty()) {
            return finding.cantSay("Whether the balance point lies between the supports is not known.", weight.missing().isEmpty()
                    ? List.of("mass and balance point of the parts that are on: weigh them") : weight.missing());
        }
        return place(rank, known, weight.estimate().get(), standing, open, finding);
    }

    private static Finding open(FindingBuilder finding, Standing standing) {
        List<String> missing = new ArrayList<>(standing.missing());
        standing.supports().stream().filter(support -> !certain(support, standing)).map(s -> s.name() + ": what it rests on")
                .forEach(missing::add);
        if (missing.isEmpty()) {
            missing.add("place of each support of " + standing.setup().name());
        }
        return finding.cantSay("The supports that are known do not hold it, and others are not described.", missing);
    }

    private static String reason(SupportRank rank, List<Support> known) {
        return switch (rank.hold()) {
            case NONE -> "No support pushes it up.";
            case ONE -> "Only one support: it falls to any side.";
            case TWO, COLLINEAR -> "Nothing holds it about the line " + name(rank.line(), known) + ".";
            case HELD -> "";
        };
    }

    private static String name(SupportRank.Pair pair, List<Support> known) {
        return known.get(pair.first()).name() + " - " + known.get(pair.second()).name();
    }

    private static Finding place(SupportRank rank, List<Support> known, EstimatedBalance estimate, Standing standing,
            boolean open,
            FindingBuilder finding) {
        String edge = name(rank.edge(), known);
        double give = give(rank.edge(), known, estimate);
        finding.input("balance point inside the line " + edge, Amount.length(rank.margin()), "from the parts list")
                .input("give or take across that line", Amount.length(give), "19 times in 20");
        boolean bolted = standing.supports().stream().anyMatch(support -> support.hold() == Hold.BOLTED);
        if (rank.margin() - give <= 0 && bolted) {
            return finding.say(Verdict.TIGHT, "Only bolts keep it from going over the line " + edge
                    + ": see whether they hold the pull.");
        }
        if (rank.margin() <= 0 && open) {
            return open(finding, standing);
        }
        if (rank.margin() <= 0) {
            return finding.remedy(Remedy.advice("Add a support beyond the line " + edge
                    + ", or move what it stands on towards the balance point."))
                    .say(Verdict.STOP, rank.place() == SupportRank.Place.ON_EDGE ? "The balance point lies on the line " + edge
                            + ": a touch tips it."
                            : "The balance point lies outside the line " + edge + ": it goes over.");
        }
        finding.atLeast(Amount.length(give), Amount.length(rank.margin()), "distance of the balance point from the line " + edge);
        if (give >= rank.margin()) {
            return finding.remedy(Remedy.advice("Weigh it to know the balance point better, or add a support beyond " + edge + "."))
                    .say(Verdict.STOP, "At the unfavourable end of what is known the balance point lies outside the line "
                            + edge + ".");
        }
        return finding.say(Verdict.HOLDS, "The balance point lies between the supports, also at the ends of what is known.");
    }

    /** Give or take of the balance point across the line of two supports, m; covariance turned into that direction (JCGM 100, 5.2.2). */
    private static double give(SupportRank.Pair edge, List<Support> known, EstimatedBalance estimate) {
        Vec3 along = known.get(edge.second()).onCar().minus(known.get(edge.first()).onCar());
        double length = Math.hypot(along.x(), along.y());
        double nx = -along.y() / length;
        double ny = along.x() / length;
        double variance = nx * nx * estimate.covariance(Quantity.X, Quantity.X) + 2 * nx * ny * estimate.covariance(Quantity.X,
                Quantity.Y)
                + ny * ny * estimate.covariance(Quantity.Y, Quantity.Y);
        return EstimatedBalance.COVERAGE * Math.sqrt(Math.max(0, variance));
    }
}
