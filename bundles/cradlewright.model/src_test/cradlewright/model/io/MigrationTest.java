package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.Car;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Frozen samples of every older form still open, and say so. */
class MigrationTest {

    private static final Path SAMPLES = Path.of("src_test/samples");

    @TempDir
    Path directory;

    @BeforeEach
    void copySample() throws IOException {
        Path sample = SAMPLES.resolve("schema-1");
        try (Stream<Path> files = Files.walk(sample)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = directory.resolve(sample.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }

    @Test
    void thereIsOneMigrationAndOneSampleForEachStep() {
        assertEquals(IntStream.range(1, Schema.CURRENT).boxed().toList(),
                Schema.migrations().stream().map(Migration::from).toList());
        for (Migration migration : Schema.migrations()) {
            assertTrue(Files.isDirectory(SAMPLES.resolve("schema-" + migration.from())), migration.what());
        }
    }

    @Test
    void weightsBecomeMasses() {
        ShopFolder shop = ShopFolder.open(directory);
        Car car = shop.cars().get(0);
        assertEquals("17.5 kg weighed", car.getPieces().get(0).getParts().get(0).getMass().text());
        assertNull(car.getPieces().get(0).getParts().get(1).getMass());
        assertEquals("25 kg guessed", car.getTemporaryLoads().get(0).getMass().text());
        assertEquals(Schema.CURRENT, car.getSchema());
        assertTrue(car.isDraft());
    }

    @Test
    void isToldAsANoteByFileAndNothingElseIs() {
        ShopFolder shop = ShopFolder.open(directory);
        assertEquals(List.of(
                "shop.cwshop:4: the file was brought from form 1 to 2: weights of parts and temporary loads are now called mass; "
                        + "nothing to do: saving writes the new form",
                "cars/grey-van.cwcar:4: the file was brought from form 1 to 2: weights of parts and temporary loads are now "
                        + "called mass; nothing to do: saving writes the new form"),
                shop.problems().stream().map(ReadProblem::text).toList());
        assertTrue(shop.problems().stream().allMatch(problem -> problem.severity() == Severity.NOTE));
        assertTrue(shop.files().stream().allMatch(file -> file.state() == ShopFile.State.WRITABLE));
    }

    @Test
    void linesAreThoseOfTheOldFile() throws IOException {
        Path file = directory.resolve("cars/grey-van.cwcar");
        Files.writeString(file, Files.readString(file).replace("weight=\"25 kg guessed\"", "weight=\"-25 kg guessed\""));
        ReadProblem problem = ValueRules.check(ShopFolder.open(directory)).get(0);
        assertEquals(26, problem.line());
        assertEquals("temporary load \"box of trim\"", problem.objectName());
    }

    @Test
    void savingWritesTheNewFormOnceAndForAll() throws IOException {
        ShopFolder shop = ShopFolder.open(directory);
        RoundTripTest.saveAll(shop);
        String text = Files.readString(directory.resolve("cars/grey-van.cwcar"));
        assertFalse(text.contains("weight"), text);
        assertTrue(text.contains("schema=\"2\""), text);
        assertEquals(List.of(), ShopFolder.open(directory).problems());
    }

    @Test
    void reservedNameInTheNewFormIsAnError() throws IOException {
        Path file = directory.resolve("cars/grey-van.cwcar");
        Files.writeString(file, Files.readString(file).replace("schema=\"1\"", "schema=\"2\""));
        ShopFolder shop = ShopFolder.open(directory);
        ShopFile car = shop.files().get(1);
        assertEquals(ShopFile.State.INCOMPLETE, car.state());
        assertEquals(SaveOutcome.Kind.REFUSED, new ShopWriter(shop, Clock.systemUTC()).save(car).kind());
    }
}
