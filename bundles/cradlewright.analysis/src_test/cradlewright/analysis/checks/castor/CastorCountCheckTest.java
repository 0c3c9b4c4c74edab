package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.testshop.RollingShop;
import java.util.List;
import org.junit.jupiter.api.Test;

class CastorCountCheckTest {

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new CastorCountCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void threeOrFourHold() {
        assertEquals(Verdict.HOLDS, only(new RollingShop()).verdict());
        assertEquals(Verdict.HOLDS, only(new RollingShop().castors(3)).verdict());
    }

    @Test
    void twoFallOver() {
        assertEquals(Verdict.STOP, only(new RollingShop().castors(2)).verdict());
    }

    @Test
    void oneLineFallsOver() {
        Finding finding = only(new RollingShop().halfWidth(0));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("All castors stand in one line: the dolly falls over.", finding.words());
    }

    @Test
    void aFrameOnFeetAloneIsNotAsked() {
        assertEquals(List.of(), new RollingShop().castors(0).feet(0.6, true).ask(new CastorCountCheck()));
    }
}
