package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.dolly.FrameCheck;
import cradlewright.analysis.checks.dolly.LoadedMember;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.joint.BoltForce;
import cradlewright.mechanics.joint.BoltSize;
import cradlewright.mechanics.joint.GroupLoad;
import cradlewright.mechanics.joint.PlanePoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A check of bolted joints, one answer for each joint that holds a member. The bolts carry what the member's end carries, taken at
 * the middle of the joint. The record does not say whether they go through the web or the flange: both are worked out, the worse
 * one counts, and force square to the sheet is always taken as a pull.
 */
abstract class BoltCheck extends FrameCheck {

    /** Sizes that are tried. */
    private static final int TRIED = 3;
    private static final PlanePoint MIDDLE = new PlanePoint(0, 0);

    BoltCheck(CheckInfo info) {
        super(info);
    }

    /** Returns what else must be known, each with how to mend it. */
    abstract List<String> missing(JointFacts.Bolted joint, Bolts bolts, List<Bolts.Sheet> sheets);

    /** Returns how far one bolt is used by a force, for a joint of which nothing is missing. */
    abstract List<JointUse> uses(Bolts bolts, List<Bolts.Sheet> sheets, BoltForce force, JointEnd.Action action);

    /** Returns what to do when no larger bolt helps. */
    abstract String advice();

    @Override
    protected final boolean arises(DollyFacts dolly, Reader reader) {
        return dolly.joints().stream().anyMatch(JointFacts.Bolted.class::isInstance);
    }

