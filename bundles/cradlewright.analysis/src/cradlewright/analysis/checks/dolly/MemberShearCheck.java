package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.mechanics.steel.CrossSectionCheck;
import cradlewright.mechanics.steel.Steel;
import cradlewright.mechanics.steel.SteelFormulas;
import java.util.List;
import java.util.Optional;

/** Is the web of each member strong enough in shear, with what twisting adds? */
public final class MemberShearCheck extends SteelMemberCheck {

    /** Creates the check. */
    public MemberShearCheck() {
        super(new CheckInfo("dolly.member-shear", "Are the webs of the members strong enough in shear?",
                "EN 1993-1-1 6.2.6 and 6.2.7, EN 1993-1-5 5", Cautions.STRUCTURE,
                List.of("section and steel of each member", "places of its ends", "what stands on the dolly"),
                List.of(SteelFormulas.SHEAR, SteelFormulas.SHEAR_BUCKLING, SteelFormulas.TORSION)));
    }

    @Override
    Optional<Used> worst(LoadedMember member, SectionShape shape, double yield) {
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), yield, Steel.GAMMA_M0);
        return member.worst(taken -> taken.forces().stream().flatMap(forces -> check.check(forces).stream())
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
    String notCovered() {
        return "a section that the rules cover: its wall is too thin for its size";
    }
}
