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
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Does what is carried stand over what carries it? The level distance between the place on the car and the middle of the fixture, or of
 * the body mount of the chassis, below it, at the far end of what both places may be off by. Asked only where both places are written
 * down: of a stand nobody writes down where it is, and of an arm it follows from where its pad is set.
 */
public final class SupportBesideCheck extends VisitCheck {

    /** Half of the smaller side of a pad or plate of which nobody wrote down how large it is, m; common practice, no source. */
    private static final double UNKNOWN_HALF = 0.025;

    /** Where the middle of what carries is, in the axes of the carrier, and what that place is uncertain by, m. */
    private record Below(Vec3 at, double u) {
    }

    /** Creates the check. */
    public SupportBesideCheck() {
        super(new CheckInfo("support.beside", "Does it stand over what carries it?",
                "common practice, no source", Cautions.SUPPORTS,
                List.of("where each mount or lift point is on the car", "where each fixture is on the dolly",
                        "where the car is on the dolly", "length and width of each pad"),
                List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            if (support.holdsUp()) {
                below(support, standing.dolly()).ifPresent(below -> findings.add(judge(support, below, subject)));
            }
        }
        return findings;
    }

    private static Optional<Below> below(Support support, Optional<DollyFacts> dolly) {
        if (support.holder() instanceof Holder.OnFixture on) {
            FixtureFacts fixture = on.fixture();
            double u = fixture.on().flatMap(FixtureFacts.Station::distance).map(Value::u).orElse(0.0);
            return dolly.flatMap(d -> d.base(fixture)).map(base -> new Below(base.plus(fixture.offset()), u));
        }
        if (support.holder() instanceof Holder.OnChassis on) {
            MountFacts mount = on.mount();
            boolean same = support.mount().filter(above -> above.id().equals(mount.id())).isPresent();
            // Both places are in the axes of the car: the step to the carrier turns both alike and leaves the distance.
            return mount.position().filter(spot -> !same)
                    .map(spot -> new Below(support.inCarrier().plus(spot.at().minus(support.onCar())), spot.u()));
        }
        return Optional.empty();
    }

    private Finding judge(Support support, Below below, Subject subject) {
        Optional<Double> known = support.pad().flatMap(SupportBesideCheck::half);
        double half = known.orElse(UNKNOWN_HALF);
        Vec3 across = support.inCarrier().minus(below.at());
        double apart = Math.hypot(across.x(), across.y());
        double give = Value.COVERAGE * Math.hypot(support.placeUncertainty(), below.u());
        double far = apart + give;
        FindingBuilder finding = finding(subject, support.objectId(), support.name())
                .against(Amount.length(far), Amount.length(half), known.isPresent() ? "half the smaller side of the pad"
                        : "half of a pad or plate whose size nobody wrote down, common practice")
                .input("on " + support.holder().name() + ", beside its middle by", Amount.length(apart), "level distance of the two places")
                .input("give or take of both places", Amount.length(give), "19 times in 20")
                .input("without worry up to", Amount.length(half / 2), "common practice, no source");
        if (far <= half / 2) {
            return finding.say(Verdict.HOLDS, "It stands over what carries it.");
        }
        finding.remedy(Remedy.advice("Look which place is wrong: the one on the car, that of what carries it, or where the car"
                + " as a whole is put. Where all are right, move what carries until it is below."));
        if (far <= half) {
            return finding.say(Verdict.TIGHT, "It stands on what carries it, but beside the middle.");
        }
        if (apart <= half) {
            finding.remedy(Remedy.advice("Measure both places again, with less give or take."));
            return finding.say(Verdict.STOP, "It may stand beside what is to carry it: the two places are not known that well.");
        }
        return finding.say(Verdict.STOP, "It stands beside what is to carry it.");
    }

    /** Returns half the smaller side of a pad at the small end of what it may be, m; nothing where a side is missing. */
    private static Optional<Double> half(StockFacts.Pad pad) {
        return pad.length().flatMap(length -> pad.width().map(width -> Math.min(length.low(), width.low())))
                .filter(side -> side > 0).map(side -> side / 2);
    }
}
