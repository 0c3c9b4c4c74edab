package cradlewright.mechanics.steel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.section.AreaMoments;
import cradlewright.mechanics.section.FlatBar;
import cradlewright.mechanics.section.FoldedSection;
import cradlewright.mechanics.section.HollowSection;
import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.section.SectionPoint;
import cradlewright.mechanics.section.SectionProperties;
import cradlewright.mechanics.section.SheetPatches;
import cradlewright.mechanics.verify.CheckValues;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Second routes to the steel formulas: numbers of a second printed source, and numbers that the test itself works out in
 * another way. Each of the latter is compared with its row too, so that the row shows what the route gave.
 */
class SteelRoutesTest {

    private static final CheckValues VALUES = CheckValues.load("steel");
    private static final double S235 = 235e6;
    private static final double S275 = 275e6;
    private static final double S355 = 355e6;

    private static void route(String row, double byRoute, double share, double ours) {
        assertEquals(VALUES.expected(row), byRoute, share * Math.abs(byRoute), "the route no longer gives the row " + row);
        VALUES.check(row, ours);
    }

    private static double bisect(double low, double high, DoublePredicate holds) {
        double a = low;
        double b = high;
        for (int i = 0; i < 100; i++) {
            double middle = (a + b) / 2;
            if (holds.test(middle)) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return a;
    }

    private static Plate flat(Plate.Kind kind, double width, double thickness) {
        return Plate.straight(kind, new SectionPoint(0, 0), new SectionPoint(width, 0), thickness);
    }

    @Test
    void gradesMeetASecondPrint() {
        for (SteelGrade grade : List.of(SteelGrade.S235, SteelGrade.S275, SteelGrade.S355)) {
            VALUES.check("reprint." + grade + ".fy16", grade.yieldStrength(0.016));
            VALUES.check("reprint." + grade + ".fy40", grade.yieldStrength(0.040));
            VALUES.check("reprint." + grade + ".fy63", grade.yieldStrength(0.063));
            VALUES.check("reprint." + grade + ".fu", grade.tensileStrength(0.003));
            VALUES.check("reprint." + grade + ".fu-thin", grade.tensileStrength(0.0029));
        }
        for (SteelGrade grade : List.of(SteelGrade.S315MC, SteelGrade.S355MC, SteelGrade.S420MC, SteelGrade.S460MC,
                SteelGrade.S500MC, SteelGrade.S700MC)) {
            VALUES.check("reprint." + grade + ".fy", grade.yieldStrength(0.008));
            VALUES.check("reprint." + grade + ".fu", grade.tensileStrength(0.002));
        }
        for (SteelGrade grade : List.of(SteelGrade.S315MC, SteelGrade.S355MC, SteelGrade.S420MC, SteelGrade.S460MC,
                SteelGrade.S500MC)) {
            VALUES.check("reprint." + grade + ".mandrel", grade.mandrelOverThickness());
        }
    }

    @Test
    void coldFormingGainMeetsASecondPrint() {
        VALUES.check("fya.library", ColdForming.averageYield(350e6, 420e6, ColdForming.ROLL_FORMED, 4, 0.00196, 689.2e-6));
    }

    @Test
    void classLimitsMeetALibrary() {
        double[] psi = {-1.3, -1.1, -0.9};
        String[] row = {"library.internal-130", "library.internal-110", "library.internal-90"};
        for (int i = 0; i < 3; i++) {
            VALUES.check(row[i], SectionClass.limit(Plate.Kind.INTERNAL, new PlateStress(1, psi[i]), i < 2 ? S235 : S275,
                    SectionClass.CLASS_3));
        }
        VALUES.check("library.tip-leads-100", SectionClass.limit(Plate.Kind.OUTSTAND, new PlateStress(-1, 1), S235,
                SectionClass.CLASS_3));
        VALUES.check("library.root-leads-100", SectionClass.limit(Plate.Kind.OUTSTAND, new PlateStress(1, -1), S235,
                SectionClass.CLASS_3));
        VALUES.check("library.tip-leads0", SectionClass.limit(Plate.Kind.OUTSTAND, new PlateStress(0, 1), S355,
                SectionClass.CLASS_3));
        VALUES.check("library.internal-class1", SectionClass.limit(Plate.Kind.INTERNAL, PlateStress.uniform(), S235,
                SectionClass.CLASS_1));
        VALUES.check("library.bending-class2", SectionClass.limit(Plate.Kind.INTERNAL, new PlateStress(1, -1), S355,
                SectionClass.CLASS_2));
        VALUES.check("library.outstand-class2", SectionClass.limit(Plate.Kind.OUTSTAND, PlateStress.uniform(), S275,
                SectionClass.CLASS_2));
        VALUES.check("library.tube450", SectionClass.of(HollowSection.circular(0.450, 0.010), -1, 0, 0, S235).number());
        VALUES.check("library.tube400", SectionClass.of(HollowSection.circular(0.400, 0.010), -1, 0, 0, S355).number());
        VALUES.check("library.tube550", SectionClass.of(HollowSection.circular(0.550, 0.010), -1, 0, 0, S355).number());
        VALUES.check("library.tube650", SectionClass.of(HollowSection.circular(0.650, 0.010), -1, 0, 0, S355).number());
        VALUES.check("library.k-tip-leads50", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(0.5, 1)));
        VALUES.check("library.k-root-leads50", PlateBuckling.factor(Plate.Kind.OUTSTAND, new PlateStress(1, 0.5)));
    }

