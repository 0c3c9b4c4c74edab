package cradlewright.analysis.checks.gear;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Is a dolly or a piece of gear in two places at a time? Under two cars on one day, or, of what has one place to rest on (a stand, an
 * arm), under two places of one car; a strap may go round below a shell and hold it at both sides.
 */
public final class GearTwiceCheck extends VisitCheck {

    private static final Remedy OTHERS = Remedy.advice("Take another one for one of the two, or move the days apart.");

    /** Creates the check. */
    public GearTwiceCheck() {
        super(new CheckInfo("gear.twice", "Is everything that carries it in one place only?", "common practice, no source",
                Cautions.LIFTING, List.of("first and last day of each visit", "what rests on what at each visit"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Map<String, Fact> inUse = new LinkedHashMap<>();
        standing.dolly().ifPresent(dolly -> inUse.put(dolly.id(), dolly));
        standing.lift().ifPresent(lift -> inUse.put(lift.id(), lift));
        standing.hoist().ifPresent(hoist -> inUse.put(hoist.id(), hoist));
        Map<Fact, List<String>> single = new LinkedHashMap<>();
        for (Support support : standing.supports()) {
            if (support.holder() instanceof Holder.InStrap in) {
                inUse.put(in.strap().id(), in.strap());
            } else if (support.holder() instanceof Holder.OnStand on) {
                inUse.put(on.stand().id(), on.stand());
            }
            single(support).ifPresent(one -> single.computeIfAbsent(one, key -> new ArrayList<>()).add(support.name()));
        }
        GearUse own = GearUse.of(standing.car(), standing.visit(), reader.read(new TodayKey()));
        Map<String, List<GearUse>> uses = reader.read(new GearUsesKey());
        List<Finding> findings = new ArrayList<>();
        inUse.values().forEach(gear -> findings.add(judge(gear, own, uses.getOrDefault(gear.id(), List.of()), subject)));
        single.forEach((one, places) -> twiceHere(one, places, subject).ifPresent(findings::add));
        return findings;
    }

    /** Returns what has room for one place of the car only. */
    private static Optional<Fact> single(Support support) {
        if (support.holder() instanceof Holder.OnArm on) {
            return Optional.of(on.arm());
        }
        return support.holder() instanceof Holder.OnStand on && on.stand() instanceof GearFacts.Stand stand ? Optional.of(stand)
                : Optional.empty();
    }

    private Optional<Finding> twiceHere(Fact one, List<String> places, Subject subject) {
        return places.size() < 2 ? Optional.empty() : Optional.of(finding(subject, one.id(), one.name())
                .remedy(Remedy.advice("Name what is below each place; where nothing is there, take the place away."))
                .say(Verdict.STOP, "It cannot be in more than one place: " + String.join(", ", places) + "."));
    }

    private Finding judge(Fact gear, GearUse own, List<GearUse> uses, Subject subject) {
        Map<GearUse.Meeting, List<GearUse>> others = uses.stream().collect(Collectors.groupingBy(own::meeting));
        FindingBuilder finding = finding(subject, gear.id(), gear.name());
        List<GearUse> meet = others.getOrDefault(GearUse.Meeting.MEET, List.of());
        if (!meet.isEmpty()) {
            return finding.remedy(OTHERS).say(Verdict.STOP, "It cannot be in two places on one day: " + words(own, meet) + ".");
        }
        List<GearUse> perhaps = others.getOrDefault(GearUse.Meeting.PERHAPS, List.of());
        if (!perhaps.isEmpty()) {
            return finding.remedy(OTHERS).cantSay("Whether it is in two places on one day is not known: " + words(own, perhaps) + ".",
                    perhaps.stream().map(own::missing).distinct().toList());
        }
        List<GearUse> handed = others.getOrDefault(GearUse.Meeting.HANDED_OVER, List.of());
        if (!handed.isEmpty()) {
            return finding.say(Verdict.TIGHT, "It is handed over on the day: one must be done before the other begins: "
                    + words(own, handed) + ".");
        }
        return finding.say(Verdict.HOLDS, "It is nowhere else on these days.");
    }

    private static String words(GearUse own, List<GearUse> others) {
        return own.words() + "; " + others.stream().map(GearUse::words).collect(Collectors.joining("; "));
    }
}
