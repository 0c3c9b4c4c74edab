package cradlewright.mechanics.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.verify.CheckValues;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SectionTest {

    private static final CheckValues VALUES = CheckValues.load("section");
    private static final double RIGHT = Math.PI / 2;

    private static FoldedSection roundChannel() {
        return FoldedSection.channel(0.100, 0.050, 0.004, 0.004);
    }

    @Test
    void sharpChannelMeetsTheClosedForms() {
        SectionProperties p = roundChannel().sharpCorners().properties();
        VALUES.check("C9.area", p.area());
        VALUES.check("C9.iy", p.iy());
        VALUES.check("C9.iz", p.iz());
        VALUES.check("C9.centroid", p.moments().centroidY());
        VALUES.check("C9.torsion-constant", p.torsion().constant());
        VALUES.check("C9.shear-centre", 0.002 - p.torsion().shearCentreY());
        VALUES.check("C9.warping", p.torsion().warping());
        assertEquals(4096e-12 / 0.004, p.torsion().modulus(), 1e-15, "open torsion stress is T t/J");
        checkWarping("C9", p);
        checkWarping("zed", FoldedSection.zed(0.120, 0.050, 0.003, 0).sharpCorners().properties());
        checkWarping("lipped", FoldedSection.lippedChannel(0.100, 0.050, 0.020, 0.002, 0).sharpCorners().properties());
        assertFalse(FoldedSection.angle(0.060, 0.040, 0.004, 0).sharpCorners().properties().torsion().warps(),
                "two strips that meet in one point");
    }

    private static void checkWarping(String tag, SectionProperties p) {
        VALUES.check(tag + ".warping-modulus", p.torsion().warpingModulus());
        VALUES.check(tag + ".warping-shear", p.torsion().warpingShear());
    }

    @Test
    void roundChannelMeetsPathIntegration() {
        AreaMoments line = roundChannel().midlineMoments();
        VALUES.check("C9r.area", line.area());
        VALUES.check("C9r.iy-line", line.iy());
        VALUES.check("C9r.iz-line", line.iz());
    }

    @Test
    void cornerApproximationMeetsItsRuleAndTheTruth() {
        RoundedCorners rounded = roundChannel().roundedCorners();
        VALUES.check("C9d.delta", rounded.delta());
        VALUES.check("C9d.area", rounded.area());
        VALUES.check("C9d.iy", rounded.iy());
        VALUES.check("C9d.iz", rounded.iz());
        VALUES.check("C9d.iw", rounded.warping());
        VALUES.check("C9d.truth", rounded.iy());
        assertEquals(roundChannel().properties().iz(), rounded.iz(), 0.02 * rounded.iz());
    }

    @Test
    void foldedSectionsMeetBruteForce() {
        checkFolded("rounded", roundChannel(), "A yc zc Iy Iz ysc zsc Iw J Asz Asy Apz Apy Wply Wplz");
        checkFolded("lipped", FoldedSection.lippedChannel(0.150, 0.060, 0.015, 0.002, 0.003),
                "A yc zc Iy Iz ysc zsc Iw J Asz Asy Apz Apy Wply Wplz");
        checkFolded("angle", FoldedSection.angle(0.060, 0.040, 0.004, 0.004), "A yc zc Iy Iz Iyz ysc zsc J Asz Asy Apz Apy");
        checkFolded("zed", FoldedSection.zed(0.120, 0.050, 0.003, 0.003), "A zc Iy Iz Iyz zsc Iw J Asz Asy Apz Apy");
        checkFolded("hat", FoldedSection.hat(0.080, 0.062, 0.140, 0.002, 0.002),
                "A zc Iy Iz zsc Iw J Asz Asy Apz Apy Wply Wplz");
    }

    private static void checkFolded(String tag, FoldedSection section, String quantities) {
        SectionProperties p = section.properties();
        for (String quantity : quantities.split(" ")) {
            VALUES.check(tag + "." + quantity, switch (quantity) {
                case "A" -> p.area();
                case "yc" -> p.moments().centroidY();
                case "zc" -> p.moments().centroidZ();
                case "Iy" -> p.iy();
                case "Iz" -> p.iz();
                case "Iyz" -> p.moments().iyz();
                case "ysc" -> p.torsion().shearCentreY();
                case "zsc" -> p.torsion().shearCentreZ();
                case "Iw" -> p.torsion().warping();
                case "J" -> p.torsion().constant();
                case "Asz" -> p.shearZ().deflection();
                case "Asy" -> p.shearY().deflection();
                case "Apz" -> p.shearZ().elastic();
                case "Apy" -> p.shearY().elastic();
                case "Wply" -> p.plasticY();
                case "Wplz" -> p.plasticZ();
                default -> throw new IllegalArgumentException(quantity);
            });
        }
    }

    @Test
    void hollowSectionsMeetThePublishedTable() {
        SectionProperties p = HollowSection.rectangular(0.060, 0.040, 0.003);
        for (String tag : List.of("C10", "C10x")) {
            VALUES.check(tag + ".area", p.area());
            VALUES.check(tag + ".iy", p.iy());
            VALUES.check(tag + ".iz", p.iz());
            VALUES.check(tag + ".wely", p.elasticY());
            VALUES.check(tag + ".wply", p.plasticY());
            VALUES.check(tag + ".it", p.torsion().constant());
        }
        VALUES.check("C10.welz", p.elasticZ());
        VALUES.check("C10.wplz", p.plasticZ());
        VALUES.check("C10.ct", p.torsion().modulus());
        VALUES.check("C10.bredt", p.torsion().constant());
        SectionProperties small = HollowSection.rectangular(0.040, 0.020, 0.002);
        VALUES.check("RHS40.area", small.area());
        VALUES.check("RHS40.iy", small.iy());
        VALUES.check("RHS40.iz", small.iz());
        VALUES.check("RHS40.wely", small.elasticY());
        VALUES.check("RHS40.wply", small.plasticY());
        VALUES.check("RHS40.wplz", small.plasticZ());
        VALUES.check("RHS40.it", small.torsion().constant());
        VALUES.check("RHS40.ct", small.torsion().modulus());
        SectionProperties thick = HollowSection.rectangular(0.120, 0.080, 0.008);
        VALUES.check("RHS120.A", thick.area());
        VALUES.check("RHS120.Iy", thick.iy());
        VALUES.check("RHS120.Iz", thick.iz());
        VALUES.check("RHS120.Wply", thick.plasticY());
        VALUES.check("RHS120.Wplz", thick.plasticZ());
        VALUES.check("RHS200.area", HollowSection.rectangular(0.200, 0.120, 0.0125).area());
        assertEquals(HollowSection.rectangular(0.1, 0.06, 0.00605, 2.5 * 0.00605, 1.5 * 0.00605).area(),
                HollowSection.rectangular(0.1, 0.06, 0.00605).area(), 1e-12, "2.5 t from 6 mm on");
        assertEquals(HollowSection.rectangular(0.2, 0.12, 0.01005, 3 * 0.01005, 2 * 0.01005).area(),
                HollowSection.rectangular(0.2, 0.12, 0.01005).area(), 1e-12, "3 t from 10 mm on");
        assertEquals(-0.0185, p.plates().get(0).root().y(), 1e-12, "walls lie on their midlines");
        assertEquals(-0.0285, p.plates().get(2).root().z(), 1e-12);
    }

    @Test
    void tubeMeetsTheDesignersGuide() {
        SectionProperties p = HollowSection.circular(0.2445, 0.010);
        VALUES.check("CHS.area", p.area());
        VALUES.check("CHS.i", p.iy());
        VALUES.check("CHS.wel", p.elasticY());
        VALUES.check("CHS.wpl", p.plasticZ());
        VALUES.check("CHS.it", p.torsion().constant());
        assertEquals(p.torsion().constant() / 0.12225, p.torsion().modulus(), 1e-12, "shear stress of torsion is T r/J");
        assertEquals(2 * p.area() / Math.PI, p.shearZ().plastic(), 1e-12, "EN 1993-1-1 6.2.6(3) g");
        assertEquals(p.area() / 2, p.shearZ().elastic(), 0.01 * p.area(), "thin ring: largest shear stress 2 V/A");
        double radius = 0.12225;
        double bore = 0.11225;
        double halfRing = 2 * (Math.pow(radius, 3) - Math.pow(bore, 3)) / 3;
        assertEquals(p.iy() * 2 * 0.010 / halfRing, p.shearZ().elastic(), 1e-12, "V Q/(I b) at the level of the centre");
        assertEquals(p.area() / 2, p.shearY().deflection(), 1e-15, "thin ring");
        assertEquals(p.elasticY(), p.elasticZ(), 1e-15, "a tube has no weaker axis");
        assertTrue(HollowSection.circular(0.0201, 0.010).area() > 0, "a bore of a hair is still a tube");
    }

    @Test
    void boxShearAreasMeetTheHalvesFoldedOpen() {
        // half of a sharp box is a channel cut where the symmetric shear flow is zero: two of them make the box
        double h = 0.100;
        double b = 0.060;
        double t = 0.002;
        List<SectionPoint> half = List.of(new SectionPoint(b / 2, h), new SectionPoint(0, h), new SectionPoint(0, 0),
                new SectionPoint(b / 2, 0));
        SectionProperties open = FoldedSection.sharp("half box", half, t).properties();
        SectionProperties box = HollowSection.rectangular(h + t, b + t, t, t / 2, 0);
        assertEquals(2 * open.shearZ().deflection(), box.shearZ().deflection(), 1e-9);
        assertEquals(2 * open.shearZ().elastic(), box.shearZ().elastic(), 0.01 * box.shearZ().elastic());
        SectionProperties lying = HollowSection.rectangular(b + t, h + t, t, t / 2, 0);
        assertEquals(box.shearZ().deflection(), lying.shearY().deflection(), 1e-12);
        assertEquals(box.shearZ().elastic(), lying.shearY().elastic(), 1e-12);
        assertEquals(box.area() * (h + t) / (h + b + 2 * t), box.shearZ().plastic(), 1e-12, "EN 1993-1-1 6.2.6(3) f");
        assertEquals(box.area(), box.shearY().plastic() + box.shearZ().plastic(), 1e-12);
    }

    @Test
    void teeMeetsTheParallelAxisSum() {
        SectionProperties p = TeeSection.of(0.100, 0.006, 0.080, 0.006);
        VALUES.check("C11.area", p.area());
        VALUES.check("C11.centroid", p.moments().centroidZ());
        VALUES.check("C11.iy", p.iy());
        VALUES.check("C11.wmin", p.elasticY());
        assertEquals(0.047, p.plates().get(1).width(), 1e-12, "half the flange without the web");
        assertEquals(0.047, p.plates().get(2).width(), 1e-12);
    }

    @Test
    void teeMeetsFineStrips() {
        double[][] tees = {{0.100, 0.006, 0.080, 0.006}, {0.050, 0.005, 0.120, 0.008}, {0.060, 0.030, 0.020, 0.010}};
        for (double[] d : tees) {
            SectionProperties p = TeeSection.of(d[0], d[1], d[2], d[3]);
            int n = 200_000;
            double dz = (d[1] + d[2]) / n;
            double half = p.area() / 2;
            double seen = 0;
            double level = 0;
            for (int i = 0; i < n && seen < half; i++) {
                level = (i + 0.5) * dz;
                seen += (level > d[2] ? d[0] : d[3]) * dz;
            }
            double plastic = 0;
            double firstAbove = 0;
            double iz = 0;
            double elastic = Double.MAX_VALUE;
            double iy = 0;
            for (int i = n - 1; i >= 0; i--) {
                double z = (i + 0.5) * dz;
                double w = z > d[2] ? d[0] : d[3];
                plastic += Math.abs(z - level) * w * dz;
                iz += Math.pow(w, 3) / 12 * dz;
                iy += Math.pow(z - p.moments().centroidZ(), 2) * w * dz;
                firstAbove += (z - p.moments().centroidZ()) * w * dz;
                if (z < d[2]) {
                    elastic = Math.min(elastic, p.iy() * w / Math.abs(firstAbove));
                }
            }
            assertEquals(plastic, p.plasticY(), 1e-4 * plastic);
            assertEquals(iz, p.iz(), 1e-4 * iz);
            assertEquals(iy, p.iy(), 1e-4 * iy);
            assertEquals(elastic, p.shearZ().elastic(), 1e-3 * elastic);
            assertEquals(d[1] * d[0] * d[0] / 4 + d[2] * d[3] * d[3] / 4, p.plasticZ(), 1e-12);
            assertEquals((d[0] * Math.pow(d[1], 3) + d[2] * Math.pow(d[3], 3)) / 3, p.torsion().constant(), 1e-15);
            assertEquals(p.torsion().constant() / Math.max(d[1], d[3]), p.torsion().modulus(), 1e-12);
            assertEquals(d[2] + d[1] / 2, p.torsion().shearCentreZ(), 1e-12);
            assertEquals(d[3] * (d[2] + d[1] / 2), p.shearZ().plastic(), 1e-12, "EN 1993-1-1 6.2.6(3), welded tee");
            assertEquals(d[0] * d[1], p.shearY().plastic(), 1e-12);
            assertEquals(p.iz() * 8 / (d[0] * d[0]), p.shearY().elastic(), 1e-12, "parabola over the flange");
            assertEquals(d[2] * d[3] * 5 / 6, p.shearZ().deflection(), 1e-12);
            assertEquals(d[0] * d[1] * 5 / 6, p.shearY().deflection(), 1e-12);
        }
    }

    @Test
    void flatBarMeetsTheSeriesOfTheRectangle() {
        for (int[] d : new int[][] {{100, 6}, {40, 20}, {30, 30}}) {
            SectionProperties p = FlatBar.of(d[0] * 1e-3, d[1] * 1e-3);
            SectionProperties lying = FlatBar.of(d[1] * 1e-3, d[0] * 1e-3);
            String tag = "bar" + d[0] + "x" + d[1];
            VALUES.check(tag + ".it", p.torsion().constant());
            VALUES.check(tag + ".wt", p.torsion().modulus());
            assertEquals(p.torsion().constant(), lying.torsion().constant(), 1e-20);
            assertEquals(p.torsion().modulus(), lying.torsion().modulus(), 1e-20);
        }
        double[][] table = {{30, 30}, {40, 20}, {100, 10}};
        for (double[] d : table) {
            SectionProperties p = FlatBar.of(d[0] * 1e-3, d[1] * 1e-3);
            String tag = "table" + (int) (d[0] / d[1]);
            VALUES.check(tag + ".it", p.torsion().constant() / (d[0] * Math.pow(d[1], 3) * 1e-12));
            VALUES.check(tag + ".wt", p.torsion().modulus() / (d[0] * d[1] * d[1] * 1e-9));
            VALUES.check(tag + ".formula-it", p.torsion().constant());
            VALUES.check(tag + ".formula-wt", p.torsion().modulus());
        }
        SectionProperties bar = FlatBar.of(0.100, 0.006);
        assertEquals(6e-4, bar.area(), 1e-15);
        assertEquals(1e-5, bar.elasticY(), 1e-15, "b h2/6");
        assertEquals(6e-7, bar.elasticZ(), 1e-16);
        assertEquals(1.5e-5, bar.plasticY(), 1e-15, "b h2/4");
        assertEquals(9e-7, bar.plasticZ(), 1e-16);
        assertEquals(6e-4, bar.shearZ().plastic(), 1e-15);
        assertEquals(4e-4, bar.shearZ().elastic(), 1e-15, "largest stress 1.5 V/A");
        assertEquals(5e-4, bar.shearZ().deflection(), 1e-15, "5/6 A");
    }

    @Test
    void flatPatternMeetsTheWorkedExample() {
        VALUES.check("C21b.arc", FlatPattern.allowance(RIGHT, 0.002, 0.002));
        VALUES.check("C21b.deduction", FlatPattern.deduction(RIGHT, 0.002, 0.002));
        VALUES.check("C21.arc2", FlatPattern.allowance(RIGHT, 0.002, 0.002));
        VALUES.check("C21.arc4", FlatPattern.allowance(RIGHT, 0.004, 0.004));
        VALUES.check("C21.deduction2", FlatPattern.deduction(RIGHT, 0.002, 0.002));
        VALUES.check("C21.deduction4", FlatPattern.deduction(RIGHT, 0.004, 0.004));
        VALUES.check("C21.flat", roundChannel().flatWidth());
        assertEquals(1, FlatPattern.neutralFibre(0.030, 0.004), 0, "k is 1 above r/t = 5");
        assertEquals(1, FlatPattern.neutralFibre(0.02008, 0.004), 0, "just above 5");
        assertTrue(FlatPattern.neutralFibre(0.000402, 0.004) < 0.16, "still allowed just above r/t = 0.1");
        assertEquals(0.65 + 0.5 * Math.log10(3), FlatPattern.neutralFibre(0.012, 0.004), 1e-12);
        assertEquals(0, FlatPattern.deduction(0, 0.004, 0.004), 1e-15, "nothing is taken off an unbent sheet");
        double shallow = FlatPattern.deduction(Math.PI / 4, 0.004, 0.004);
        assertEquals(0.016 * Math.tan(Math.PI / 8) - Math.PI / 4 * 0.0053, shallow, 1e-9, "DIN 6935: 2 (r+t) tan(a/2) - arc");
        assertEquals(0.016 - Math.PI * 2 / 3 * 0.0053, FlatPattern.deduction(Math.PI * 2 / 3, 0.004, 0.004), 1e-9);
        double nearly = Math.toRadians(89.5);
        assertEquals(0.016 * Math.tan(nearly / 2) - nearly * 0.0053, FlatPattern.deduction(nearly, 0.004, 0.004), 1e-9,
                "to the outside corner up to 90 degrees");
    }

    @Test
    void platesAreTheFlatsBetweenTheBends() {
        List<Plate> channel = roundChannel().properties().plates();
        assertEquals(List.of(Plate.Kind.OUTSTAND, Plate.Kind.INTERNAL, Plate.Kind.OUTSTAND),
                channel.stream().map(Plate::kind).toList());
        assertEquals(0.084, channel.get(1).width(), 1e-12);
        assertEquals(0.050, channel.get(0).tip().y(), 1e-12, "the free edge is the tip");
        assertEquals(0.050, channel.get(2).tip().y(), 1e-12);
        assertEquals(0.008, channel.get(0).root().y(), 1e-12);
        List<Plate> lipped = FoldedSection.lippedChannel(0.150, 0.060, 0.015, 0.002, 0.003).properties().plates();
        assertEquals(4, lipped.stream().filter(p -> p.kind() == Plate.Kind.OUTSTAND).count(), "flanges are not trusted to lips");
        List<Plate> weakFold = FoldedSection.of("web with a narrow edge fold", List.of(new SectionPoint(0.018, 0.1),
                new SectionPoint(0, 0.1), new SectionPoint(0, 0), new SectionPoint(0.05, 0)), 0.002, 0.002).properties().plates();
        assertEquals(Plate.Kind.OUTSTAND, weakFold.get(1).kind(), "18 mm cannot hold a 100 mm web");
        for (double fold : new double[] {0.0199, 0.0201}) {
            List<Plate> folded = FoldedSection.of("web with an edge fold", List.of(new SectionPoint(fold, 0.1),
                    new SectionPoint(0, 0.1), new SectionPoint(0, 0), new SectionPoint(0.05, 0)), 0.002, 0.002).properties().plates();
            assertEquals(fold < 0.02 ? Plate.Kind.OUTSTAND : Plate.Kind.INTERNAL, folded.get(1).kind(), "a fifth of the web");
        }
        assertEquals(Plate.Kind.INTERNAL, FoldedSection.channel(0.2, 0.03, 0.002, 0.002).properties().plates().get(1).kind(),
                "the web of a channel lies between two flanges");
        List<Plate> box = HollowSection.rectangular(0.060, 0.040, 0.003).plates();
        assertEquals(4, box.size());
        assertEquals(0.051, box.get(0).width(), 1e-12, "h - 3 t as in the steel tables");
        assertEquals(0.031, box.get(2).width(), 1e-12, "b - 3 t");
        assertTrue(FlatBar.of(0.1, 0.006).plates().isEmpty());
    }

    @Test
    void plasticShearAreasOfFoldedSheetAreTheFlatsAlongTheForce() {
        SectionProperties p = roundChannel().properties();
        assertEquals(0.096 * 0.004, p.shearZ().plastic(), 1e-12, "web between the flange midlines");
        assertEquals(2 * 0.048 * 0.004, p.shearY().plastic(), 1e-12, "both flanges");
        SectionProperties lipped = FoldedSection.lippedChannel(0.150, 0.060, 0.015, 0.002, 0.003).properties();
        assertEquals(0.148 * 0.002, lipped.shearZ().plastic(), 1e-12, "lips do not count");
        SectionProperties hat = FoldedSection.hat(0.080, 0.062, 0.140, 0.002, 0.002).properties();
        assertEquals(2 * 0.078 * 0.002, hat.shearZ().plastic(), 1e-12);
        assertEquals(0.060 * 0.002, hat.shearY().plastic(), 1e-12, "brims do not count");
        double turn = Math.toRadians(44.9);
        assertEquals(0.058 * 0.004 * Math.cos(turn), FoldedSection.angle(0.060, 0.040, 0.004, 0.004).turned(turn).properties()
                .shearZ().plastic(), 1e-12, "of two legs near 45 degrees the steeper one counts");
    }

    @Test
    void extentsAreMeasuredFromTheCentroid() {
        SectionProperties p = roundChannel().properties();
        assertEquals(0.050, p.top(), 1e-12);
        assertEquals(0.050, p.bottom(), 1e-12);
        assertEquals(0.050, p.left() + p.right(), 1e-12);
        assertEquals(p.moments().centroidY(), p.left(), 1e-12);
        assertEquals(p.iy() / 0.050, p.elasticY(), 1e-15);
        assertEquals(p.iz() / p.right(), p.elasticZ(), 1e-15);
    }

    @Test
    void stressSignsFollowTheRightHand() {
        AreaMoments m = FlatBar.of(0.100, 0.050).moments();
        assertTrue(m.stress(new SectionPoint(0, 0.05), 0, 1, 0) > 0, "My pulls the upper side");
        assertTrue(m.stress(new SectionPoint(0.025, 0), 0, 0, 1) < 0, "Mz presses the right side");
        assertEquals(1 / m.area(), m.stress(new SectionPoint(0.01, 0.02), 1, 0, 0), 1e-9);
    }

    @Test
    void unsymmetricStressMeetsPrincipalAxes() {
        AreaMoments m = FoldedSection.zed(0.120, 0.050, 0.003, 0.003).properties().moments();
        double angle = m.principalAngle();
        SectionPoint p = new SectionPoint(0.0485, 0.0015);
        double my = 800;
        double mz = -150;
        // independent route: turn moment and point into principal axes, where bending is symmetric
        double u = Math.cos(angle) * (p.y() - m.centroidY()) + Math.sin(angle) * (p.z() - m.centroidZ());
        double v = -Math.sin(angle) * (p.y() - m.centroidY()) + Math.cos(angle) * (p.z() - m.centroidZ());
        double mu = Math.cos(angle) * my + Math.sin(angle) * mz;
        double mv = -Math.sin(angle) * my + Math.cos(angle) * mz;
        double expected = mu * v / m.iMax() - mv * u / m.iMin();
        assertEquals(expected, m.stress(p, 0, my, mz), 1e-6 * Math.abs(expected));
    }

    @Test
    void sharpChannelMeetsTheClosedFormsOfShearAndPlasticity() {
        SectionProperties p = roundChannel().sharpCorners().properties();
        VALUES.check("sharp.plastic", p.plasticY());
        VALUES.check("sharp.Av", p.shearZ().plastic());
        VALUES.check("sharp.Apz", p.shearZ().elastic());
        VALUES.check("sharp.Asz", p.shearZ().deflection());
        VALUES.check("sharp.Apy", p.shearY().elastic());
        VALUES.check("sharp.Asy", p.shearY().deflection());
        AreaMoments line = roundChannel().midlineMoments();
        VALUES.check("line.iy", line.iy());
        VALUES.check("line.iz", line.iz());
    }

    @Test
    void roundChannelMeetsItsPatches() {
        SheetPatches patches = SheetPatches.channel(0.100, 0.050, 0.004, 0.004);
        SectionProperties p = roundChannel().properties();
        double byZ = patches.plastic(SheetPatches.Patch::z);
        double byY = patches.plastic(SheetPatches.Patch::y);
        assertEquals(VALUES.expected("patches.Wply"), byZ, 1e-4 * byZ);
        assertEquals(VALUES.expected("patches.Wplz"), byY, 1e-4 * byY);
        VALUES.check("patches.Wply", p.plasticY());
        VALUES.check("patches.Wplz", p.plasticZ());
    }

    @Test
    void unsymmetricStressMeetsTheTextbook() {
        AreaMoments book = new AreaMoments(1600e-6, 0, 0, 1.09e-6, 1.31e-6, 0.34e-6);
        VALUES.check("unsymmetric.up", book.stress(new SectionPoint(0, 0.001), 0, 1500, 0));
        VALUES.check("unsymmetric.across", book.stress(new SectionPoint(0.001, 0), 0, 1500, 0));
        VALUES.check("unsymmetric.worst", book.stress(new SectionPoint(-0.008, -0.0664), 0, 1500, 0));
        AreaMoments plain = new AreaMoments(4, 1, 2, 2, 1, 0.5);
        VALUES.check("unsymmetric.hand", plain.stress(new SectionPoint(2, 5), 8, 7, 3.5));
    }

    @Test
    void badInputIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> HollowSection.rectangular(0.06, 0.04, 0.003, 0.00903, 0.003));
        assertThrows(IllegalArgumentException.class, () -> FoldedSection.of("sharp vee", List.of(new SectionPoint(0.1, 0),
                new SectionPoint(0, 0), new SectionPoint(0.1 * Math.cos(Math.toRadians(9.2)), 0.1 * Math.sin(Math.toRadians(9.2)))),
                0.001, 0.001).properties());
        assertThrows(IllegalArgumentException.class, () -> FoldedSection.channel(0.1, 0.05, -0.004, 0.004));
        assertThrows(IllegalArgumentException.class, () -> FoldedSection.channel(0.1, Double.NaN, 0.004, 0.004));
        assertThrows(IllegalArgumentException.class, () -> FoldedSection.channel(0.1, 0.05, 0.004, 0.060));
        assertThrows(IllegalArgumentException.class, () -> FoldedSection.of("strip",
                List.of(new SectionPoint(0, 0), new SectionPoint(0.1, 0)), 0.002, 0.002));
        assertThrows(IllegalArgumentException.class, () -> FoldedSection.of("unbent",
                List.of(new SectionPoint(0, 0), new SectionPoint(0.1, 0), new SectionPoint(0.2, 0)), 0.002, 0.002));
        assertThrows(IllegalArgumentException.class, () -> roundChannel().sharpCorners().flatWidth());
        assertThrows(IllegalArgumentException.class, () -> HollowSection.rectangular(0.06, 0.04, 0.02));
        assertThrows(IllegalArgumentException.class, () -> HollowSection.circular(0.02, 0.01));
        assertThrows(IllegalArgumentException.class, () -> FlatBar.of(0, 0.01));
        assertThrows(IllegalArgumentException.class, () -> TeeSection.of(0.005, 0.006, 0.08, 0.006));
        assertThrows(IllegalArgumentException.class, () -> FlatPattern.neutralFibre(0.0001, 0.004));
        assertThrows(IllegalArgumentException.class, () -> FlatPattern.allowance(-0.1, 0.004, 0.004));
    }

    @Test
    void formulaIdsAreUnique() {
        Set<String> ids = new HashSet<>();
        for (Formula formula : SectionFormulas.all()) {
            assertTrue(ids.add(formula.id()), formula.id());
        }
    }
}
