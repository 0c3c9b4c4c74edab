package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever the metamodel allows comes back from disk as it was, and writes again as the same bytes. */
class RandomRoundTripTest {

    @Property(seed = "4217", tries = 60)
    void anyShopSurvivesTheDisk(@ForAll long seed) throws IOException {
        Path directory = Files.createTempDirectory("shop");
        try {
            ShopFolder built = new RandomShop(new Random(seed)).build(directory);
            RoundTripTest.saveAll(built);
            ShopFolder read = ShopFolder.open(directory);
            assertEquals(List.of(), read.problems().stream().map(ReadProblem::text).toList());
            for (ShopFile original : built.files()) {
                ShopFile again = read.files().stream().filter(f -> f.path().equals(original.path())).findFirst().orElseThrow();
                assertEquals(ShopText.of(original), ShopText.of(again));
                byte[] first = Files.readAllBytes(directory.resolve(again.path()));
                new ShopWriter(read, Clock.systemUTC()).save(again);
                assertArrayEquals(first, Files.readAllBytes(directory.resolve(again.path())));
            }
        } finally {
            try (Stream<Path> files = Files.walk(directory)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
