package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Taken;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.mechanics.section.SectionProperties;
import cradlewright.mechanics.steel.BucklingCurve;
import cradlewright.mechanics.steel.CrossSectionCheck;
import cradlewright.mechanics.steel.FlexuralBuckling;
import cradlewright.mechanics.steel.MemberCheck;
import cradlewright.mechanics.steel.MemberForces;
import cradlewright.mechanics.steel.Steel;
import cradlewright.mechanics.steel.SteelFormulas;
import cradlewright.mechanics.steel.Utilisation;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Do pressed members stay straight, with the bending that goes along? The most unfavourable push and moments of a situation are put
 * together even when they stand at different cuts.
 */
public final class StrutCheck extends SteelMemberCheck {

    /** Share of the critical force up to which buckling need not be looked at, EN 1993-1-1 6.3.1.2(4) (from memory). */
    private static final double NEGLIGIBLE = 0.04;
    /** Buckling length of a leg over its length: its foot or top may sway. Textbook case of a free end, the safe side. */
    private static final double SWAYS = 2;

    /** Creates the check. */
    public StrutCheck() {
        super(new CheckInfo("dolly.strut", "Do the legs and other pressed members stay straight?",
                "EN 1993-1-1 6.3.1; with bending a sum derived for this project in place of 6.3.3", Cautions.STRUCTURE,
                List.of("section and steel of each member", "places of its ends", "what stands on the dolly"),
                List.of(SteelFormulas.FLEXURAL_BUCKLING, SteelFormulas.TORSIONAL_BUCKLING, SteelFormulas.MEMBER_SUM,
                        SteelFormulas.LATERAL_TORSIONAL_BUCKLING)));
    }

    @Override
    Optional<Used> worst(LoadedMember member, SectionShape shape, double yield) {
        SectionProperties section = shape.properties();
        double length = bucklingLength(member);
        FlexuralBuckling.Lengths lengths = new FlexuralBuckling.Lengths(length, length, length);
        double critical = FlexuralBuckling.criticalForce(section, lengths);
        List<Taken> pressed = member.taken().stream().filter(taken -> push(taken) > NEGLIGIBLE * critical).toList();
        if (pressed.isEmpty()) {
            return Optional.empty();
        }
        FlexuralBuckling buckling = FlexuralBuckling.of(section, yield, lengths, BucklingCurve.C, Steel.GAMMA_M1);
        CrossSectionCheck check = new CrossSectionCheck(section, yield, Steel.GAMMA_M1);
        double resistanceZ = Math.min(check.bendingResistanceZ(1), check.bendingResistanceZ(-1));
        double eulerY = FlexuralBuckling.eulerForce(section.iy(), length);
        double eulerZ = FlexuralBuckling.eulerForce(section.iz(), length);
        return member.worst(taken -> pressed.contains(taken)
                ? List.of(sum(taken, member, shape, yield, buckling, eulerY, resistanceZ, eulerZ))
                : List.<Utilisation>of());
    }

    private static Utilisation sum(Taken taken, LoadedMember member, SectionShape shape, double yield, FlexuralBuckling buckling,
            double eulerY,
            double resistanceZ, double eulerZ) {
        double my = largest(taken, MemberForces::my);
        double resistanceY = my == 0 ? new CrossSectionCheck(shape.properties(), yield, Steel.GAMMA_M1).bendingResistanceY(1)
                : Math.min(SidewaysCheck.resistance(member, shape, yield, 1).resistance(),
                        SidewaysCheck.resistance(member, shape, yield, -1).resistance());
        return MemberCheck.sum(push(taken), buckling, my, resistanceY, eulerY, largest(taken, MemberForces::mz), resistanceZ, eulerZ);
    }

    private static double push(Taken taken) {
        return Math.max(0, taken.forces().stream().mapToDouble(forces -> -forces.n()).max().orElse(0));
    }

    private static double largest(Taken taken, ToDoubleFunction<MemberForces> part) {
        return taken.forces().stream().mapToDouble(part).map(Math::abs).max().orElse(0);
    }

    private static double bucklingLength(LoadedMember member) {
        return member.upright() ? SWAYS * member.length() : Math.max(member.length(), member.unheld());
    }

    @Override
    void inputs(FindingBuilder finding, LoadedMember member, Used used) {
        finding.input("buckling length", Amount.length(bucklingLength(member)),
                member.upright() ? "twice the length, as one end may sway" : "longer one of its length and the length not held sideways");
    }

    @Override
    String words(Verdict verdict, Used used) {
        return switch (verdict) {
            case HOLDS -> "Stays straight under push and bending.";
            case TIGHT -> "Only just stays straight under push and bending.";
            default -> "Buckles under push and bending. Brace it, make it shorter, or make it thicker.";
        };
    }

    @Override
    String whyNotCovered() {
        return "for members that are pressed and bent they hold for channels, flats and tubes with walls that are not too thin";
    }

    @Override
    String instead() {
        return "Take a channel, flat or tube in its place, with a wall that is not too thin.";
    }
}
