package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.dolly.SectionKey;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.MemberLoad;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.load.SituationsKey;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A check of what the members of a dolly carry under factored loads. It says CAN'T SAY once when the loads are not known; a
 * situation in which the car falls over is left to the checks of tipping.
 */
public abstract class FrameCheck extends VisitCheck {

    /** Share of a member's length above which its rise makes it upright: steeper than 45 degrees. */
    private static final double UPRIGHT = Math.sqrt(0.5);

    /** Creates a check that says this about itself. */
    protected FrameCheck(CheckInfo info) {
        super(info);
    }

    /** Tells whether the question arises for a dolly that has members. */
    protected boolean arises(DollyFacts dolly, Reader reader) {
        return true;
    }

    /** Answers the question; each member holds the situations that have an answer, at least one of them. */
    protected abstract List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader);

    @Override
    protected final List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<DollyFacts> dolly = standing.dolly().filter(d -> !d.members().isEmpty()).filter(d -> arises(d, reader));
        if (dolly.isEmpty()) {
            return List.of();
        }
        List<Loads> all = new ArrayList<>();
        for (Situation situation : reader.read(new SituationsKey(subject.ownerId(), standing.visit().id()))) {
            all.add(reader.read(new LoadsKey(subject.ownerId(), standing.visit().id(), situation, true)));
        }
        List<Loads> found = all.stream().filter(Loads::found).toList();
        List<Finding> findings = found.isEmpty() ? List.of() : judge(standing, members(dolly.get(), found, reader), subject, reader);
        Optional<Loads> open = all.stream().filter(l -> l.outcome() == Loads.Outcome.MISSING || l.outcome() == Loads.Outcome.BROKE_OFF)
                .findFirst();
        if (open.isEmpty()) {
            return findings;
        }
        // What stops in a situation that has its answer stops whatever the others may say.
        List<Finding> certain = new ArrayList<>(findings.stream().filter(finding -> finding.verdict() == Verdict.STOP).toList());
        certain.add(finding(subject, dolly.get().id(), dolly.get().name()).situation(open.get().situation().words())
                .cantSay("What each member of the dolly carries is not known.", Arrays.asList(open.get().reason().split("; "))));
        return certain;
    }

    private static List<LoadedMember> members(DollyFacts dolly, List<Loads> found, Reader reader) {
        Map<String, List<LoadedMember.Taken>> taken = new HashMap<>();
        Map<String, List<String>> lines = MembersInLine.of(dolly);
        for (Loads loads : found) {
            Map<String, MemberLoad> byId = new HashMap<>();
            loads.members().forEach(load -> byId.put(load.memberId(), load));
            loads.members().forEach(load -> taken.computeIfAbsent(load.memberId(), id -> new ArrayList<>())
                    .add(new LoadedMember.Taken(loads.situation(), load,
                            lines.getOrDefault(load.memberId(), List.of(load.memberId())).stream().map(byId::get).toList())));
        }
        return dolly.members().stream()
                .flatMap(member -> member(member, dolly, taken.getOrDefault(member.id(), List.of()), reader).stream()).toList();
    }

    private static Optional<LoadedMember> member(MemberFacts member, DollyFacts dolly, List<LoadedMember.Taken> taken, Reader reader) {
        Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
        Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
        if (from.isEmpty() || to.isEmpty() || taken.isEmpty()) {
            return Optional.empty();
        }
        Vec3 along = to.get().minus(from.get());
        return Optional.of(new LoadedMember(member, along.norm(), Math.abs(along.z()) > UPRIGHT * along.norm(),
                member.sectionId().flatMap(id -> reader.read(new SectionKey(id))),
                member.steelId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Steel.class, id))), taken));
    }
}