    @Override
    protected final List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (JointFacts joint : standing.dolly().orElseThrow().joints()) {
            List<JointEnd> ends = JointEnd.of(joint.id(), members);
            if (joint instanceof JointFacts.Bolted bolted && !ends.isEmpty()) {
                findings.add(judge(bolted, ends, standing.dolly().orElseThrow(), subject, reader));
            }
        }
        return findings;
    }

    private Finding judge(JointFacts.Bolted joint, List<JointEnd> ends, DollyFacts dolly, Subject subject, Reader reader) {
        FindingBuilder finding = finding(subject, joint.id(), joint.name());
        Optional<Bolts> bolts = Bolts.of(joint, reader);
        if (bolts.isEmpty()) {
            return finding.cantSay("This joint is not fully described.", Bolts.missing(joint, reader));
        }
        List<Bolts.Sheet> sheets = Bolts.sheets(joint, ends, reader);
        List<String> missing = missing(joint, bolts.get(), sheets);
        if (!missing.isEmpty()) {
            return finding.cantSay("This joint is not fully described.", missing);
        }
        try {
            return answer(joint, bolts.get(), sheets, ends, dolly, reader, finding);
        } catch (IllegalArgumentException e) {
            // Bolts in one point or line cannot hold a turn about it, or a measure lies outside the rules: there is no number then.
            return finding.cantSay("The rules used here do not cover this joint under this load.", List.of("bolts of " + joint.name()
                    + " in two rows and two columns, sheet within the rules, or a hinge in the record of the member if it can turn there"));
        }
    }

    private Finding answer(JointFacts.Bolted joint, Bolts bolts, List<Bolts.Sheet> sheets, List<JointEnd> ends, DollyFacts dolly,
            Reader reader, FindingBuilder finding) {
        double margin = settings(reader).tightMargin();
        JointUse worst = worst(bolts, sheets, ends);
        Verdict verdict = verdict(worst, margin);
        finding.situation(worst.situation().words()).against(new Amount(worst.demand(), worst.dimension()),
                new Amount(worst.capacity(), worst.dimension()), "design resistance, " + worst.clause() + ", loads factored");
        finding.input("factor for prying", Amount.ratio(bolts.prying()), "common practice, no source");
        if (verdict == Verdict.STOP) {
            finding.remediesOr(larger(joint, bolts, sheets, ends, dolly, reader), advice());
        }
        return finding.say(verdict, switch (verdict) {
            case HOLDS -> "Strong enough; most used is " + worst.what() + ".";
            case TIGHT -> "Only just strong enough: " + worst.what() + ".";
            default -> "Not strong enough: " + worst.what() + ".";
        });
    }

    private List<Remedy> larger(JointFacts.Bolted joint, Bolts bolts, List<Bolts.Sheet> sheets, List<JointEnd> ends, DollyFacts dolly,
            Reader reader) {
        double margin = settings(reader).tightMargin();
        StockFacts.Bolt now = Bolts.bolt(joint, reader).orElseThrow();
        return bolts.larger().stream().filter(size -> verdict(worst(bolts.withSize(size), sheets, ends),
                margin).compareTo(Verdict.STOP) < 0)
                .limit(TRIED).map(size -> larger(size, now, joint, dolly, reader)).toList();
    }

    private static Remedy larger(BoltSize size, StockFacts.Bolt now, JointFacts.Bolted joint, DollyFacts dolly, Reader reader) {
        Optional<StockFacts.Bolt> stocked = reader.read(new IdsKey<>(StockFacts.Bolt.class)).stream()
                .flatMap(id -> reader.read(new FactKey<>(StockFacts.Bolt.class, id)).stream())
                .filter(bolt -> bolt.grade().equals(now.grade()) && bolt.threadsInShear() == now.threadsInShear()
                        && Bolts.size(bolt).filter(size::equals).isPresent()).findFirst();
        StockFacts.Bolt other = stocked.orElseGet(() -> new StockFacts.Bolt(now.id() + " " + size.name(), size.name(),
                Optional.of(size.name()),
                now.grade(), now.threadsInShear()));
        List<Fact> facts = new ArrayList<>(List.of(dolly.with(joint.withBolt(other.id()))));
        if (stocked.isEmpty()) {
            facts.add(other);
        }
        return Remedy.trial("Fit " + size.name() + " of the same strength class, with holes to suit" + (stocked.isEmpty()
                ? "; there is none in stock." : "."), "bolt", Trial.records(new Change(facts, Optional.empty())));
    }

    private static Verdict verdict(JointUse use, double margin) {
        return Verdict.of(use.demand(), use.capacity(), margin);
    }

    private JointUse worst(Bolts bolts, List<Bolts.Sheet> sheets, List<JointEnd> ends) {
        List<JointUse> uses = new ArrayList<>();
        for (JointEnd end : ends) {
            for (JointEnd.Action action : end.actions()) {
                for (GroupLoad load : List.of(throughWeb(action.action()), throughFlange(action.action()))) {
                    forces(bolts, load).forEach(force -> uses.addAll(uses(bolts, sheets, force, action)));
                }
            }
        }
        return uses.stream().max(Comparator.comparingDouble(JointUse::ratio)).orElseThrow();
    }

    /** About the middle, more tension than about the edge; about the edge where a straight row must hold a moment about its own line. */
    private static List<BoltForce> forces(Bolts bolts, GroupLoad load) {
        try {
            return bolts.group().forcesAboutCentroid(load, bolts.prying());
        } catch (IllegalArgumentException e) {
            return bolts.group().forcesAboutToe(load, bolts.outline().orElseThrow(() -> e), bolts.prying());
        }
    }

    /** Sheet along x and z of the member; square to it points -y. */
    private static GroupLoad throughWeb(ForceMoment action) {
        Vec3 f = action.force();
        Vec3 m = action.moment();
        return new GroupLoad(MIDDLE, f.x(), f.z(), Math.abs(f.y()), m.x(), m.z(), -m.y());
    }

    /** Sheet along x and y of the member; square to it points z. */
    private static GroupLoad throughFlange(ForceMoment action) {
        Vec3 f = action.force();
        Vec3 m = action.moment();
        return new GroupLoad(MIDDLE, f.x(), f.y(), Math.abs(f.z()), m.x(), m.y(), m.z());
    }
}