    @Test
    void effectiveWidthsMeetWorkedExamples() {
        double core = 0.00196;
        VALUES.check("SX022.flange-lambda", PlateBuckling.slenderness(flat(Plate.Kind.INTERNAL, 0.072, core),
                PlateStress.uniform(), 350e6));
        VALUES.check("SX022.flange-rho", PlateBuckling.reduction(flat(Plate.Kind.INTERNAL, 0.072, core), PlateStress.uniform(),
                350e6));
        PlateStress bent = new PlateStress(1, -0.9487);
        VALUES.check("SX022.web-k", PlateBuckling.factor(Plate.Kind.INTERNAL, bent));
        VALUES.check("SX022.web-lambda", PlateBuckling.slenderness(flat(Plate.Kind.INTERNAL, 0.198, core), bent, 350e6));
        VALUES.check("SX022.web-rho", PlateBuckling.reduction(flat(Plate.Kind.INTERNAL, 0.198, core), bent, 350e6));
        Plate outstand = flat(Plate.Kind.OUTSTAND, 0.114, 0.006);
        VALUES.check("sheet.flange-lambda", PlateBuckling.slenderness(outstand, PlateStress.uniform(), S275));
        VALUES.check("sheet.flange-rho", PlateBuckling.reduction(outstand, PlateStress.uniform(), S275));
        PlateStress web = new PlateStress(1, -0.906);
        VALUES.check("sheet.web-k", PlateBuckling.factor(Plate.Kind.INTERNAL, web));
        VALUES.check("sheet.web-rho", PlateBuckling.reduction(flat(Plate.Kind.INTERNAL, 0.794, 0.006), web, S275));
    }

    /** Stress of yield over small patches of the true outline, no formula of a section. */
    @Test
    void axialForceAndBendingMeetStressBlocks() {
        SheetPatches patches = SheetPatches.channel(0.060, 0.030, 0.004, 0.004);
        CrossSectionCheck check = new CrossSectionCheck(FoldedSection.channel(0.060, 0.030, 0.004, 0.004).properties(), S235, 1);
        route("blocks.axial", patches.sum(p -> S235), 1e-5, check.axialResistance(1));
        route("blocks.plastic-y", S235 * patches.plastic(SheetPatches.Patch::z), 1e-4, check.bendingResistanceY(1));
        route("blocks.plastic-z", S235 * patches.plastic(SheetPatches.Patch::y), 1e-4, check.bendingResistanceZ(1));
        SheetPatches thin = SheetPatches.channel(0.100, 0.050, 0.004, 0.004);
        CrossSectionCheck elastic = new CrossSectionCheck(FoldedSection.channel(0.100, 0.050, 0.004, 0.004).properties(), S235, 1);
        route("blocks.elastic-y", S235 * thin.elastic(SheetPatches.Patch::z, 0.050), 1e-4, elastic.bendingResistanceY(1));
    }

