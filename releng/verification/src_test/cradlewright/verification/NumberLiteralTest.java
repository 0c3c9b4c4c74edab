package cradlewright.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NumberLiteralTest {

    private static final String SOURCE = """
            final class Sample {
                static final String TEXT = "k = 3.5 E";
                @SuppressWarnings("7")
                static double of(double[] x, int n) {
                    double sum = 0.0;
                    for (int i = 0; i < n + 5; i++) {
                        sum += 0.8e-3 * x[i % 3] / 12 + Math.pow(x[0], 3) + 2 * 1.0 + Math.pow(x[1], 2);
                    }
                    return n > 9 ? sum : 1_000 * sum;
                }
            }
            """;

    @Test
    void numbersOfThePhysicsAreFoundAndCountsAreNot(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("Sample.java"), SOURCE);
        List<NumberLiteral> found = NumberLiteral.in(List.of(file), "");
        assertEquals(List.of("0.8e-3", "12", "3", "2", "1.0", "1_000"), found.stream().map(NumberLiteral::text).toList());
        assertEquals(List.of(7, 7, 7, 7, 7, 9), found.stream().map(NumberLiteral::line).toList());
        assertEquals(1010, Double.parseDouble(found.get(5).changed()), 1e-9);
        String changed = found.get(1).changeIn(SOURCE);
        assertTrue(changed.contains("x[i % 3] / 1.212000000000e+01 + Math"), changed);
        Files.writeString(file, changed);
        assertTrue(Sources.compile(List.of(file), "", folder.resolve("classes")));
    }
}
