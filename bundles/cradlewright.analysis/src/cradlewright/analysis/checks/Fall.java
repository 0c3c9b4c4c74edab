package cradlewright.analysis.checks;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import java.util.Optional;

/**
 * The fall of the floor that a visit is asked about: that of its place, or what the shop has settled when nobody measured there.
 *
 * @param slope rise over run at its upper end
 * @param measured whether the file of the place states it
 */
public record Fall(double slope, boolean measured) {

    /** Returns the fall under a visit. */
    public static Fall under(Standing standing, SettingsFacts settings) {
        Optional<Value> stated = standing.place().flatMap(PlaceFacts::fall);
        return new Fall(stated.map(fall -> Math.max(0, fall.high())).orElse(settings.slope()), stated.isPresent());
    }

    /** Returns the angle, rad. */
    public double angle() {
        return Math.atan(slope);
    }

    /** Notes it in a finding. */
    public FindingBuilder note(FindingBuilder finding) {
        return finding.input("fall of the floor", Amount.ratio(slope), measured ? "stated for this place"
                : "not stated for this place: settled by the shop, else common practice, no source");
    }
}
