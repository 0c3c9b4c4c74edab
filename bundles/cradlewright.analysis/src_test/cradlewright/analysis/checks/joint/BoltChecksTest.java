package cradlewright.analysis.checks.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.testshop.FrameShop;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.joint.BoltForce;
import cradlewright.mechanics.joint.BoltGrade;
import cradlewright.mechanics.joint.BoltResistance;
import cradlewright.mechanics.joint.BoltSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * A splice in the left rail at its front support, four bolts at 60 mm along and 40 mm across the member. It carries M = 1.838747 N*m per kg
 * about y and, towards the foot, V = 3.6775 N per kg along z.
 *
 * <p>Through the web (sheet along x and z), EN 1993-1-8 elastic method: J = 4 (30^2 + 20^2) = 5200 mm2, r = 36.056 mm, force of the
 * moment M r/J = M x 6.9338/m, along x M x 20/5200 and along z M x 30/5200; with V/4 along z:
 * F = hypot(3.8462 M, 5.7692 M + V/4) = hypot(7.0721, 10.6081 + 0.9194) = 13.524 N per kg.
 * Through the flange the moment pulls: sum of squares about its line 4 x 30^2 = 3600 mm2, T = M x 30/3600 = 8.3333 M = 15.3229 N per kg,
 * and V pulls too, 0.9194 N per kg: 16.2423 N, times 1.4 for prying in a plate thinner than the bolt: 22.739 N per kg.
 *
 * <p>Table 3.4, M10 8.8 (A_s 58.0 mm2), threads in shear: F_v,Rd = 0.6 x 800 x 58/1.25 = 22 272 N, F_t,Rd = 0.9 x 800 x 58/1.25 = 33 408 N.
 * Shear reaches its limit at 1646.9 kg, tension at 1469.2 kg, and stays the most used.
 */
class BoltChecksTest {

    private static final JointFacts.Bolted JOINT = joint("M10", "8.8", 2, 2, JointFacts.Holes.NORMAL,
            Optional.of(FrameShop.measured(0.006)));

    private static Optional<Value> mm(double mm) {
        return Optional.of(FrameShop.measured(mm / 1000));
    }

    private static JointFacts.Bolted joint(String size, String grade, int rows, int columns, JointFacts.Holes holes,
            Optional<Value> plate) {
        return new JointFacts.Bolted("joint", "splice", Optional.of(size + " " + grade), OptionalInt.of(rows), OptionalInt.of(columns),
                mm(60), mm(40),
                mm(30), mm(25), plate, Optional.of("steel"), holes);
    }

    /** A box that is far stronger than its joint; the joint is at the near end of the middle piece. */
    private static FrameShop shop(double kilograms, JointFacts.Bolted joint) {
        return new FrameShop(FrameShop.box("box", 0.120, 0.080, 0.006), 235e6, 360e6).weighs(kilograms).joint(joint)
                .has(bolt("M10", "8.8")).has(bolt("M6", "8.8"))
                .members(m -> m.id().equals("left-1") ? FrameShop.joined(m, Optional.of("joint"), Optional.empty()) : m);
    }

    private static StockFacts.Bolt bolt(String size, String grade) {
        return new StockFacts.Bolt(size + " " + grade, size + " " + grade, Optional.of(size), Optional.of(grade), true);
    }

    private static Finding ask(Check check, double kilograms, JointFacts.Bolted joint) {
        List<Finding> findings = shop(kilograms, joint).ask(check);
        assertEquals(1, findings.size(), findings.toString());
        assertEquals("joint", findings.get(0).objectId());
        return findings.get(0);
    }

    @Test
    void theEndForcesAreThoseOfTheMiddlePiece() {
        // between the supports there is no shear: tension 8.3333 M x 1.4 = 21.452 N per kg
        Finding finding = ask(new BoltStrengthCheck(), 1000, JOINT);
        assertEquals(21_452, finding.demand().orElseThrow().si(), 0.01 * 21_452);
        assertEquals(33_408, finding.capacity().orElseThrow().si(), 1e-6);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertTrue(finding.words().contains("tension"), finding.words());
    }

    @Test
    void boltsAreTightInTheLastTenthAndStopBeyond() {
        // 33 408/21.452 = 1557 kg
        assertEquals(Verdict.TIGHT, ask(new BoltStrengthCheck(), 1480, JOINT).verdict());
        Finding stop = ask(new BoltStrengthCheck(), 1650, JOINT);
        assertEquals(Verdict.STOP, stop.verdict());
        // M12: 0.9 x 800 x 84.3/1.25 = 48 557 N, 0.729
        assertEquals(Optional.of(Verdict.HOLDS), stop.remedies().get(0).after());
        assertTrue(stop.remedies().get(0).words().contains("M12"), stop.remedies().toString());
    }

