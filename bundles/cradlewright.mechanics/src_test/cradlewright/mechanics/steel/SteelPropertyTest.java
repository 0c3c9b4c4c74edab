package cradlewright.mechanics.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.section.FlatBar;
import cradlewright.mechanics.section.FoldedSection;
import cradlewright.mechanics.section.HollowSection;
import cradlewright.mechanics.section.SectionProperties;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class SteelPropertyTest {

    private static final double S235 = 235e6;

    @Property(seed = "51", tries = 60)
    void ratiosAreLinearInTheLoadWhileShearIsLow(@ForAll @DoubleRange(min = -40e3, max = 40e3) double n,
            @ForAll @DoubleRange(min = -1500, max = 1500) double my, @ForAll @DoubleRange(min = -200, max = 200) double mz,
            @ForAll @Scale(3) @DoubleRange(min = 0.1, max = 0.9) double factor) {
        CrossSectionCheck check = new CrossSectionCheck(FoldedSection.channel(0.1, 0.05, 0.004, 0.004).properties(), S235, 1);
        MemberForces forces = new MemberForces(n, 500, 5000, 3, my, mz);
        List<Utilisation> whole = check.check(forces);
        List<Utilisation> part = check.check(forces.times(factor));
        for (int i = 0; i < whole.size(); i++) {
            assertEquals(factor * whole.get(i).ratio(), part.get(i).ratio(), 1e-9 + 1e-9 * whole.get(i).ratio());
        }
    }

    @Property(seed = "52", tries = 60)
    void capacitiesFallWithPartialFactorAndShear(@ForAll @Scale(3) @DoubleRange(min = 1, max = 1.9) double gamma,
            @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.95) double shear) {
        SectionProperties p = HollowSection.rectangular(0.060, 0.040, 0.003);
        CrossSectionCheck low = new CrossSectionCheck(p, S235, gamma);
        CrossSectionCheck high = new CrossSectionCheck(p, S235, gamma + 0.1);
        assertTrue(low.axialResistance(-1) > high.axialResistance(-1));
        assertTrue(low.bendingResistanceY(1) > high.bendingResistanceY(1));
        assertTrue(low.shearResistanceZ() > high.shearResistanceZ());
        assertTrue(low.torsionResistance() > high.torsionResistance());
        double less = low.check(new MemberForces(0, 0, shear * low.shearResistanceZ(), 0, 1, 0)).get(1).capacity();
        double more = low.check(new MemberForces(0, 0, (shear + 0.05) * low.shearResistanceZ(), 0, 1, 0)).get(1).capacity();
        assertTrue(more <= less);
    }

    @Property(seed = "53", tries = 60)
    void bucklingFallsWithLengthAndPartialFactor(@ForAll @Scale(3) @DoubleRange(min = 0.3, max = 5) double length,
            @ForAll BucklingCurve curve) {
        SectionProperties p = FoldedSection.channel(0.1, 0.05, 0.004, 0.004).properties();
        FlexuralBuckling near = FlexuralBuckling.of(p, S235, lengths(length), curve, 1);
        FlexuralBuckling far = FlexuralBuckling.of(p, S235, lengths(1.1 * length), curve, 1);
        assertTrue(far.criticalForce() < near.criticalForce());
        assertTrue(far.resistance() <= near.resistance());
        assertTrue(near.resistance() < near.criticalForce());
        assertTrue(FlexuralBuckling.of(p, S235, lengths(length), curve, 1.1).resistance() < near.resistance());
        SectionProperties bar = FlatBar.of(0.1, 0.006);
        double shortBar = sideways(bar, length, curve).resistance();
        double longBar = sideways(bar, 1.1 * length, curve).resistance();
        assertTrue(longBar <= shortBar);
        double closedForm = Math.PI / length * Math.sqrt(210e9 * 0.1 * Math.pow(0.006, 3) / 12 * 81e9
                * 0.1 * Math.pow(0.006, 3) / 3 * (1 - 0.63 * 0.06));
        assertEquals(closedForm, sideways(bar, length, curve).criticalMoment(), 1e-5 * closedForm);
    }

    private static FlexuralBuckling.Lengths lengths(double length) {
        return new FlexuralBuckling.Lengths(length, length, length);
    }

    private static LateralTorsionalBuckling sideways(SectionProperties bar, double length, BucklingCurve curve) {
        return LateralTorsionalBuckling.of(bar, bar.elasticY(), S235, length, MomentShape.UNIFORM,
                LateralTorsionalBuckling.LoadHeight.SHEAR_CENTRE, curve, 1);
    }

    @Property(seed = "54", tries = 40)
    void effectiveIsNeverMoreThanGross(@ForAll @Scale(4) @DoubleRange(min = 0.03, max = 0.2) double width,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.4) double height,
            @ForAll @Scale(5) @DoubleRange(min = 0.0008, max = 0.004) double thickness) {
        SectionProperties p = FoldedSection.channel(height, width, thickness, thickness).properties();
        assertTrue(EffectiveSection.compression(p, S235).moments().area() <= p.area());
        for (double sign : new double[] {-1, 1}) {
            assertTrue(EffectiveSection.bending(p, sign, 0, S235).modulusY() <= p.elasticY() * (1 + 1e-9));
            assertTrue(EffectiveSection.bending(p, 0, sign, S235).modulusZ() <= p.elasticZ() * (1 + 1e-9));
            assertTrue(EffectiveSection.bending(p, sign, 0, 355e6).modulusY()
                    <= EffectiveSection.bending(p, sign, 0, S235).modulusY() * (1 + 1e-9));
        }
    }
}
