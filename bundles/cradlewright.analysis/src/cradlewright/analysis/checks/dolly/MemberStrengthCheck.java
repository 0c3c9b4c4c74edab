package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.mechanics.steel.CrossSectionCheck;
import cradlewright.mechanics.steel.Steel;
import cradlewright.mechanics.steel.SteelFormulas;
import cradlewright.mechanics.steel.Utilisation;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Is the steel of each member strong enough against push, pull, bending and twisting at its most used cut? Shear has a check of its own,
 * {@link MemberShearCheck}; where it is beyond its limit nothing is left for bending, and that check alone answers.
 * The load of an open section is taken to go in at its web, so that
 * it bends without twisting of its own.
 */
public final class MemberStrengthCheck extends SteelMemberCheck {

    /** Creates the check. */
    public MemberStrengthCheck() {
        super(new CheckInfo("dolly.member", "Is each member of the dolly strong enough in bending, push, pull and twisting?",
                "EN 1993-1-1 6.2, EN 1993-1-5 for thin walls",
                Cautions.STRUCTURE, List.of("section and steel of each member", "places of its ends", "what stands on the dolly"),
                List.of(SteelFormulas.AXIAL, SteelFormulas.BENDING, SteelFormulas.SHEAR_REDUCTION, SteelFormulas.TORSION,
                        SteelFormulas.LINEAR_SUM, SteelFormulas.YIELD_CRITERION, SteelFormulas.CLASS_LIMITS,
                        SteelFormulas.EFFECTIVE_WIDTH)));
    }

    @Override
    Optional<Used> worst(LoadedMember member, SectionShape shape, double yield) {
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), yield, Steel.GAMMA_M0);
        return member.worst(taken -> taken.forces().stream().flatMap(forces -> butForShear(check.check(forces))).toList());
    }

    private static Stream<Utilisation> butForShear(List<Utilisation> uses) {
        Predicate<Utilisation> shear = use -> use.formulaId().equals(SteelFormulas.SHEAR.id());
        return uses.stream().anyMatch(shear.and(use -> !use.holds())) ? Stream.empty() : uses.stream().filter(shear.negate());
    }

    @Override
    String words(Verdict verdict, Used used) {
        String what = UseWords.of(used.use());
        return switch (verdict) {
            case HOLDS -> "Strong enough; what uses it most is " + what + ".";
            case TIGHT -> "Only just strong enough for " + what + ".";
            default -> "Not strong enough for " + what + ".";
        };
    }
}