    @Test
    void aPlateAsThickAsTheBoltDoesNotPry() {
        JointFacts.Bolted thick = joint("M10", "8.8", 2, 2, JointFacts.Holes.NORMAL, mm(10));
        // then shear uses the bolt more, 12 750/22 272 against 15 323/33 408
        assertEquals(12_750, ask(new BoltStrengthCheck(), 1000, thick).demand().orElseThrow().si(), 0.01 * 12_750);
        Finding finding = ask(new PunchingCheck(), 1000, thick);
        assertEquals(15_323, finding.demand().orElseThrow().si(), 0.01 * 15_323);
    }

    @Test
    void shearAndTensionTogetherAtTheOuterEnd() {
        // joint at the far end of the first piece, where V passes: tension 22.739 N per kg, shear through the web 13.524 N per kg
        FrameShop shop = shop(1000, JOINT).members(m -> m.id().equals("left-0")
                ? FrameShop.joined(m, Optional.empty(), Optional.of("joint")) : m);
        Finding finding = shop.ask(new BoltStrengthCheck()).get(0);
        assertEquals(22_739, finding.demand().orElseThrow().si(), 0.01 * 22_739);
        Finding bearing = shop.ask(new BearingCheck()).get(0);
        assertEquals(13_524, bearing.demand().orElseThrow().si(), 0.01 * 13_524);
    }

    @Test
    void bearingOfTheWeakerDirectionCounts() {
        // without shear hypot(3.8462, 5.7692) M = 6.9338 M = 12.7495 N per kg; M10, d0 11, t 6, fu 360, along the member:
        // alpha_b = min(30/33, 60/33 - 0.25, 1) = 0.9091, k1 = min(2.8 x 25/11 - 1.7, 1.4 x 40/11 - 1.7, 2.5) = 2.5;
        // across it: alpha_b = min(25/33, 40/33 - 0.25) = 0.7576, k1 = min(2.8 x 30/11 - 1.7, 1.4 x 60/11 - 1.7, 2.5) = 2.5:
        // 2.5 x 0.7576 x 360 x 10 x 6/1.25 = 32 727 N, reached at 2567 kg
        Finding finding = ask(new BearingCheck(), 2000, JOINT);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(32_727, finding.capacity().orElseThrow().si(), 1);
        assertEquals(2000 * 12.7495, finding.demand().orElseThrow().si(), 0.01 * 2000 * 12.7495);
        assertEquals(Verdict.TIGHT, ask(new BearingCheck(), 2450, JOINT).verdict());
        assertEquals(Verdict.STOP, ask(new BearingCheck(), 2700, JOINT).verdict());
    }

    /**
     * M10 8.8 in 4 mm of f_u 360, end bolt, e1 20, e2 18: Table 3.4 gives 2.5 x 20/33 x 360 x 10 x 4/1.25 = 17 454.5 N, but a single row
     * in a single lap at most 1.5 x 360 x 10 x 4/1.25 = 17 280 N (3.6.1(10), from memory), one part in a hundred less.
     */
    @Test
    void aSingleRowInASingleLapIsLimited() {
        JointUse two = bearing(2);
        assertEquals(17_454.5, two.capacity(), 0.1);
        assertEquals("EN 1993-1-8 Table 3.4", two.clause());
        JointUse one = bearing(1);
        assertEquals(17_280, one.capacity(), 1e-6);
        assertEquals("EN 1993-1-8 3.6.1(10), one row in a single lap", one.clause());
    }

    private static JointUse bearing(int rows) {
        Bolts bolts = new Bolts(BoltSize.M10, BoltGrade.G8_8, BoltResistance.ShearPlane.THREADS, rows, 2, 0.06, 0.06, Optional.of(0.020),
                Optional.of(0.020), Optional.of(0.004), JointFacts.Holes.NORMAL);
        return new BearingCheck().uses(bolts, List.of(new Bolts.Sheet("sheet", Optional.of(0.004), Optional.of(360e6))),
                new BoltForce(10_000, 0, 0), new JointEnd.Action(Situation.atRest(), ForceMoment.ZERO)).get(0);
    }

    @Test
    void wideHolesBearLess() {
        // hole 12, factor 0.8; across: alpha_b = min(25/36, 40/36 - 0.25) = 0.6944: 0.8 x 2.5 x 0.6944 x 17 280 = 24 000 N
        Finding finding = ask(new BearingCheck(), 1000, joint("M10", "8.8", 2, 2, JointFacts.Holes.OVERSIZE, mm(6)));
        assertEquals(24_000, finding.capacity().orElseThrow().si(), 1);
    }

    @Test
    void slotsAndUnknownMeasuresAreNoAnswerForBearing() {
        Finding slot = ask(new BearingCheck(), 100, joint("M10", "8.8", 2, 2, JointFacts.Holes.SLOT, mm(6)));
        assertEquals(Verdict.CANT_SAY, slot.verdict());
        Finding plate = ask(new BearingCheck(), 100, joint("M10", "8.8", 2, 2, JointFacts.Holes.NORMAL, Optional.empty()));
        assertEquals(Verdict.CANT_SAY, plate.verdict());
        assertTrue(plate.missing().get(0).startsWith("thickness of the steel of the plate"), plate.missing().toString());
    }