    @Test
    void resistancesMeetTheDesignersGuide() {
        CrossSectionCheck tube = new CrossSectionCheck(HollowSection.circular(0.2445, 0.010), S355, 1);
        VALUES.check("guide.tube-axial", tube.axialResistance(-1));
        CrossSectionCheck box = new CrossSectionCheck(HollowSection.rectangular(0.200, 0.100, 0.016, 0.024, 0.016), S355, 1);
        VALUES.check("guide.box-axial", box.axialResistance(-1));
        VALUES.check("guide.box-bending", box.bendingResistanceY(1));
        VALUES.check("guide.box-shear", box.shearResistanceZ());
    }

    /** At the shear resistance the flow of a flat bar, summed over its depth with the stress of first yield, is that force. */
    @Test
    void shearMeetsTheFlowAtYield() {
        double height = 0.096;
        double thickness = 0.004;
        double flow = 0;
        int n = 10_000;
        for (int i = 0; i < n; i++) {
            flow += bisect(0, S235, tau -> YieldCriterion.value(0, 0, tau, S235) <= 1) * thickness * height / n;
        }
        CrossSectionCheck web = new CrossSectionCheck(FoldedSection.channel(0.100, 0.050, 0.004, 0.004).properties(), S235, 1);
        route("flow.web", flow, 1e-8, web.shearResistanceZ());
    }

    @Test
    void shearReductionMeetsASecondPrint() {
        VALUES.check("lecture.high", CrossSectionCheck.shearReduction(10.0 / 12));
        VALUES.check("lecture.low", CrossSectionCheck.shearReduction(7.0 / 12));
        VALUES.check("guide.reduction", CrossSectionCheck.shearReduction(525 / 689.2));
    }

    /**
     * Least shear stress at which a long plate between hinged edges buckles: waves f(y) cos(w x) + g(y) sin(w x) with f odd and g
     * even sine rows, least over the wave; as the factor k of pi2 E/(12 (1 - nu2)) (t/h)2.
     */
    private static double shearPlateFactor() {
        double least = Double.MAX_VALUE;
        for (double wave = 1; wave < 6; wave += 0.02) {
            least = Math.min(least, PlateInShear.factor(wave));
        }
        return least;
    }

    @Test
    void shearBucklingMeetsPlateEnergyAndASecondPrint() {
        double factor = shearPlateFactor();
        assertEquals(5.34, factor, 0.01, "long plate between hinged edges, Timoshenko and Gere (from memory)");
        double ratio = 120;
        double stress = factor * Math.PI * Math.PI * Steel.E / (12 * (1 - 0.09)) / (ratio * ratio);
        double slenderness = Math.sqrt(S235 / Math.sqrt(3) / stress);
        Plate web = flat(Plate.Kind.INTERNAL, 0.120, 0.001);
        VALUES.check("shear-buckling.chi", PlateBuckling.shearReduction(web, S235));
        VALUES.check("shear-buckling.print", PlateBuckling.shearReduction(web, S235));
        route("shear-buckling.energy", 0.83 / slenderness, 1e-3, PlateBuckling.shearReduction(web, S235));
        SectionProperties thin = FoldedSection.channel(0.200, 0.050, 0.0015, 0.0015).properties();
        VALUES.check("shear-buckling.channel", new CrossSectionCheck(thin, S235, 1).shearResistanceZ());
    }

