package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.mechanics.section.TorsionProperties;
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
 * Nodes lie at the middle of the area of a section, loads act where their supports stand: an open section whose shear centre lies
 * elsewhere is twisted by them, and the frame says where that twist is held. What warping at the ends is held by is not known, so the
 * worst of free and stopped ends counts.
 */
public final class MemberStrengthCheck extends SteelMemberCheck {

    /** Distance of the shear centre that is rounding, m. */
    private static final double NEAR = 1e-9;

    /** Creates the check. */
    public MemberStrengthCheck() {
        super(new CheckInfo("dolly.member", "Is each member of the dolly strong enough in bending, push, pull and twisting?",
                "EN 1993-1-1 6.2, EN 1993-1-5 for thin walls",
                Cautions.STRUCTURE, List.of("section and steel of each member", "places of its ends", "what stands on the dolly"),
                List.of(SteelFormulas.AXIAL, SteelFormulas.BENDING, SteelFormulas.SHEAR_REDUCTION, SteelFormulas.TORSION,
                        SteelFormulas.WARPING_TORSION, SteelFormulas.LINEAR_SUM, SteelFormulas.YIELD_CRITERION, SteelFormulas.CLASS_LIMITS,
                        SteelFormulas.EFFECTIVE_WIDTH)));
    }

    @Override
    Optional<Used> worst(LoadedMember member, SectionShape shape, double yield) {
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), yield, Steel.GAMMA_M0);
        return member.worst(taken -> taken.forces(shape).stream().flatMap(forces -> butForShear(check.check(forces))).toList());
    }

    @Override
    void inputs(FindingBuilder finding, LoadedMember member, Used used) {
        SectionShape shape = member.shape().orElseThrow();
        TorsionProperties torsion = shape.properties().torsion();
        if (!twistedByItsLoads(member, used)) {
            return;
        }
        finding.input("from the middle of its section to the line over which a load would not twist it", Amount.length(beside(shape)),
                "from the shape of the section, which is open");
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), member.yield().orElseThrow(), Steel.GAMMA_M0);
        member.taken().stream().filter(taken -> taken.situation().equals(used.situation()))
                .flatMap(taken -> taken.forces(shape).stream()).filter(forces -> check.check(forces).contains(used.use())).findFirst()
                .filter(forces -> forces.b() != 0).ifPresent(forces -> finding.shown("of this stress, from twisting",
                        Amount.stress(Math.abs(forces.b()) / torsion.warpingModulus()),
                        "its walls bend sideways as it twists; ends free to bulge or stopped, whichever is worse"));
    }

    @Override
    void joints(FindingBuilder finding, LoadedMember member, DollyFacts dolly, Used used) {
        long open = OpenEnd.of(dolly).stream().filter(end -> end.member().equals(member.facts())).count();
        if (open > 0 && twistedByItsLoads(member, used)) {
            finding.input("ends taken as held against twist, though nobody entered a joint there", Amount.ratio(open),
                    "enter the joint: a loose one lets the end turn, and the twist goes on to the next");
        }
    }

    /** Tells whether loads over the middle of its area twist it, and that is part of what uses it most. */
    private static boolean twistedByItsLoads(LoadedMember member, Used used) {
        return beside(member.shape().orElseThrow()) > NEAR && used.use().formulaId().equals(SteelFormulas.YIELD_CRITERION.id());
    }

    /** Returns how far the shear centre is from the middle of the area, m. */
    private static double beside(SectionShape shape) {
        TorsionProperties torsion = shape.properties().torsion();
        return Math.hypot(torsion.shearCentreY() - shape.properties().moments().centroidY(),
                torsion.shearCentreZ() - shape.properties().moments().centroidZ());
    }

    @Override
    String otherwise(LoadedMember member, Used used) {
        boolean open = member.shape().orElseThrow().properties().torsion().warps();
        return open && used.use().formulaId().equals(SteelFormulas.YIELD_CRITERION.id())
                ? "Close " + member.facts().name() + " with a lid sheet all along, take a tube or two channels back to back in its"
                        + " place, or put a cross member beside the support." : super.otherwise(member, used);
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
