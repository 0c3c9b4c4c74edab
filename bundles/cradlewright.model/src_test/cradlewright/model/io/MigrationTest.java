package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.job.JobBook;
import cradlewright.model.job.Operation;
import cradlewright.model.job.SignOff;
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
    void copyOldest() throws IOException {
        copy("schema-1", directory);
    }

    private static void copy(String name, Path directory) throws IOException {
        Path sample = SAMPLES.resolve(name);
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
        List<String> expected = Stream.of("shop.cwshop:4", "cars/grey-van.cwcar:4").flatMap(where -> Schema.migrations().stream()
                .map(migration -> where + ": the file was brought from form " + migration.from() + " to " + (migration.from() + 1) + ": "
                        + migration.what() + "; nothing to do: saving writes the new form")).toList();
        assertEquals(expected, shop.problems().stream().map(ReadProblem::text).toList());
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
        assertTrue(text.contains("schema=\"" + Schema.CURRENT + "\""), text);
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

    @Test
    void whatCouldNotBeSaidStaysUnsaidAndTheRestStays() throws IOException {
        Path second = directory.resolve("second");
        copy("schema-2", second);
        ShopFolder shop = ShopFolder.open(second);
        assertTrue(shop.problems().stream().allMatch(problem -> problem.severity() == Severity.NOTE), shop.problems().toString());
        assertNull(shop.dollies().get(0).getHeightsTaken());
        assertNull(shop.cars().get(0).getSetups().get(0).getShimTarget());
        JobBook jobs = shop.jobs().orElseThrow();
        Operation operation = jobs.getJobs().get(0).getOperations().get(0);
        assertTrue(operation.isDone());
        assertNull(operation.getKind());
        assertNull(operation.getStarted());
        SignOff signOff = jobs.getHoldPoints().get(0).getSignOffs().get(0);
        assertEquals("Hanna", signOff.getBy());
        assertNull(signOff.getVisit());
        assertNull(jobs.getWaits().get(0).getEnded());
    }

    @Test
    void aRockingEndOfASecondFormAsksWhichMemberTurns() throws IOException {
        Path second = directory.resolve("second");
        copy("schema-2", second);
        Path file = second.resolve("dollies/1 plain.cwdolly");
        Files.writeString(file, Files.readString(file).replace("build=\"bought\"",
                "build=\"bought\"\n    note=\"Blue.\"\n    rockingEnd=\"true\""));
        ShopFolder shop = ShopFolder.open(second);
        assertTrue(shop.problems().stream().allMatch(problem -> problem.severity() == Severity.NOTE), shop.problems().toString());
        assertEquals("Blue. It has a rocking end: say which member turns on its pin, turnsFrom or turnsTo.", shop.dollies().get(0)
                .getNote());
    }

    @Test
    void onlyTheNumberOfASecondFormChanges() throws IOException {
        Path second = directory.resolve("second");
        copy("schema-2", second);
        RoundTripTest.saveAll(ShopFolder.open(second));
        Path sample = SAMPLES.resolve("schema-2");
        try (Stream<Path> files = Files.walk(sample)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertEquals(Files.readString(file).replace("schema=\"2\"", "schema=\"" + Schema.CURRENT + "\""),
                        Files.readString(second.resolve(sample.relativize(file).toString())), file.toString());
            }
        }
    }
}
