package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * EN 1993-1-1 Table 5.2, S235: internal parts under even push are of class 4 above c/t 42, round tubes above d/t 90. EN 1993-1-3
 * Table 5.1 (from memory): outstands up to 50.
 */
class SlenderCheckTest {

    private static List<Finding> ask(StockFacts.Section section) {
        return new FrameShop(section, 235e6, 360e6).ask(new SlenderCheck());
    }

    @Test
    void aStockyBoxIsNotNamed() {
        // c/t about 57/3 - 3 = 16
        assertEquals(List.of(), ask(FrameShop.box("box", 0.060, 0.060, 0.003)));
    }

    @Test
    void aThinBoxIsNamedAndHolds() {
        // c/t about 97
        List<Finding> findings = ask(FrameShop.box("box", 0.100, 0.100, 0.001));
        assertEquals(8, findings.size());
        assertEquals(Verdict.HOLDS, findings.get(0).verdict());
        assertTrue(findings.get(0).words().contains("class four"), findings.get(0).words());
    }

    @Test
    void aVeryThinRoundTubeIsNotCovered() {
        // d/t = 100 against 90
        StockFacts.Tube tube = new StockFacts.Tube("tube", "tube", Optional.of(FrameShop.measured(0.100)),
                Optional.of(FrameShop.measured(0.001)));
        assertEquals(Verdict.CANT_SAY, ask(tube).get(0).verdict());
    }

    @Test
    void aFlangeBeyondTheRangeIsNotCovered() {
        // outstand about (80 - 1)/1 = 78 against 50
        StockFacts.Folded channel = new StockFacts.Folded("channel", "channel", StockFacts.Shape.CHANNEL,
                Optional.of(FrameShop.measured(0.080)),
                Optional.of(FrameShop.measured(0.080)), Optional.empty(), Optional.of(FrameShop.measured(0.001)),
                Optional.of(FrameShop.measured(0.001)), List.of());
        Finding finding = ask(channel).get(0);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(List.of(), finding.missing());
        assertTrue(finding.remedies().get(0).words().contains("thicker sheet"), finding.remedies().toString());
    }
}
