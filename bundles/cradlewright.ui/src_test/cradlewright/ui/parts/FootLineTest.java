package cradlewright.ui.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.standing.StageWeight;
import cradlewright.analysis.standing.Weight;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.MassPoint;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What stands at the foot: sums by hand, give or take as root of the sum of squares times two (JCGM 100, 5.1.2 and 6.3.3; from memory). */
class FootLineTest {

    private static final Vec3 NONE = new Vec3(0, 0, 0);
    private static final Weight TWO = new Weight(List.of(new MassPoint(30, new Vec3(1, -0.5, 0.8), 0.3, NONE, MassPoint.NO_COMMON_SCALE),
            new MassPoint(10, new Vec3(2, 0.5, 0.4), 0.4, NONE, MassPoint.NO_COMMON_SCALE)), List.of("glass: mass"), 10, List.of("box"));

    @Test
    void theFootShowsTheSumInTheUnitsOfTheReader() {
        FootLine line = FootLine.of(List.of(new StageWeight("s", "bare", Optional.empty(), TWO)), UnitSystem.METRIC).get(0);
        assertEquals("40.0 ± 1.0 kg", line.mass(), "30 + 10, twice the root of 0.09 + 0.16");
        assertEquals("1250.0", line.x().replaceFirst(" ±.*", ""), "(30 + 20) / 40 m");
        assertEquals("-250.0", line.y().replaceFirst(" ±.*", ""));
        assertEquals("glass: mass", line.missing());
        assertEquals("10.0 kg: box", line.guessed());
        assertEquals("88.2 ± 2.2 lb", FootLine.of(List.of(new StageWeight("s", "bare", Optional.empty(), TWO)), UnitSystem.INCH)
                .get(0).mass(), "40 / 0.45359237");
    }

    @Test
    void itIsTheNumberOfTheCommandLine() {
        String words = BalanceWords.mass(TWO.estimate(), UnitSystem.METRIC);
        FootLine line = FootLine.of(List.of(new StageWeight("s", "bare", Optional.empty(), TWO)), UnitSystem.METRIC).get(0);
        assertEquals(words, line.mass().replace(" ± ", " kg, give or take "));
    }

    @Test
    void nothingKnownIsAWordAndNotZero() {
        Weight none = new Weight(List.of(), List.of("glass: mass"), 0, List.of());
        FootLine line = FootLine.of(List.of(new StageWeight("s", "bare", Optional.of("shell"), none)), UnitSystem.METRIC).get(0);
        assertEquals("not known", line.mass());
        assertEquals("", line.x());
    }
}
