package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.DollyLoadCheck;
import cradlewright.analysis.checks.Fall;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.castor.PushGuidance;
import cradlewright.mechanics.castor.Range;
import cradlewright.mechanics.castor.Rolling;
import java.util.List;

/** How many people does it take to push it there? */
public final class CastorPushCheck extends DollyLoadCheck {

    /** As many as find room at a dolly without standing in each other's way: common practice, no source. */
    private static final int MOST_PEOPLE = 4;

    /** Creates the check. */
    public CastorPushCheck() {
        super(new CheckInfo("castor.push", "How many people does it take to push it?",
                "push and pull page of a national health and safety authority (guidance L23); largest slope ASR A1.8 table 1",
                Cautions.CASTORS, List.of("tread and wheel diameter of each castor type", "fall of the floor",
                        "mass of car and dolly"),
                List.of(CastorFormulas.ROLLING, CastorFormulas.LEVER_ARM, CastorFormulas.SLOPE, CastorFormulas.PUSH_GUIDANCE)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return true;
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        Fall fall = Fall.under(standing, settings(reader));
        FindingBuilder finding = finding(subject, load.dolly().id(), load.dolly().name()).situation("pushed by hand");
        List<String> missing = Treads.missing(load);
        if (!missing.isEmpty()) {
            return List.of(finding.cantSay("How hard it rolls cannot be told.", missing));
        }
        boolean soft = standing.place().filter(place -> place.outdoors() || place.kind() == PlaceFacts.Kind.YARD).isPresent();
        Range push = Rolling.upSlope(load.weightHigh(), fall.angle(), Treads.coefficient(load, soft));
        // The high end of the span describes starting; what keeps it rolling lies towards the low end.
        int people = PushGuidance.WOMEN.people(push.high(), push.low());
        fall.note(finding.against(Amount.ratio(people), Amount.ratio(MOST_PEOPLE),
                "people, against as many as find room at a dolly"))
                .input("push, swivels trailing, at least", Amount.force(push.low()), "tables disagree by a factor of several")
                .input("push to start, swivels trailing, at most", Amount.force(push.high()),
                        "tables disagree by a factor of several")
                .input("push to start, swivels turned across, at most", Amount.force(Rolling.turnedStart(push).high()),
                        "common practice, no source")
                .input("people, if all push as strong men do", Amount.ratio(PushGuidance.MEN.people(push.high(), push.low())),
                        "guidance L23: a filter, not a limit");
        boolean steep = fall.slope() > Rolling.LARGEST_SLOPE;
        if (steep) {
            finding.remedy(Remedy.advice("Use a winch, or another way: workplace rules allow no such slope for moving by hand."));
        }
        if (people > MOST_PEOPLE) {
            finding.remedy(Remedy.advice("Take parts off, fit larger or harder wheels, or pull it with a tug."));
        }
        return List.of(finding.say(steep || people > MOST_PEOPLE ? Verdict.TIGHT : Verdict.HOLDS,
                steep ? "The slope is steep for pushing by hand."
                        : people > MOST_PEOPLE ? "It may take more people than find room at it." : "A few people can push it."));
    }
}
