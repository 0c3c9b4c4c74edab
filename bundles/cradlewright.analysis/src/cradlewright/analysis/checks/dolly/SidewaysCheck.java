package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.mechanics.steel.BucklingCurve;
import cradlewright.mechanics.steel.CrossSectionCheck;
import cradlewright.mechanics.steel.LateralTorsionalBuckling;
import cradlewright.mechanics.steel.MemberForces;
import cradlewright.mechanics.steel.MomentShape;
import cradlewright.mechanics.steel.Steel;
import cradlewright.mechanics.steel.SteelFormulas;
import java.util.List;
import java.util.Optional;

/** Does a bent member stay upright, or does its pressed edge slip away sideways? */
public final class SidewaysCheck extends SteelMemberCheck {

    /** Creates the check. */
    public SidewaysCheck() {
        super(new CheckInfo("dolly.sideways", "Does each bent member stay upright, or does it give way sideways?",
                "EN 1993-1-1 6.3.2.2, critical moment of NCCI SN003", Cautions.STRUCTURE,
                List.of("section and steel of each member", "length that is not held sideways", "what stands on the dolly"),
                List.of(SteelFormulas.LATERAL_TORSIONAL_BUCKLING, SteelFormulas.CRITICAL_MOMENT, SteelFormulas.TOP_EDGE_LOAD)));
    }

    @Override
    Optional<Used> worst(LoadedMember member, SectionShape shape, double yield) {
        if (member.taken().stream().flatMap(t -> t.forces().stream()).allMatch(f -> f.my() == 0)) {
            return Optional.empty();
        }
        LateralTorsionalBuckling sagging = resistance(member, shape, yield, -1);
        LateralTorsionalBuckling hogging = resistance(member, shape, yield, 1);
        LateralTorsionalBuckling weaker = sagging.resistance() < hogging.resistance() ? sagging : hogging;
        return member.worst(taken -> taken.forces().stream().map(MemberForces::my).map(weaker::against).toList());
    }

    /** Returns the resistance to bending by a moment of that sign: even moment and load on the top edge, both on the safe side. */
    static LateralTorsionalBuckling resistance(LoadedMember member, SectionShape shape, double yield, double sign) {
        double modulus = new CrossSectionCheck(shape.properties(), yield, Steel.GAMMA_M0).modulusY(sign, true);
        return LateralTorsionalBuckling.of(shape.properties(), modulus, yield, member.unheld(), MomentShape.UNIFORM,
                LateralTorsionalBuckling.LoadHeight.TOP_EDGE, BucklingCurve.D, Steel.GAMMA_M1);
    }

    @Override
    void inputs(FindingBuilder finding, LoadedMember member, Used used) {
        finding.input("length not held sideways", Amount.length(member.unheld()),
                member.facts().unbraced().isPresent() ? "as stated" : "from end to end of the member, as nobody stated it");
    }

    @Override
    String words(Verdict verdict, Used used) {
        return switch (verdict) {
            case HOLDS -> "Stays upright under its load.";
            case TIGHT -> "Only just stays upright: its pressed edge is close to giving way sideways.";
            default -> "Its pressed edge gives way sideways. Hold it sideways at closer places, or make it thicker.";
        };
    }

    @Override
    String whyNotCovered() {
        return "the formula for giving way sideways holds for channels, flats and tubes only";
    }

    @Override
    String instead() {
        return "Take a channel, flat or tube in its place.";
    }
}
