package cradlewright.mechanics.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.section.AreaMoments;
import cradlewright.mechanics.section.FlatBar;
import cradlewright.mechanics.section.FoldedSection;
import cradlewright.mechanics.section.HollowSection;
import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.section.SectionPoint;
import cradlewright.mechanics.section.SectionProperties;
import cradlewright.mechanics.section.TeeSection;
import cradlewright.mechanics.verify.CheckValues;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SteelTest {

    private static final CheckValues VALUES = CheckValues.load("steel");
    private static final double S235 = 235e6;
    private static final double S355 = 355e6;

    private static SectionProperties channel() {
        return FoldedSection.channel(0.100, 0.050, 0.004, 0.004).properties();
    }

    private static SectionProperties sharpChannel() {
        return FoldedSection.channel(0.100, 0.050, 0.004, 0.004).sharpCorners().properties();
    }

    private static Plate flat(Plate.Kind kind, double width, double thickness) {
        return Plate.straight(kind, new SectionPoint(0, 0), new SectionPoint(width, 0), thickness);
    }

    @Test
    void gradesMeetTheirStandards() {
        for (SteelGrade grade : List.of(SteelGrade.S235, SteelGrade.S275, SteelGrade.S355)) {
            for (int mm : new int[] {4, 20, 50}) {
                VALUES.check("grade." + grade + ".fy" + mm, grade.yieldStrength(mm * 1e-3));
            }
            VALUES.check("grade." + grade + ".fu2", grade.tensileStrength(0.002));
            VALUES.check("grade." + grade + ".fu4", grade.tensileStrength(0.004));
            assertThrows(IllegalArgumentException.class, () -> grade.yieldStrength(0.0633));
            assertEquals(grade.yieldStrength(0.050), grade.yieldStrength(0.063), "63 mm is still in the table");
            assertTrue(grade.yieldStrength(0.016) > grade.yieldStrength(0.0161), "16 mm still belongs to the first step");
            assertTrue(grade.yieldStrength(0.040) > grade.yieldStrength(0.0401));
            assertTrue(grade.tensileStrength(0.0029) >= grade.tensileStrength(0.003));
        }
        for (SteelGrade grade : List.of(SteelGrade.S315MC, SteelGrade.S355MC, SteelGrade.S420MC, SteelGrade.S460MC,
                SteelGrade.S500MC, SteelGrade.S700MC)) {
            VALUES.check("grade." + grade + ".fy", grade.yieldStrength(0.004));
            VALUES.check("grade." + grade + ".fu", grade.tensileStrength(0.004));
        }
        VALUES.check("grade.S700MC.fy10", SteelGrade.S700MC.yieldStrength(0.010));
        assertEquals(700e6, SteelGrade.S700MC.yieldStrength(0.008));
        assertEquals(680e6, SteelGrade.S700MC.yieldStrength(0.00805), "less from 8 mm on");
        for (SteelGrade grade : List.of(SteelGrade.S315MC, SteelGrade.S355MC, SteelGrade.S420MC, SteelGrade.S460MC)) {
            assertEquals(grade.yieldStrength(0.004), grade.yieldStrength(0.020));
            assertThrows(IllegalArgumentException.class, () -> grade.yieldStrength(0.0201));
        }
        for (SteelGrade grade : List.of(SteelGrade.S500MC, SteelGrade.S700MC)) {
            assertEquals(grade.yieldStrength(0.010), grade.yieldStrength(0.016));
            assertThrows(IllegalArgumentException.class, () -> grade.yieldStrength(0.0161));
        }
        assertThrows(IllegalArgumentException.class, () -> SteelGrade.S235.yieldStrength(0));
        assertEquals(0.5, SteelGrade.S355MC.mandrelOverThickness(), "EN 10149-2");
        assertEquals(0.5, SteelGrade.S420MC.mandrelOverThickness(), "EN 10149-2");
        assertEquals(1, SteelGrade.S460MC.mandrelOverThickness(), "EN 10149-2");
        assertEquals(1, SteelGrade.S500MC.mandrelOverThickness(), "EN 10149-2");
        assertEquals(2, SteelGrade.S700MC.mandrelOverThickness(), "EN 10149-2 (from memory)");
    }

    @Test
    void coldFormingGainMeetsItsRule() {
        VALUES.check("C18k5.fya", ColdForming.averageYield(S235, 360e6, ColdForming.PRESS_BRAKE, 2, 0.004, 768e-6));
        VALUES.check("C18.cap", ColdForming.averageYield(S235, 360e6, ColdForming.PRESS_BRAKE, 20, 0.004, 768e-6));
        VALUES.check("C18.k7", ColdForming.averageYield(S235, 360e6, ColdForming.ROLL_FORMED, 2, 0.004, 768e-6));
    }

    @Test
    void bendingShearAndYieldMeetTheCode() {
        SectionProperties p = sharpChannel();
        VALUES.check("C12.wel", p.elasticY());
        VALUES.check("C12.mel", p.elasticY() * S235 / Steel.GAMMA_M0);
        CrossSectionCheck check = new CrossSectionCheck(p, S235, 1);
        VALUES.check("C12.vpl", check.shearResistanceZ());
        assertEquals(SectionClass.CLASS_3, check.bendingClassY(1), "sharp flange c/t is 48/4 = 12");
        VALUES.check("C12.mel", check.bendingResistanceY(1));
        VALUES.check("C13.mises", YieldCriterion.vonMises(120e6, 0, 50e6));
        VALUES.check("C13.ratio", YieldCriterion.value(120e6, 0, 50e6, S235));
        double centre = 60e6;
        double radius = Math.hypot(60e6, 50e6);
        double byPrincipals = Math.sqrt(Math.pow(centre + radius, 2) + Math.pow(centre - radius, 2)
                - (centre + radius) * (centre - radius));
        assertEquals(byPrincipals, YieldCriterion.vonMises(120e6, 0, 50e6), 1, "principal stresses of the circle of stress");
        assertEquals(100e6, YieldCriterion.vonMises(100e6, 100e6, 0), 1e-3, "equal stress both ways");
        VALUES.check("C15", CrossSectionCheck.shearReduction(0.7));
        assertEquals(0, CrossSectionCheck.shearReduction(0.5));
        assertEquals(1.6e-5, CrossSectionCheck.shearReduction(0.502), 1e-12, "it starts at one half");
        assertEquals(1, CrossSectionCheck.shearReduction(3));
    }

    @Test
    void classLimitsMeetTheTable() {
        VALUES.check("C14.eps", SectionClass.epsilon(S355));
        SectionClass[] classes = {SectionClass.CLASS_1, SectionClass.CLASS_2, SectionClass.CLASS_3};
        for (SectionClass c : classes) {
            VALUES.check("C14.compression" + c.number(),
                    SectionClass.limit(Plate.Kind.INTERNAL, PlateStress.uniform(), S355, c));
            VALUES.check("C14.bending" + c.number(),
                    SectionClass.limit(Plate.Kind.INTERNAL, new PlateStress(1, -1), S355, c));
            VALUES.check("C14.outstand" + c.number(),
                    SectionClass.limit(Plate.Kind.OUTSTAND, PlateStress.uniform(), S355, c));
        }
        assertThrows(IllegalArgumentException.class,
                () -> SectionClass.limit(Plate.Kind.INTERNAL, PlateStress.uniform(), S355, SectionClass.CLASS_4));
        assertEquals(42 / 0.505, SectionClass.limit(Plate.Kind.INTERNAL, new PlateStress(1, -0.5), S235, SectionClass.CLASS_3),
                1e-9, "Table 5.2: 42/(0.67 + 0.33 psi)");
        assertEquals(62 * 2.005 * Math.sqrt(1.005),
                SectionClass.limit(Plate.Kind.INTERNAL, new PlateStress(1, -1.005), S235, SectionClass.CLASS_3), 1e-9,
                "Table 5.2: below psi -1");
        assertEquals(62 * 3 * Math.sqrt(2),
                SectionClass.limit(Plate.Kind.INTERNAL, new PlateStress(1, -2), S235, SectionClass.CLASS_3), 1e-9,
                "Table 5.2: 62 (1 - psi) sqrt(-psi)");
        assertEquals(21 * Math.sqrt(0.57),
                SectionClass.limit(Plate.Kind.OUTSTAND, new PlateStress(0, 1), S235, SectionClass.CLASS_3), 1e-9,
                "Table 5.2: 21 sqrt(k_sigma)");
        List<Plate> plates = channel().plates();
        VALUES.check("C14c.web", plates.get(1).slenderness());
        VALUES.check("C14c.flange", plates.get(0).slenderness());
        VALUES.check("C14c.class235", new CrossSectionCheck(channel(), S235, 1).compressionClass().number());
        VALUES.check("C14c.class355", new CrossSectionCheck(channel(), S355, 1).compressionClass().number());
        for (int d : new int[] {50, 60, 80, 95}) {
            SectionProperties tube = HollowSection.circular(d * 0.002, 0.002);
            VALUES.check("tube.d" + d, SectionClass.of(tube, -1, 0, 0, S235).number());
        }
        for (int i = 0; i < 3; i++) {
            assertEquals(new double[] {50, 70, 90}[i],
                    SectionClass.limit(Plate.Kind.TUBE, PlateStress.uniform(), S235, classes[i]), 1e-12, "Table 5.2 sheet 3");
        }
        assertEquals(SectionClass.CLASS_1, SectionClass.of(HollowSection.circular(0.190, 0.002), 1, 0, 0, S235), "tension");
        assertEquals(SectionClass.CLASS_3, SectionClass.of(FlatBar.of(0.1, 0.006), 0, 1, 0, S235), "bars stay elastic");
        assertEquals(SectionClass.CLASS_1, SectionClass.of(channel(), 1, 0, 0, 700e6), "no local buckling in tension");
    }

    @Test
    void platesMeetTheEffectiveWidthRule() {
        Plate wide = flat(Plate.Kind.INTERNAL, 0.200, 0.002);
        VALUES.check("C19.lambda", PlateBuckling.slenderness(wide, PlateStress.uniform(), S235));
        VALUES.check("C19.rho", PlateBuckling.reduction(wide, PlateStress.uniform(), S235));
        Plate outstand = flat(Plate.Kind.OUTSTAND, 0.050, 0.002);
        VALUES.check("C20.lambda", PlateBuckling.slenderness(outstand, PlateStress.uniform(), S235));
        VALUES.check("C20.rho", PlateBuckling.reduction(outstand, PlateStress.uniform(), S235));
        VALUES.check("ksigma.i1", PlateBuckling.factor(Plate.Kind.INTERNAL, PlateStress.uniform()));
        VALUES.check("ksigma.i0", PlateBuckling.factor(Plate.Kind.INTERNAL, new PlateStress(1, 0)));
        VALUES.check("ksigma.im1", PlateBuckling.factor(Plate.Kind.INTERNAL, new PlateStress(-1, 1)));
        VALUES.check("ksigma.t1", PlateBuckling.factor(Plate.Kind.OUTSTAND, PlateStress.uniform()));
        VALUES.check("ksigma.t0", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(0, 1)));
        VALUES.check("ksigma.tm1", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(-1, 1)));
        VALUES.check("ksigma.tm3", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(-3, 1)));
        VALUES.check("ksigma.r1", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, 1 - 1e-9)));
        VALUES.check("ksigma.r0", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, 0)));
        VALUES.check("ksigma.rm1", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, -1)));
        assertEquals(5.98 * 9, PlateBuckling.factor(Plate.Kind.INTERNAL, new PlateStress(1, -2)), 1e-9, "Table 4.1");
        assertEquals(5.98 * 2.005 * 2.005, PlateBuckling.factor(Plate.Kind.INTERNAL, new PlateStress(1, -1.005)), 1e-9,
                "Table 4.1, below psi -1");
        assertEquals(5.98 * 16, PlateBuckling.factor(Plate.Kind.INTERNAL, new PlateStress(1, -4)), 1e-9, "psi stops at -3");
        assertEquals(23.8, PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, -2)), 1e-9, "psi stops at -1");
        VALUES.check("ksigma.rm05", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, -0.5)));
        VALUES.check("ksigma.r02", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, 0.2)));
        assertEquals(1, PlateBuckling.reduction(Plate.Kind.INTERNAL, 0.673, 1), "whole up to 0.673");
        assertEquals((0.675 - 0.22) / (0.675 * 0.675), PlateBuckling.reduction(Plate.Kind.INTERNAL, 0.675, 1), 1e-12);
        assertEquals((0.8745 - 0.11) / (0.8745 * 0.8745), PlateBuckling.reduction(Plate.Kind.INTERNAL, 0.8745, -1), 1e-12);
        assertEquals(1, PlateBuckling.reduction(Plate.Kind.OUTSTAND, 0.748, 1), "whole up to 0.748");
        assertTrue(PlateBuckling.reduction(Plate.Kind.OUTSTAND, 0.752, 1) < 1);
        assertEquals((1.2 - 0.055 * 2) / 1.44, PlateBuckling.reduction(Plate.Kind.INTERNAL, 1.2, -1), 1e-12);
        assertEquals(1, PlateBuckling.reduction(outstand, new PlateStress(-1, -2), S235), "tension");
        assertThrows(IllegalArgumentException.class,
                () -> PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(-1, -1)));
    }

    @Test
    void shearBucklingStartsAtTheCodeLimit() {
        assertEquals(1, PlateBuckling.shearReduction(flat(Plate.Kind.INTERNAL, 0.0717, 0.001), S235), "about 72 eps");
        assertEquals(0.83 * 86.4 / 120, PlateBuckling.shearReduction(flat(Plate.Kind.INTERNAL, 0.120, 0.001), S235), 1e-12,
                "EN 1993-1-5 Table 5.1 (from memory)");
        SectionProperties thin = FoldedSection.channel(0.200, 0.050, 0.0015, 0.0015).properties();
        double flatWeb = 0.200 - 4 * 0.0015;
        assertEquals(0.1985 * 0.0015 * S235 / Math.sqrt(3) * 0.83 * 86.4 * 0.0015 / flatWeb,
                new CrossSectionCheck(thin, S235, 1).shearResistanceZ(), 1e-3);
        assertEquals(2 * 0.04925 * 0.0015 * S235 / Math.sqrt(3), new CrossSectionCheck(thin, S235, 1).shearResistanceY(), 1e-3,
                "the web does not lower the resistance of the flanges");
    }

    @Test
    void effectiveBoxMeetsTheHandSum() {
        SectionProperties box = HollowSection.rectangular(0.206, 0.206, 0.002);
        double lost = (1 - VALUES.expected("C19.rho")) * 0.200 * 0.002;
        EffectiveSection compression = EffectiveSection.compression(box, S235);
        assertEquals(box.area() - 4 * lost, compression.moments().area(), 1e-9);
        assertEquals(0, compression.shiftZ(), 1e-12);
        double gap = lost / 0.002;
        double second = box.iy() - 2 * (lost * Math.pow(0.102, 2) + gap * Math.pow(0.002, 3) / 12)
                - 2 * 0.002 * Math.pow(gap, 3) / 12;
        assertEquals(second, compression.moments().iy(), 1e-6 * second, "strips in the middle of each wall");

        // wide low box: only the compressed wall loses width, the webs stay whole
        SectionProperties low = HollowSection.rectangular(0.060, 0.206, 0.002);
        EffectiveSection bent = EffectiveSection.bending(low, 1, 0, S235);
        assertEquals(1, bent.strips().size());
        double area = low.area() - lost;
        double shift = lost * 0.029 / area;
        double iy = low.iy() - lost * 0.029 * 0.029 - gap * Math.pow(0.002, 3) / 12 - area * shift * shift;
        assertEquals(shift, bent.shiftZ(), 1e-8, "My pulls the top, so the bottom buckles and the axis rises");
        assertEquals(iy, bent.moments().iy(), 1e-6 * iy);
        assertEquals(iy / (0.030 + shift), bent.modulusY(), 1e-5 * bent.modulusY());
        assertEquals(bent.modulusY(), EffectiveSection.bending(low, -1, 0, S235).modulusY(), 1e-12);
    }

    @Test
    void effectiveWebFollowsTheTable() {
        SectionProperties tall = HollowSection.rectangular(0.400, 0.060, 0.002);
        EffectiveSection bent = EffectiveSection.bending(tall, 1, 0, S235);
        assertEquals(2, bent.strips().size(), "both webs");
        AreaMoments m = bent.moments();
        double low = m.stress(new SectionPoint(0, -0.197), 0, 1, 0);
        double high = m.stress(new SectionPoint(0, 0.197), 0, 1, 0);
        double psi = high / low;
        double k = psi > -1 ? 7.81 - 6.29 * psi + 9.78 * psi * psi : 5.98 * (1 - psi) * (1 - psi);
        double lambda = 197 / (28.4 * Math.sqrt(k));
        double rho = (lambda - 0.055 * (3 + psi)) / (lambda * lambda);
        double zone = 0.394 / (1 - psi);
        SectionPoint a = bent.strips().get(0).from();
        SectionPoint b = bent.strips().get(0).to();
        assertEquals(-0.197 + 0.4 * rho * zone, Math.min(a.z(), b.z()), 1e-7, "0.4 b_eff stays at the compressed edge");
        assertEquals((1 - rho) * zone, Math.abs(a.z() - b.z()), 1e-7);

        SectionProperties wide = FoldedSection.channel(0.100, 0.120, 0.002, 0.002).properties();
        EffectiveSection tips = EffectiveSection.bending(wide, 0, 1, S235);
        SectionPoint from = tips.strips().get(0).from();
        SectionPoint to = tips.strips().get(0).to();
        assertEquals(0.120, Math.max(from.y(), to.y()), 1e-9, "Mz presses the right side: the tips are lost");
        EffectiveSection roots = EffectiveSection.bending(wide, 0, -1, S235);
        assertTrue(roots.modulusZ() > tips.modulusZ());
        EffectiveSection pressed = EffectiveSection.compression(wide, S235);
        assertTrue(pressed.shiftY() < 0, "losing the tips moves the centroid towards the web");
        double flange = 0.116 / 0.002 / (28.4 * Math.sqrt(0.43));
        double flangeLost = (1 - (flange - 0.188) / (flange * flange)) * 0.116 * 0.002;
        double web = 46 / (28.4 * 2);
        double webLost = (1 - (web - 0.22) / (web * web)) * 0.092 * 0.002;
        assertEquals(wide.area() - 2 * flangeLost - webLost, pressed.moments().area(), 1e-8);
        double centre = wide.moments().centroidY();
        double tipsOff = 2 * flangeLost * (0.120 - flangeLost / 0.002 / 2 - centre);
        assertEquals(-(tipsOff + webLost * (0.001 - centre)) / (wide.area() - 2 * flangeLost - webLost), pressed.shiftY(), 1e-6,
                "first moments of the strips left out");
    }

    @Test
    void unevenInternalPartKeepsMoreAtTheLessPressedEdge() {
        // hat under moment about z: the top wall goes from pressed to pulled; under both axes psi lies between 0 and 1
        SectionProperties hat = FoldedSection.hat(0.080, 0.202, 0.280, 0.001, 0.001).properties();
        EffectiveSection bent = EffectiveSection.bending(hat, -1, 0.2, S235);
        AreaMoments m = bent.moments();
        Plate top = hat.plates().get(2);
        double left = -m.stress(top.root().y() < 0 ? top.root() : top.tip(), 0, -1, 0.2);
        double right = -m.stress(top.root().y() < 0 ? top.tip() : top.root(), 0, -1, 0.2);
        assertTrue(right > left && left > 0);
        double psi = left / right;
        double lambda = top.slenderness() / (28.4 * Math.sqrt(8.2 / (1.05 + psi)));
        double kept = (lambda - 0.055 * (3 + psi)) / (lambda * lambda) * top.width();
        double rightEnd = bent.strips().stream().filter(s -> s.from().z() > 0.079 && s.to().z() > 0.079)
                .mapToDouble(s -> Math.max(s.from().y(), s.to().y())).max().orElseThrow();
        assertEquals(Math.max(top.root().y(), top.tip().y()) - 2 / (5 - psi) * kept, rightEnd, 1e-7, "2/(5 - psi) b_eff");
    }

    @Test
    void columnsMeetTheWorkedExamples() {
        double critical = FlexuralBuckling.eulerForce(50730000e-12, 4);
        FlexuralBuckling column = FlexuralBuckling.of(7370e-6, S355, critical, BucklingCurve.A, 1);
        VALUES.check("column.chi", column.chi());
        VALUES.check("column.nbrd", column.resistance());
        FlexuralBuckling second = FlexuralBuckling.of(149e-4, S235, 5657.4e3, BucklingCurve.C, 1);
        VALUES.check("column2.lambda", second.slenderness());
        VALUES.check("column2.phi", BucklingCurve.B.phi(0.655));
        VALUES.check("column2.chi", BucklingCurve.B.chi(0.655));
        for (BucklingCurve curve : BucklingCurve.values()) {
            String name = curve.name().toLowerCase(Locale.ROOT);
            VALUES.check("chi." + name + ".0.5", curve.chi(0.5));
            VALUES.check("chi." + name + ".1", curve.chi(1));
            VALUES.check("chi." + name + ".2", curve.chi(2));
            VALUES.check("chitable." + name, curve.chi(1));
            assertEquals(1, curve.chi(0.2));
            assertTrue(curve.chi(0.21) < 1);
        }
        SectionProperties tube = HollowSection.circular(0.2445, 0.010);
        FlexuralBuckling whole = FlexuralBuckling.of(tube, S355, new FlexuralBuckling.Lengths(4, 4, 4), BucklingCurve.A, 1);
        assertEquals(column.resistance(), whole.resistance(), 1e-3 * column.resistance());
        assertEquals(1630e3 / whole.resistance(), whole.against(1630e3).ratio(), 1e-12);
    }

    @Test
    void torsionalBucklingMeetsTheClosedForm() {
        SectionProperties p = channel();
        double length = 1.5;
        double dy = p.torsion().shearCentreY() - p.moments().centroidY();
        double polar = (p.iy() + p.iz()) / p.area() + dy * dy;
        double ny = Math.PI * Math.PI * 210e9 * p.iy() / (length * length);
        double nz = Math.PI * Math.PI * 210e9 * p.iz() / (length * length);
        double nt = (81e9 * p.torsion().constant() + Math.PI * Math.PI * 210e9 * p.torsion().warping() / (length * length))
                / polar;
        double beta = 1 - dy * dy / polar;
        double joint = (ny + nt - Math.sqrt((ny + nt) * (ny + nt) - 4 * beta * ny * nt)) / (2 * beta);
        FlexuralBuckling.Lengths lengths = new FlexuralBuckling.Lengths(length, length, length);
        assertEquals(Math.min(nz, joint), FlexuralBuckling.criticalForce(p, lengths), 1e-6 * nz,
                "quadratic for one axis of symmetry, EN 1993-1-3 eq. 6.35 (from memory)");
        // held closely about z the joint mode remains
        double held = FlexuralBuckling.criticalForce(p, new FlexuralBuckling.Lengths(length, 0.1, length));
        assertEquals(joint, held, 1e-6 * joint);
        assertTrue(joint < nt && joint < ny);
        FoldedSection angle = FoldedSection.angle(0.060, 0.040, 0.004, 0.004);
        double straight = FlexuralBuckling.criticalForce(angle.properties(), lengths);
        assertEquals(straight, FlexuralBuckling.criticalForce(angle.turned(0.7).properties(), lengths), 1e-7 * straight);
        double principal = angle.properties().moments().principalAngle();
        assertEquals(straight, FlexuralBuckling.criticalForce(angle.turned(-principal).properties(), lengths), 1e-6 * straight,
                "drawn in principal axes");
    }

    @Test
    void sidewaysBucklingMeetsTheExamples() {
        double g80 = LateralTorsionalBuckling.criticalMoment(12180e-8, 513.9e-8, 13.35e-6, 5, 1.127, 0, Steel.G);
        VALUES.check("C16.published", g80);
        VALUES.check("C16.g81", g80);
        SectionProperties bar = FlatBar.of(0.100, 0.006);
        LateralTorsionalBuckling ltb = LateralTorsionalBuckling.of(bar, bar.elasticY(), S235, 1.2, MomentShape.UNIFORM,
                LateralTorsionalBuckling.LoadHeight.SHEAR_CENTRE, BucklingCurve.D, 1);
        VALUES.check("C17.mcr", ltb.criticalMoment());
        VALUES.check("C17.mel", new CrossSectionCheck(bar, S235, 1).bendingResistanceY(1));
        VALUES.check("C17.lambda", ltb.slenderness());
        VALUES.check("C17.phi", ltb.phi());
        VALUES.check("C17.chi", ltb.chi());
        VALUES.check("C17.mbrd", ltb.resistance());
        VALUES.check("c1.uniform", MomentShape.UNIFORM.c1());
        VALUES.check("c1.udl", MomentShape.SPREAD_LOAD.c1());
        VALUES.check("c1.midpoint", MomentShape.MIDDLE_LOAD.c1());
        VALUES.check("c1.one-end", MomentShape.ONE_END.c1());
        VALUES.check("c2.udl", MomentShape.SPREAD_LOAD.c2());
        VALUES.check("c2.midpoint", MomentShape.MIDDLE_LOAD.c2());
        VALUES.check("SX001.mcr", LateralTorsionalBuckling.criticalMoment(788.1e-8, 28.15e-8, 199_100e-12, 5.7, 1.127, 0.454 * 0.165,
                80.77e9));
        LateralTorsionalBuckling top = LateralTorsionalBuckling.of(bar, bar.elasticY(), S235, 1.2, MomentShape.UNIFORM,
                LateralTorsionalBuckling.LoadHeight.TOP_EDGE, BucklingCurve.D, 1);
        VALUES.check("C17.top", top.criticalMoment());
        SectionProperties lying = FlatBar.of(0.006, 0.100);
        assertEquals(1, LateralTorsionalBuckling.of(lying, lying.elasticY(), S235, 1.2, MomentShape.UNIFORM,
                LateralTorsionalBuckling.LoadHeight.SHEAR_CENTRE, BucklingCurve.D, 1).chi(), "lying flat it cannot");
        SectionProperties zed = FoldedSection.zed(0.120, 0.050, 0.003, 0.003).properties();
        SectionProperties tee = TeeSection.of(0.100, 0.006, 0.080, 0.006);
        for (SectionProperties p : List.of(zed, tee)) {
            assertThrows(IllegalArgumentException.class, () -> LateralTorsionalBuckling.of(p, p.elasticY(), S235, 1,
                    MomentShape.UNIFORM, LateralTorsionalBuckling.LoadHeight.SHEAR_CENTRE, BucklingCurve.D, 1));
        }
        assertEquals(0.5, ltb.against(-ltb.resistance() / 2).ratio(), 1e-12);
    }

    @Test
    void crossSectionChecksAddUp() {
        SectionProperties p = channel();
        CrossSectionCheck check = new CrossSectionCheck(p, S235, 1.0);
        MemberForces forces = new MemberForces(-30e3, 0, 10e3, 0, 1500, -100);
        List<Utilisation> all = check.check(forces);
        double sum = 30e3 / (p.area() * S235) + 1500 / (p.elasticY() * S235) + 100 / (p.elasticZ() * S235);
        assertEquals(sum, find(all, SteelFormulas.LINEAR_SUM).ratio(), 1e-9);
        assertEquals(sum, check.governing(forces).ratio(), 1e-9);
        assertEquals(7, all.size(), "no torque, no yield criterion");
        MemberForces sheared = new MemberForces(0, 0, 0.7 * check.shearResistanceZ(), 0, 1500, 0);
        Utilisation bending = check.check(sheared).get(1);
        assertEquals(check.bendingResistanceY(1) * 0.84, bending.capacity(), 1e-6, "rho 0.16 off");
        MemberForces twisted = new MemberForces(5e3, 1e3, 2e3, 15, 800, 50);
        double tau = 1e3 / p.shearY().elastic() + 2e3 / p.shearZ().elastic() + 15 * 0.004 / p.torsion().constant();
        double normal = p.outline().stream().mapToDouble(q -> Math.abs(p.moments().stress(q, 5e3, 800, 50))).max().orElseThrow();
        Utilisation yield = find(check.check(twisted), SteelFormulas.YIELD_CRITERION);
        assertEquals(Math.sqrt(normal * normal + 3 * tau * tau) / S235, yield.ratio(), 1e-9);
        double share = 2e3 / check.shearResistanceZ() + 15 * 0.004 / p.torsion().constant() / (S235 / Math.sqrt(3));
        assertEquals(share, check.check(twisted).get(4).ratio(), 1e-9, "torsion takes its share of the shear resistance");
        Utilisation torsion = find(check.check(twisted), SteelFormulas.TORSION);
        assertEquals(15 * 0.004 / p.torsion().constant() * Math.sqrt(3) / S235, torsion.ratio(), 1e-9);
        SectionProperties stocky = HollowSection.rectangular(0.060, 0.040, 0.003);
        CrossSectionCheck plastic = new CrossSectionCheck(stocky, S235, 1.1);
        assertEquals(stocky.plasticY() * S235 / 1.1, plastic.bendingResistanceY(1), 1e-6, "class 1: plastic");
        assertEquals(stocky.plasticZ() * S235 / 1.1, plastic.bendingResistanceZ(-1), 1e-6);
        assertEquals(stocky.area() * S235 / 1.1, plastic.axialResistance(-1), 1e-6);
        assertTrue(plastic.governing(new MemberForces(0, 0, 0, 0, 100, 0)).holds());
        assertFalse(new Utilisation("a.b", "x", 1.005, 1, "N", "y").holds(), "no allowance above 1");
        MemberForces full = new MemberForces(0, 0, 1.5 * plastic.shearResistanceZ(), 0, 1, 0);
        assertEquals(0.01 * plastic.bendingResistanceY(1), plastic.check(full).get(1).capacity(), 1e-6,
                "one hundredth is left, so that a ratio remains");
        assertFalse(plastic.governing(new MemberForces(0, 0, 0, 0, 1e5, 0)).holds());
    }

    @Test
    void slenderSectionCarriesTheShiftOfItsCentroid() {
        SectionProperties wide = FoldedSection.channel(0.100, 0.120, 0.002, 0.002).properties();
        CrossSectionCheck check = new CrossSectionCheck(wide, S235, 1);
        EffectiveSection effective = EffectiveSection.compression(wide, S235);
        List<Utilisation> all = check.check(new MemberForces(-10e3, 0, 0, 0, 0, 0));
        assertEquals(10e3 / (effective.moments().area() * S235), all.get(0).ratio(), 1e-9);
        double worst = Math.min(EffectiveSection.bending(wide, 0, 1, S235).modulusZ(),
                EffectiveSection.bending(wide, 0, -1, S235).modulusZ());
        assertEquals(10e3 * Math.abs(effective.shiftY()) / (worst * S235), all.get(2).ratio(), 1e-9);
        assertEquals(0, all.get(1).ratio(), 1e-12);
        MemberForces twisted = new MemberForces(-10e3, 0, 0, 1, 0, 0);
        double normal = (all.get(0).ratio() + all.get(2).ratio()) * S235;
        double tau = 1 / wide.torsion().modulus();
        assertEquals(Math.sqrt(normal * normal + 3 * tau * tau), check.yieldCriterion(twisted).demand(), 1);
        assertThrows(IllegalArgumentException.class, () -> new CrossSectionCheck(HollowSection.circular(0.200, 0.001), S235, 1)
                .axialResistance(-1));
    }

    @Test
    void enlargedMomentMeetsFiniteDifferences() {
        // v'' + (N/EI) v = -M/EI on a simple span, by a tridiagonal solve; largest moment M + N v in the middle
        double share = 0.45;
        int n = 2000;
        double h = 1.0 / n;
        double c = Math.PI * Math.PI * share;
        double[] upper = new double[n + 1];
        double[] right = new double[n + 1];
        for (int i = 1; i < n; i++) {
            double diagonal = -2 + c * h * h - upper[i - 1];
            upper[i] = 1 / diagonal;
            right[i] = (-h * h - right[i - 1]) / diagonal;
        }
        double middle = 0;
        for (int i = n - 1; i >= n / 2; i--) {
            middle = right[i] - upper[i] * middle;
        }
        assertEquals(1 + c * middle, MemberCheck.enlargement(share, 1), 1e-4);
        assertEquals(1, MemberCheck.enlargement(0, 1), 1e-12);
        assertEquals(1 / Math.cos(Math.PI / 2 * Math.sqrt(0.99)), MemberCheck.enlargement(5, 1), 1e-9, "stops near the limit");
        FlexuralBuckling strut = FlexuralBuckling.of(7370e-6, S355, FlexuralBuckling.eulerForce(5073e-8, 4), BucklingCurve.A, 1);
        Utilisation sum = MemberCheck.sum(0.45, new FlexuralBuckling(1, 1, 1, 1, 0.9), 2, 10, 1, -3, 30, 2);
        assertEquals(0.5 + 0.2 * (1 + c * middle) + 0.1 * MemberCheck.enlargement(0.225, 1), sum.ratio(), 1e-4);
        assertTrue(MemberCheck.sum(strut.criticalForce(), strut, 0, 1, 1e9, 0, 1, 1e9).ratio() > 1);
    }

    @Test
    void sheetRangeNamesSlenderParts() {
        assertEquals(2, SheetLimits.beyond(FoldedSection.channel(0.100, 0.056, 0.001, 0.001).properties()).size());
        assertTrue(SheetLimits.beyond(FoldedSection.channel(0.100, 0.051, 0.001, 0.001).properties()).isEmpty());
        assertEquals(1, SheetLimits.beyond(FoldedSection.channel(0.520, 0.030, 0.001, 0.001).properties()).size());
        assertTrue(SheetLimits.beyond(FoldedSection.channel(0.503, 0.030, 0.001, 0.001).properties()).isEmpty());
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new MemberForces(Double.NaN, 0, 0, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new CrossSectionCheck(channel(), -1, 1));
        assertThrows(IllegalArgumentException.class, () -> new CrossSectionCheck(channel(), S235, 0.9));
        assertThrows(IllegalArgumentException.class, () -> BucklingCurve.A.chi(-0.1));
        assertThrows(IllegalArgumentException.class, () -> new FlexuralBuckling.Lengths(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Utilisation("a.b", "x", -1, 1, "N", "y"));
        assertThrows(IllegalArgumentException.class, () -> new Utilisation("a.b", "x", 1, 0, "N", "y"));
        assertThrows(IllegalArgumentException.class, () -> EffectiveSection.bending(channel(), 0, 0, S235));
        assertThrows(IllegalArgumentException.class, () -> ColdForming.averageYield(S235, 200e6, 5, 2, 0.004, 1e-3));
        assertThrows(IllegalArgumentException.class,
                () -> LateralTorsionalBuckling.criticalMoment(1e-8, 0, 0, 1, 1, 0, Steel.G));
    }

    @Test
    void constantsMeetTheCode() {
        assertEquals(210e9, Steel.E, "EN 1993-1-1 3.2.6");
        assertEquals(81e9, Steel.G, "EN 1993-1-1 3.2.6");
        assertEquals(7850, Steel.DENSITY);
        assertEquals(0.3, Steel.POISSON, "EN 1993-1-1 3.2.6");
        assertEquals(Steel.E / 2 / (1 + Steel.POISSON), Steel.G, 0.01 * Steel.G);
        assertEquals(1, Steel.GAMMA_M0);
        assertEquals(1, Steel.GAMMA_M1);
        Set<String> ids = new HashSet<>();
        for (Formula formula : SteelFormulas.all()) {
            assertTrue(ids.add(formula.id()), formula.id());
        }
    }

    private static Utilisation find(List<Utilisation> all, Formula formula) {
        return all.stream().filter(u -> u.formulaId().equals(formula.id())).findFirst().orElseThrow();
    }
}
