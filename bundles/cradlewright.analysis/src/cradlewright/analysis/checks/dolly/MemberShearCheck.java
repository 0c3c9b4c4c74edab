package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.mechanics.steel.CrossSectionCheck;
import cradlewright.mechanics.steel.MemberForces;
import cradlewright.mechanics.steel.Steel;
import cradlewright.mechanics.steel.SteelFormulas;
import java.util.List;
import java.util.Optional;

/** Is the web of each member strong enough in shear, with what twisting adds? */
public final class MemberShearCheck extends SteelMemberCheck {

    /** Creates the check. */
    public MemberShearCheck() {
        super(new CheckInfo("dolly.member-shear", "Are the webs of the members strong enough in shear, with what twisting adds?",
                "EN 1993-1-1 6.2.6 and 6.2.7, EN 1993-1-5 5", Cautions.STRUCTURE,
                List.of("section and steel of each member", "places of its ends", "what stands on the dolly"),
                List.of(SteelFormulas.SHEAR, SteelFormulas.SHEAR_BUCKLING, SteelFormulas.TORSION)));
    }

    @Override
    Optional<Used> worst(LoadedMember member, SectionShape shape, double yield) {
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), yield, Steel.GAMMA_M0);
        return member.worst(taken -> taken.forces(shape).stream().flatMap(forces -> check.check(forces).stream())
                .filter(use -> use.formulaId().equals(SteelFormulas.SHEAR.id())).toList());
    }

    @Override
    String words(Verdict verdict, Used used) {
        String what = UseWords.of(used.use());
        return switch (verdict) {
            case HOLDS -> "Strong enough in shear; most used is " + what + ".";
            case TIGHT -> "Only just strong enough for " + what + ".";
            default -> "Not strong enough for " + what + ".";
        };
    }

    @Override
    void inputs(FindingBuilder finding, LoadedMember member, Used used) {
        double force = force(member, used);
        if (used.use().demand() > force * (1 + 1e-9)) {
            finding.shown("of this the force itself", Amount.force(force), "from the frame")
                    .shown("twist alone uses up, of the shear stress allowed",
                    Amount.ratio((used.use().demand() - force) / used.use().capacity()), "its shear stress over the one allowed");
        }
    }

    private static double force(LoadedMember member, Used used) {
        SectionShape shape = member.shape().orElseThrow();
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), member.yield().orElseThrow(), Steel.GAMMA_M0);
        MemberForces cut = member.taken().stream().filter(taken -> taken.situation().equals(used.situation()))
                .flatMap(taken -> taken.forces(shape).stream()).filter(forces -> check.check(forces).contains(used.use())).findFirst()
                .orElseThrow();
        return Math.abs(used.use().what().endsWith("y") ? cut.vy() : cut.vz());
    }
}
