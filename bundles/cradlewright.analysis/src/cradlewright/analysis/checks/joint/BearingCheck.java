package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.mechanics.joint.Bearing;
import cradlewright.mechanics.joint.BoltForce;
import cradlewright.mechanics.joint.BoltResistance;
import cradlewright.mechanics.joint.HoleKind;
import cradlewright.mechanics.joint.HolePosition;
import cradlewright.mechanics.joint.JointFormulas;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Does the sheet around the bolts stand up to their push? The force of a bolt may point anywhere, so the weaker of along and across
 * the member counts.
 */
public final class BearingCheck extends BoltCheck {

    /** Creates the check. */
    public BearingCheck() {
        super(new CheckInfo("joint.bearing", "Does the sheet around the bolts stand up to their push?",
                "EN 1993-1-8 Table 3.4 and 3.6.1(10), thin sheet EN 1993-1-3 Table 8.4", Cautions.JOINTS,
                List.of("bolts as for their strength", "distances to end and edge", "thickness and steel of plate and member",
                        "shape of the holes"),
                List.of(JointFormulas.BEARING, JointFormulas.BEARING_THIN_SHEET, JointFormulas.SINGLE_LAP, JointFormulas.GROUP_IN_PLANE)));
    }

    @Override
    List<String> missing(JointFacts.Bolted joint, Bolts bolts, List<Bolts.Sheet> sheets) {
        List<String> missing = new ArrayList<>();
        sheets.forEach(sheet -> missing.addAll(sheet.missing()));
        if (bolts.end().isEmpty()) {
            missing.add("distance from the bolts of " + joint.name() + " to the end of the sheet");
        }
        if (bolts.edge().isEmpty()) {
            missing.add("distance from the bolts of " + joint.name() + " to the edge of the sheet");
        }
        if (bolts.holes() == JointFacts.Holes.SLOT) {
            missing.add("round holes in " + joint.name() + ": along a slot a bolt slides and nothing is counted");
        }
        return missing;
    }

    @Override
    List<JointUse> uses(Bolts bolts, List<Bolts.Sheet> sheets, BoltForce force, JointEnd.Action action) {
        HolePosition along = bolts.position().orElseThrow();
        HolePosition across = new HolePosition(along.edge(), along.gauge(), along.end(), along.pitch());
        List<JointUse> uses = new ArrayList<>();
        for (Bolts.Sheet sheet : sheets) {
            Bearing bearing = bearing(bolts, sheet, along);
            double table = Math.min(bearing.resistance(), bearing(bolts, sheet, across).resistance());
            // One row in a single lap turns its bolts over: its limit has neither end nor hole in it and may lie below the table.
            boolean oneRow = bolts.rows() == 1 || bolts.columns() == 1;
            boolean lap = oneRow && bearing.singleLapLimit() < table;
            uses.add(new JointUse("the hole in " + sheet.name(), force.shear(), lap ? bearing.singleLapLimit() : table, Dimension.FORCE,
                    lap ? "EN 1993-1-8 3.6.1(10), one row in a single lap" : bearing.thinSheet() ? "EN 1993-1-3 Table 8.4"
                            : "EN 1993-1-8 Table 3.4", action.situation()));
        }
        return uses;
    }

    private static Bearing bearing(Bolts bolts, Bolts.Sheet sheet, HolePosition position) {
        HoleKind hole = bolts.holes() == JointFacts.Holes.OVERSIZE ? HoleKind.OVERSIZE : HoleKind.NORMAL;
        return new Bearing(bolts.size().diameter(), bolts.hole(), sheet.thickness().orElseThrow(),
                sheet.ultimate().orElseThrow(),
                bolts.grade().ultimateStrength(), position, hole, BoltResistance.GAMMA_M2);
    }

    @Override
    String advice() {
        return "Use more bolts, keep them farther from end and edge, or take a thicker plate.";
    }
}
