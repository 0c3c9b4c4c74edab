package cradlewright.analysis.checks.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Two fillets of 88 mm with a throat of 4 mm up the sides of the left rail at its front support, 80 mm apart; S235, f_u 360 MPa.
 * Length that
 * counts, EN 1993-1-8 4.5.1: 88 - 2 x 4 = 80 mm. Moment about the width, lines as elastic section: I = 2 x 80^3/12 = 85 333 mm3,
 * flow at the end
 * M x 40/85 333 mm3 = M x 468.75/m2 = 861.9 N/m per kg, in the throat 215 478 Pa per kg. 4.5.3.3: f_vw,d = 360/(sqrt(3) x 0.8 x
 * 1.25) = 207.85 MPa,
 * reached at 964.6 kg, TIGHT from 868 kg.
 */
class WeldCheckTest {

    private static final double PER_KILOGRAM = 215_478;

    private static Optional<Value> mm(double mm) {
        return Optional.of(FrameShop.measured(mm / 1000));
    }

    private static JointFacts.Welded joint(Optional<Value> throat, int runs) {
        return new JointFacts.Welded("joint", "splice", throat, mm(88), mm(80), runs, Optional.of("steel"));
    }

    private static Finding ask(double kilograms, JointFacts.Welded joint, double wall) {
        List<Finding> findings = new FrameShop(FrameShop.box("box", 0.120, 0.080, wall), 235e6, 360e6).weighs(kilograms).joint(joint)
                .members(m -> m.id().equals("left-1") ? FrameShop.joined(m, Optional.of("joint"), Optional.empty()) : m)
                        .ask(new WeldCheck());
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    @Test
    void holdsWithTheStressOfTwoLines() {
        Finding finding = ask(700, joint(mm(4), 2), 0.006);
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(700 * PER_KILOGRAM, finding.demand().orElseThrow().si(), 0.01 * 700 * PER_KILOGRAM);
        assertEquals(207.85e6, finding.capacity().orElseThrow().si(), 0.01e6);
    }

    @Test
    void isTightInTheLastTenthAndStopsBeyond() {
        assertEquals(Verdict.TIGHT, ask(910, joint(mm(4), 2), 0.006).verdict());
        Finding stop = ask(1000, joint(mm(4), 2), 0.006);
        assertEquals(Verdict.STOP, stop.verdict());
        // 5 mm: 88 - 10 = 78 mm, I = 2 x 78^3/12 = 79 092 mm3, M 39/79 092 mm3/5 mm = 181.3 MPa at 1000 kg: 0.872
        assertEquals(Optional.of(Verdict.HOLDS), stop.remedies().get(0).after());
    }

    @Test
    void aThroatUnderThreeMillimetresDoesNotCount() {
        Finding finding = ask(10, joint(mm(2.5), 2), 0.006);
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().contains("to count"), finding.words());
    }

    @Test
    void unknownThroatAndThinWallsAreNoAnswer() {
        assertEquals(Verdict.CANT_SAY, ask(100, joint(Optional.empty(), 2), 0.006).verdict());
        // hollow sections from 2.5 mm on, EN 1993-1-8 4.1(1) note (from memory)
        assertEquals(Verdict.HOLDS, ask(100, joint(mm(4), 2), 0.0025).verdict());
        Finding thin = ask(100, joint(mm(4), 2), 0.002);
        assertEquals(Verdict.CANT_SAY, thin.verdict());
        assertEquals(List.of(), thin.missing(), "nothing is missing: the rules do not reach so far");
        assertEquals(0.0025, thin.demand().orElseThrow().si(), 1e-12);
        assertEquals(0.002, thin.capacity().orElseThrow().si(), 1e-12);
        assertTrue(thin.atLeast());
    }

    @Test
    void noRunsAreNoAnswer() {
        assertEquals(Verdict.CANT_SAY, ask(100, joint(mm(4), 0), 0.006).verdict());
    }
}