    /** Stress function of a twisted rectangle by finite differences, refined by the two grids of 20 and 40 strips. */
    @Test
    void torsionMeetsTheStressFunction() {
        CrossSectionCheck open = new CrossSectionCheck(
                FoldedSection.channel(0.100, 0.050, 0.004, 0.004).sharpCorners().properties(), S235, 1);
        VALUES.check("torsion.channel", open.torsionResistance());
        VALUES.check("torsion.tube", new CrossSectionCheck(HollowSection.circular(0.060, 0.003), S235, 1).torsionResistance());
        double coarse = torqueOverStress(40, 20);
        double fine = torqueOverStress(80, 40);
        double modulus = (4 * fine - coarse) / 3 * 0.040 * 0.020 * 0.020;
        route("torsion.bar", modulus * S235 / Math.sqrt(3), 5e-4,
                new CrossSectionCheck(FlatBar.of(0.040, 0.020), S235, 1).torsionResistance());
    }

    /** Torque over the largest shear stress of a rectangle two wide and one thick. */
    private static double torqueOverStress(int across, int strips) {
        double h = 1.0 / strips;
        double[][] f = new double[across + 1][strips + 1];
        double over = 2 / (1 + Math.sin(Math.PI / strips));
        for (int round = 0; round < 20 * strips; round++) {
            for (int i = 1; i < across; i++) {
                for (int j = 1; j < strips; j++) {
                    double next = (f[i - 1][j] + f[i + 1][j] + f[i][j - 1] + f[i][j + 1] + 2 * h * h) / 4;
                    f[i][j] += over * (next - f[i][j]);
                }
            }
        }
        double torque = 0;
        for (double[] column : f) {
            for (double value : column) {
                torque += 2 * value * h * h;
            }
        }
        double[] middle = f[across / 2];
        double slope = (4 * middle[1] - middle[2]) / (2 * h);
        return torque / slope / 2;
    }

    @Test
    void linearSumMeetsTheLargestStress() {
        SectionProperties bar = FlatBar.of(0.100, 0.006);
        MemberForces forces = new MemberForces(10e3, 0, 0, 0, 500, -20);
        AreaMoments m = bar.moments();
        double largest = 0;
        for (int i = -30; i <= 30; i++) {
            for (int k = -50; k <= 50; k++) {
                largest = Math.max(largest, 10e3 / 6e-4 + 500 * k * 1e-3 / (0.006 * 1e-3 / 12)
                        + 20 * i * 1e-4 / (0.1 * 2.16e-7 / 12));
            }
        }
        double sum = new CrossSectionCheck(bar, S235, 1).check(forces).get(6).ratio();
        VALUES.check("sum.bar", sum);
        route("sum.stress", largest / S235, 1e-6, sum);
        assertEquals(largest, m.stress(new SectionPoint(0.003, 0.050), 10e3, 500, -20), 1);
    }

    @Test
    void enlargedMomentMeetsTheSecant() {
        VALUES.check("secant.quarter", MemberCheck.enlargement(0.25, 1));
        VALUES.check("secant.ninth", MemberCheck.enlargement(1.0 / 9, 1));
        VALUES.check("secant.sum", MemberCheck.sum(0.25, new FlexuralBuckling(1, 1, 1, 1, 0.5), 2, 10, 1, 3, 30, 2.25).ratio());
    }

    @Test
    void torsionalBucklingMeetsTheQuadratic() {
        SectionProperties sharp = FoldedSection.channel(0.100, 0.050, 0.004, 0.004).sharpCorners().properties();
        VALUES.check("torsional.bending", FlexuralBuckling.criticalForce(sharp, new FlexuralBuckling.Lengths(1.5, 1.5, 1.5)));
        VALUES.check("torsional.joint", FlexuralBuckling.criticalForce(sharp, new FlexuralBuckling.Lengths(1.5, 0.1, 1.5)));
    }

    private static double moment(DoubleUnaryOperator shape) {
        return new BeamDifferences(12180e-8, 513.9e-8, 13.35e-6, 5, Steel.G).critical(shape);
    }

