package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.mechanics.joint.BoltForce;
import cradlewright.mechanics.joint.BoltResistance;
import cradlewright.mechanics.joint.JointFormulas;
import cradlewright.quantity.Dimension;
import java.util.List;

/** Are the bolts of each joint strong enough in shear, in tension and in both together? */
public final class BoltStrengthCheck extends BoltCheck {

    /** Creates the check. */
    public BoltStrengthCheck() {
        super(new CheckInfo("joint.bolts", "Are the bolts of each joint strong enough?",
                "EN 1993-1-8 Table 3.4; bolt group by the elastic method",
                Cautions.JOINTS, List.of("size, strength class, rows and columns of the bolts", "their distances",
                        "what stands on the dolly"),
                List.of(JointFormulas.SHEAR, JointFormulas.TENSION, JointFormulas.COMBINED, JointFormulas.GROUP_IN_PLANE,
                        JointFormulas.GROUP_CENTROID, JointFormulas.GROUP_TOE, JointFormulas.PRYING)));
    }

    @Override
    List<String> missing(JointFacts.Bolted joint, Bolts bolts, List<Bolts.Sheet> sheets) {
        return List.of();
    }

    @Override
    List<JointUse> uses(Bolts bolts, List<Bolts.Sheet> sheets, BoltForce force, JointEnd.Action action) {
        BoltResistance resistance = BoltResistance.of(bolts.size(), bolts.grade(), BoltResistance.GAMMA_M2);
        double shear = resistance.shear(bolts.plane());
        double tension = resistance.tension();
        return List.of(new JointUse("a bolt in shear", force.shear(), shear, Dimension.FORCE, "EN 1993-1-8 Table 3.4", action.situation()),
                new JointUse("a bolt in tension", force.tension(), tension, Dimension.FORCE, "EN 1993-1-8 Table 3.4", action.situation()),
                new JointUse("a bolt in shear and tension together",
                        BoltResistance.combined(force.shear(), shear, force.tension(), tension), 1,
                        Dimension.RATIO, "EN 1993-1-8 Table 3.4", action.situation()));
    }

    @Override
    String advice() {
        return "Use more bolts, set them farther apart, or take a higher strength class.";
    }
}
