package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.mechanics.joint.BoltForce;
import cradlewright.mechanics.joint.BoltResistance;
import cradlewright.mechanics.joint.JointFormulas;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Do the heads and nuts stay out of the sheet when the bolts are pulled? */
public final class PunchingCheck extends BoltCheck {

    /** Creates the check. */
    public PunchingCheck() {
        super(new CheckInfo("joint.punching", "Do heads and nuts stay out of the sheet?", "EN 1993-1-8 Table 3.4, punching",
                Cautions.JOINTS,
                List.of("bolts as for their strength", "thickness and steel of plate and member"),
                List.of(JointFormulas.PUNCHING, JointFormulas.GROUP_CENTROID, JointFormulas.GROUP_TOE, JointFormulas.PRYING)));
    }

    @Override
    List<String> missing(JointFacts.Bolted joint, Bolts bolts, List<Bolts.Sheet> sheets) {
        List<String> missing = new ArrayList<>();
        sheets.forEach(sheet -> missing.addAll(sheet.missing()));
        return missing;
    }

    @Override
    List<JointUse> uses(Bolts bolts, List<Bolts.Sheet> sheets, BoltForce force, JointEnd.Action action) {
        return sheets.stream().map(sheet -> new JointUse("the head or nut in " + sheet.name(), force.tension(),
                BoltResistance.punching(bolts.size().meanHeadWidth(), sheet.thickness().orElseThrow(), sheet.ultimate().orElseThrow(),
                        BoltResistance.GAMMA_M2), Dimension.FORCE, "EN 1993-1-8 Table 3.4", action.situation())).toList();
    }

    @Override
    String advice() {
        return "Put a thick plate under heads and nuts, or set the bolts farther apart.";
    }
}