    @Test
    void criticalMomentMeetsFiniteDifferences() {
        double uniform = moment(x -> 1);
        route("differences.uniform", uniform, 1e-4,
                LateralTorsionalBuckling.criticalMoment(12180e-8, 513.9e-8, 13.35e-6, 5, 1, 0, Steel.G));
        route("differences.spread", moment(x -> 4 * x * (1 - x)) / uniform, 1e-3, MomentShape.SPREAD_LOAD.c1());
        route("differences.middle", moment(x -> 2 * Math.min(x, 1 - x)) / uniform, 1e-3, MomentShape.MIDDLE_LOAD.c1());
        route("differences.one-end", moment(x -> x) / uniform, 1e-3, MomentShape.ONE_END.c1());
    }

    @Test
    void sidewaysBucklingMeetsTheBowedBeam() {
        SectionProperties bar = FlatBar.of(0.100, 0.006);
        BeamDifferences beam = new BeamDifferences(bar.iz(), bar.torsion().constant(), 0, 1.2, Steel.G);
        LateralTorsionalBuckling ours = LateralTorsionalBuckling.of(bar, bar.elasticY(), S235, 1.2, MomentShape.UNIFORM,
                LateralTorsionalBuckling.LoadHeight.SHEAR_CENTRE, BucklingCurve.D, 1);
        double critical = beam.critical(x -> 1);
        double yields = bar.elasticY() * S235;
        double square = yields / critical;
        double bow = 0.76 * (Math.sqrt(square) - 0.2);
        double firstYield = bisect(0, 0.999 * critical,
                moment -> moment / yields + bow / square * (beam.growth(moment, critical) - 1) <= 1);
        route("bowed-beam.moment", firstYield, 2e-4, ours.resistance());
    }

    private static double topEdge(SectionProperties p, double length, MomentShape shape) {
        return LateralTorsionalBuckling.of(p, p.elasticY(), S235, length, shape, LateralTorsionalBuckling.LoadHeight.TOP_EDGE,
                BucklingCurve.D, 1).criticalMoment();
    }

    /**
     * NCCI SN003 with the real shape of the moment lies from 11 percent below the full solution, for short channels, to 3 percent above.
     * As the checks use it, with an even moment in place of the real one and C2 of a load in the middle, it never lies above.
     */
    @Test
    void topEdgeRuleAgainstTheFullSolution() {
        List<SectionProperties> sections = List.of(FlatBar.of(0.100, 0.006), HollowSection.rectangular(0.080, 0.040, 0.003),
                FoldedSection.channel(0.100, 0.050, 0.004, 0.004).properties(),
                FoldedSection.channel(0.120, 0.060, 0.003, 0.003).properties());
        for (double length : new double[] {0.6, 0.8, 1.2, 2.0, 3.0}) {
            for (SectionProperties p : sections) {
                BeamDifferences beam = new BeamDifferences(p.iz(), p.torsion().constant(), p.torsion().warping(), length, Steel.G);
                double spread = beam.criticalWithLoad(x -> 4 * x * (1 - x), p.top(), x -> 8);
                double middle = beam.criticalWithLoad(x -> 2 * Math.min(x, 1 - x), p.top(), BeamDifferences.MIDDLE_LOAD);
                String where = p.name() + " of " + length + " m";
                assertEquals(0.96, topEdge(p, length, MomentShape.SPREAD_LOAD) / spread, 0.07, where);
                assertEquals(0.96, topEdge(p, length, MomentShape.MIDDLE_LOAD) / middle, 0.07, where);
                assertTrue(topEdge(p, length, MomentShape.UNIFORM) < Math.min(spread, middle), where);
            }
        }
    }

    @Test
    void sheetRangeMeetsItsLimits() {
        double outstand = bisect(10, 100,
                c -> SheetLimits.beyond(FoldedSection.channel(0.100, c * 1e-3 + 2e-3, 0.001, 0.001).properties()).isEmpty());
        double internal = bisect(100, 1000,
                c -> SheetLimits.beyond(FoldedSection.channel(c * 1e-3 + 4e-3, 0.030, 0.001, 0.001).properties()).isEmpty());
        VALUES.check("range.outstand", outstand);
        VALUES.check("range.internal", internal);
        VALUES.check("SX022.range-outstand", outstand);
        VALUES.check("SX022.range-internal", internal);
    }
}