    @Test
    void headsPunchThroughThinPlates() {
        // Table 3.4: 0.6 pi d_m t fu/1.25 with d_m = (16 + 17.77)/2 = 16.885 mm and the 3 mm plate: 27 499 N at 21.452 N per kg, 1282 kg
        JointFacts.Bolted thin = joint("M10", "8.8", 2, 2, JointFacts.Holes.NORMAL, mm(3));
        Finding finding = ask(new PunchingCheck(), 1000, thin);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(27_499, finding.capacity().orElseThrow().si(), 3);
        assertEquals(Verdict.TIGHT, ask(new PunchingCheck(), 1220, thin).verdict());
        Finding stop = ask(new PunchingCheck(), 1350, thin);
        assertEquals(Verdict.STOP, stop.verdict());
        // M12: d_m 19.015 mm, 30 968 N against 28 960 N: only just. M14: 22.18 mm, 36 122 N: with room to spare, so that one is named.
        assertTrue(stop.remedies().get(0).words().contains("M14"), stop.remedies().toString());
        assertEquals(Verdict.CANT_SAY, ask(new PunchingCheck(), 100,
                joint("M10", "8.8", 2, 2, JointFacts.Holes.NORMAL, Optional.empty())).verdict());
    }

    @Test
    void shearAndTensionOfOneBoltAdd() {
        // Table 3.4: 15 000/22 272 + 25 000/(1.4 x 33 408) = 0.6735 + 0.5345 = 1.2080, though neither alone is at its limit
        Bolts bolts = new Bolts(BoltSize.M10, BoltGrade.G8_8, BoltResistance.ShearPlane.THREADS, 2, 2, 0.06, 0.04, Optional.empty(),
                Optional.empty(), Optional.empty(), JointFacts.Holes.NORMAL);
        JointEnd.Action rest = new JointEnd.Action(Situation.atRest(), ForceMoment.ZERO);
        List<JointUse> uses = new BoltStrengthCheck().uses(bolts, List.of(), new BoltForce(15_000, 0, 25_000), rest);
        assertEquals(1.2080, uses.stream().mapToDouble(JointUse::ratio).max().orElseThrow(), 1e-4);
    }

    @Test
    void anUnknownBoltIsNoAnswer() {
        Finding finding = ask(new BoltStrengthCheck(), 100, joint("M7", "8.8", 2, 2, JointFacts.Holes.NORMAL, mm(6)));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().get(0).startsWith("size of the bolts of splice"), finding.missing().toString());
    }

    @Test
    void oneBoltCannotHoldATurn() {
        Finding finding = ask(new BoltStrengthCheck(), 100, joint("M10", "8.8", 1, 1, JointFacts.Holes.NORMAL, mm(6)));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().get(0).contains("two rows and two columns"), finding.missing().toString());
    }

    @Test
    void aJointThatHoldsNothingIsNotAskedAbout() {
        assertEquals(List.of(), shop(100, JOINT).members((MemberFacts m) -> m).ask(new BoltStrengthCheck()));
    }

    @Test
    void spacingKeepsToTheTable() {
        // Table 3.3, d0 11: 1.2 d0 = 13.2, 2.4 d0 = 26.4; largest 14 t = 84 mm
        assertEquals(Verdict.HOLDS, ask(new SpacingCheck(), 100, JOINT).verdict());
    }

    @Test
    void spacingTooWideForTheSheetIsTight() {
        // 14 x 4 = 56 mm under the 60 mm between the rows
        assertEquals(Verdict.TIGHT, ask(new SpacingCheck(), 100, joint("M10", "8.8", 2, 2, JointFacts.Holes.NORMAL, mm(4))).verdict());
    }

    @Test
    void aHoleTooNearToTheEdgeStops() {
        JointFacts.Bolted near = new JointFacts.Bolted("joint", "splice", Optional.of("M10 8.8"), OptionalInt.of(2), OptionalInt.of(2),
                mm(60), mm(40), mm(30),
                mm(13), mm(6), Optional.of("steel"), JointFacts.Holes.NORMAL);
        Finding finding = ask(new SpacingCheck(), 100, near);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("Too close: the distance from a hole to the edge of the sheet is below the least one.", finding.words());
        assertTrue(finding.atLeast());
        assertEquals(0.0132, finding.demand().orElseThrow().si(), 1e-9);
        assertEquals(0.013, finding.capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void spacingWithoutAnEdgeIsNoAnswer() {
        JointFacts.Bolted open = new JointFacts.Bolted("joint", "splice", Optional.of("M10 8.8"), OptionalInt.of(2), OptionalInt.of(2),
                mm(60), mm(40),
                Optional.empty(), mm(25), mm(6), Optional.of("steel"), JointFacts.Holes.NORMAL);
        assertEquals(Verdict.CANT_SAY, ask(new SpacingCheck(), 100, open).verdict());
    }
}
