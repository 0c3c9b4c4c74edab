package cradlewright.analysis.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of the verdicts and their limits. */
class VerdictTest {

    @Test
    void stopIsGraverThanNotKnowingAndNotKnowingGraverThanTight() {
        assertEquals(Verdict.STOP, Verdict.worst(List.of(Verdict.CANT_SAY, Verdict.STOP, Verdict.TIGHT)));
        assertEquals(Verdict.CANT_SAY, Verdict.worst(List.of(Verdict.TIGHT, Verdict.CANT_SAY, Verdict.HOLDS)));
        assertEquals(Verdict.HOLDS, Verdict.worst(List.of()));
    }

    @Test
    void theLastTenthOfTheCapacityIsTight() {
        assertEquals(Verdict.HOLDS, Verdict.of(899, 1000, 0.10));
        assertEquals(Verdict.TIGHT, Verdict.of(901, 1000, 0.10));
        assertEquals(Verdict.TIGHT, Verdict.of(1000, 1000, 0.10));
        assertEquals(Verdict.STOP, Verdict.of(1000.001, 1000, 0.10));
    }

    @Test
    void numbersThatAreNoneNeverHold() {
        assertEquals(Verdict.CANT_SAY, Verdict.of(Double.NaN, 1000, 0.10));
        assertEquals(Verdict.CANT_SAY, Verdict.of(10, Double.NaN, 0.10));
        assertEquals(Verdict.CANT_SAY, Verdict.of(Double.POSITIVE_INFINITY, 1000, 0.10));
        assertEquals(Verdict.STOP, Verdict.of(1, 0, 0.10));
    }
}
