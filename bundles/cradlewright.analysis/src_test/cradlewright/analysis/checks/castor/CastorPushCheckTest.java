package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.StockFacts.Tread;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 900 kg on polymer wheels of 125 mm: 176.520 N at two in a hundred, 706.079 N by a lever arm of 5 mm (push and pull page of an
 * authority
 * and calculator of a drive maker); 150 N and 70 N for each woman, 200 N and 100 N for each man, to start and to keep rolling.
 */
class CastorPushCheckTest {

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorPushCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void fiveAreTooMany() {
        Finding finding = only(new RollingShop().weighs(760, 0).onFall(0));
        // 706.079/150 = 4.7.
        assertEquals(5, finding.demand().orElseThrow().si(), 0);
        assertEquals(Verdict.TIGHT, finding.verdict());
        assertEquals(176.520, finding.inputs().get(1).amount().si(), 1e-3);
        assertEquals(706.079, finding.inputs().get(2).amount().si(), 1e-3);
        // Turned across: three times (common practice); men: 706.079/200 = 3.5.
        assertEquals(3 * 706.079, finding.inputs().get(3).amount().si(), 3e-3);
        assertEquals(4, finding.inputs().get(4).amount().si(), 0);
    }

    @Test
    void fourHold() {
        // 740 kg: 580.55/150 = 3.9.
        Finding finding = only(new RollingShop().weighs(600, 0).onFall(0));
        assertEquals(4, finding.demand().orElseThrow().si(), 0);
        assertEquals(Verdict.HOLDS, finding.verdict());
    }

    @Test
    void steepIsTight() {
        // Six in a hundred is the most for transport by hand (ASR A1.8 table 1).
        assertEquals(Verdict.HOLDS, only(new RollingShop().weighs(10, 0).onFall(0.06)).verdict());
        assertEquals("The slope is steep for pushing by hand.", only(new RollingShop().weighs(10, 0).onFall(0.061)).words());
    }

    @Test
    void cantSayWithoutTreadOrForSteel() {
        assertEquals(Verdict.CANT_SAY, only(new RollingShop().weighs(760, 0).tread(Optional.empty())).verdict());
        assertEquals(Verdict.CANT_SAY, only(new RollingShop().weighs(760, 0).tread(Optional.of(Tread.STEEL))).verdict());
        assertEquals(List.of("wheel diameter, castor type type"), only(new RollingShop().weighs(760, 0)
                .diameter(Optional.empty())).missing());
    }
}
