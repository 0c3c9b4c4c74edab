package cradlewright.mechanics.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class SectionPropertyTest {

    private static FoldedSection zed(double height, double flange, double thickness) {
        return FoldedSection.zed(height, flange, thickness, thickness);
    }

    @Property(seed = "41", tries = 60)
    void turningChangesNoPrincipalValue(@ForAll @Scale(6) @DoubleRange(min = 0.06, max = 0.3) double height,
            @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.1) double flange,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.005) double thickness,
            @ForAll @Scale(6) @DoubleRange(min = -3, max = 3) double angle) {
        FoldedSection section = zed(height, flange, thickness);
        SectionProperties a = section.properties();
        SectionProperties b = section.turned(angle).properties();
        assertEquals(a.area(), b.area(), 1e-12 * a.area());
        assertEquals(a.moments().iMax(), b.moments().iMax(), 1e-9 * a.moments().iMax());
        assertEquals(a.moments().iMin(), b.moments().iMin(), 1e-9 * a.moments().iMax());
        assertEquals(a.torsion().constant(), b.torsion().constant(), 1e-12 * a.torsion().constant());
        assertEquals(a.torsion().warping(), b.torsion().warping(), 1e-9 * a.torsion().warping());
        SectionPoint moved = new SectionPoint(a.torsion().shearCentreY(), a.torsion().shearCentreZ()).turned(angle);
        assertEquals(moved.y(), b.torsion().shearCentreY(), 1e-9);
        assertEquals(moved.z(), b.torsion().shearCentreZ(), 1e-9);
        double turn = b.moments().principalAngle() - a.moments().principalAngle() - angle;
        assertEquals(0, Math.sin(turn), 1e-6, "the principal axes turn with the section");
    }

    @Property(seed = "42", tries = 40)
    void mirroringFlipsOnlyTheSides(@ForAll @Scale(6) @DoubleRange(min = 0.06, max = 0.3) double height,
            @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.1) double width,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.005) double thickness) {
        FoldedSection section = FoldedSection.angle(height, width, thickness, thickness);
        SectionProperties a = section.properties();
        SectionProperties b = section.mirrored().properties();
        assertEquals(a.iy(), b.iy(), 1e-10 * a.iy());
        assertEquals(a.iz(), b.iz(), 1e-10 * a.iz());
        assertEquals(a.moments().iyz(), -b.moments().iyz(), 1e-10 * a.iy());
        assertEquals(a.torsion().shearCentreY(), -b.torsion().shearCentreY(), 1e-10);
        assertEquals(a.left(), b.right(), 1e-12);
        assertEquals(a.elasticY(), b.elasticY(), 1e-9 * a.elasticY());
    }

    @Property(seed = "43", tries = 60)
    void plasticIsNeverBelowElasticAndShapesScale(@ForAll @Scale(6) @DoubleRange(min = 0.06, max = 0.3) double height,
            @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.1) double width,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.005) double thickness,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 3) double factor) {
        SectionProperties a = FoldedSection.channel(height, width, thickness, thickness).properties();
        SectionProperties b = FoldedSection.channel(factor * height, factor * width, factor * thickness, factor * thickness)
                .properties();
        assertTrue(a.plasticY() >= a.elasticY());
        assertTrue(a.plasticZ() >= a.elasticZ());
        assertEquals(a.iy() * Math.pow(factor, 4), b.iy(), 1e-9 * b.iy());
        assertEquals(a.plasticZ() * Math.pow(factor, 3), b.plasticZ(), 1e-7 * b.plasticZ());
        assertEquals(a.torsion().warping() * Math.pow(factor, 6), b.torsion().warping(), 1e-9 * b.torsion().warping());
        assertEquals(a.shearZ().deflection() * factor * factor, b.shearZ().deflection(), 1e-9 * b.shearZ().deflection());
        assertTrue(a.shearZ().elastic() <= a.area() && a.shearZ().deflection() <= a.area());
    }

    @Property(seed = "44", tries = 40)
    void closedTubeIsFarStifferInTorsionAndMeetsBredt(@ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double height,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double width) {
        double t = 0.0005;
        SectionProperties box = HollowSection.rectangular(height, width, t);
        double enclosed = (height - t) * (width - t);
        double bredt = 4 * enclosed * enclosed * t / (2 * (height + width - 2 * t));
        assertEquals(bredt, box.torsion().constant(), 0.02 * bredt);
        assertEquals(2 * enclosed * t, box.torsion().modulus(), 0.03 * box.torsion().modulus());
    }
}
