package cradlewright.analysis.checks.tip;

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
import cradlewright.analysis.checks.FeetDown;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.castor.SwivelLead;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.TippingFormulas;
import java.util.Comparator;
import java.util.List;

/** Does the dolly with the car on it stand on the fall of the floor, its castors turned whichever way? */
public final class TipSlopeCheck extends DollyLoadCheck {

    /** What is asked and what there is at one end of the give or take, and the height of the balance point there; all in m. */
    private record End(double asked, double margin, double height) {
    }

    /** Creates the check. */
    public TipSlopeCheck() {
        super(new CheckInfo("tip.slope", "Does the dolly with the car on it stand on the fall of the floor?",
                "statics; castors in their worst position ISO 22915-16; times it must be held: common practice, no source",
                Cautions.TIPPING, List.of("fall of the floor", "place and lead of each castor",
                        "mass and balance point of car and dolly"),
                List.of(TippingFormulas.SLOPE, TippingFormulas.RATIO, CastorFormulas.SWIVEL_LEAD)));
    }

    @Override
    protected boolean arises(Standing standing, Reader reader) {
        return true;
    }

    @Override
    protected List<Finding> judge(DollyLoad load, Standing standing, Subject subject, Reader reader) {
        SettingsFacts settings = settings(reader);
        Fall fall = Fall.under(standing, settings);
        FindingBuilder finding = fall.note(finding(subject, load.dolly().id(), load.dolly().name()).situation("on the fall of the floor"));
        boolean feet = DollyLoad.onFeet(load.dolly());
        List<String> missing = feet ? List.of() : Leads.missing(load);
        if (!missing.isEmpty()) {
            return List.of(finding.cantSay("How far the castors swing inward is not known.", missing));
        }
        if (feet && !load.canStandOnFeet()) {
            return List.of(finding.cantSay("Where the feet stand is not known.",
                    List.of("the node of each foot, with its place")));
        }
        End end = worst(load, feet ? Leads.feet(load) : Leads.castors(load), settings.requiredRatio() * fall.slope());
        double asked = end.asked();
        double margin = end.margin();
        finding.input("height of the balance point, at its unfavourable end", Amount.length(end.height()),
                "car and dolly together, 19 times in 20");
        finding.atLeast(Amount.length(asked), Amount.length(Math.max(0, margin)),
                "least way of the balance point to a line over which it falls, against what the fall takes off it");
        Verdict verdict = verdict(asked, margin, settings);
        if (verdict != Verdict.HOLDS) {
            FeetDown.remedy("Put the feet down while it stands there.", standing).ifPresent(finding::remedy);
        }
        if (verdict == Verdict.STOP) {
            finding.remedy(Remedy.advice("Bring the load lower or more to the middle, or let it stand on level floor."));
        }
        return List.of(finding.say(verdict, verdict != Verdict.STOP ? "It stands on this fall."
                : margin <= asked / settings.requiredRatio() ? "It falls over." : "It is too close to falling over."));
    }

    /** Asks for every direction at the point of the give or take where the way that way is least and the height greatest. */
    private static End worst(DollyLoad load, List<SwivelLead.Castor> points, double slope) {
        return SwivelLead.tilts(points, load.balance()).stream()
                .map(tilt -> load.both().worst(0, tilt.direction().plus(Vec3.UP.times(slope))).point())
                .map(at -> new End(slope * Math.max(0, at.z()), SwivelLead.worst(points, at).margin(), at.z()))
                .min(Comparator.comparingDouble(end -> end.margin() - end.asked())).orElseThrow();
    }

    private static Verdict verdict(double asked, double margin, SettingsFacts settings) {
        return margin <= 0 ? Verdict.STOP : Verdict.of(asked, margin, settings.tightMargin());
    }
}
