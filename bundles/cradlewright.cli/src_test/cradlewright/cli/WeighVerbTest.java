package cradlewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Four readings at four places; expected numbers by moments, worked by hand. */
class WeighVerbTest {

    @Test
    void fourReadingsGiveMassAndBalancePoint() {
        // 320 kg; (180 x 0.30 + 140 x 2.10)/320 = 1.0875 m; (-4 x 0.55 - 2 x 0.50)/320 = -0.0100 m; 2 sqrt(4 x 0.5^2) = 2.0 kg.
        Run run = Run.of("weigh", "300 -550 = 92", "300 550 = 88 kg", "2.1m -500=71", "2100 500 = 69", "--scales", "1");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.flat().startsWith("Weighs 320 kg, give or take 2.0 kg. Balance point 1088 mm behind the marks' zero"), run.out());
        assertTrue(run.flat().contains("10 mm to the left"), run.out());
        assertEquals(List.of(), run.untidy());
    }

    @Test
    void whatLiesAheadOfTheZeroBeginsWithAMinus() {
        // (-20 x 200 + 60 x 100)/300 = 6.667 in behind; (-18 x 200 + 18 x 100)/300 = 6 in to the left.
        Run run = Run.of("weigh", "--units", "inch", "-20 -18 = 200", "60 18 = 100");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.flat().contains("Weighs 300 lb") && run.flat().contains("6.667 in behind") && run.flat()
                .contains("6.000 in to the left"),
                run.out());
    }

    @ParameterizedTest
    @CsvSource({"1 = 3, back", "1 2 3 = 4, back", "1 2, back", "1 2 = x, does not begin with a number", "1 2 = 3 mm, kg",
        "1 2 = -4, less than nothing", "1 2 = 0, show nothing"})
    void whatCannotBeReadIsNamedWithItsMend(String reading, String words) {
        Run run = Run.of("weigh", reading);
        assertEquals(3, run.code(), run.out());
        assertTrue(run.err().contains(words), run.err());
    }

    @Test
    void noScaleIsExact() {
        assertEquals(3, Run.of("weigh", "1 2 = 3", "--scales", "0").code());
        assertEquals(3, Run.of("weigh").code());
    }

    @Test
    void aSlipOfThePenIsNoWeight() {
        for (String reading : List.of("860 -470 = 1e308", "1e300 0 = 5", "0 0 = 100001 kg")) {
            Run run = Run.of("weigh", reading);
            assertEquals(3, run.code(), run.err());
            assertTrue(run.err().contains("is beyond anything in a shop"), run.err());
        }
        assertEquals(3, Run.of("weigh", "1 2 = 3", "--scales", "1e200").code());
        assertEquals(0, Run.of("weigh", "0 0 = 100000 kg").code());
    }
}
