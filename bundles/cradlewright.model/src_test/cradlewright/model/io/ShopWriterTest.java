package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.Shop;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.VehicleFactory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saving replaces a file wholly or not at all, and never what somebody else wrote. */
class ShopWriterTest {

    private static final Instant NOON = Instant.parse("2026-03-31T12:00:00Z");

    @TempDir
    Path directory;

    private ShopFolder shop;
    private ShopFile file;
    private Shop root;
    private Path path;

    @BeforeEach
    void begin() throws IOException {
        shop = SampleShop.build(directory);
        RoundTripTest.saveAll(shop);
        file = shop.files().get(0);
        root = shop.shop().orElseThrow();
        path = directory.resolve("shop.cwshop");
    }

    private SaveOutcome saveAt(Instant time) throws IOException {
        return new ShopWriter(shop, Clock.fixed(time, ZoneOffset.UTC)).save(file);
    }

    @Test
    void keepsTheLastThreeVersions() throws IOException {
        byte[][] written = new byte[6][];
        written[0] = Files.readAllBytes(path);
        for (int i = 1; i < written.length; i++) {
            root.setName("name " + i);
            assertEquals(SaveOutcome.Kind.SAVED, saveAt(NOON.plus(Duration.ofMinutes(i))).kind());
            written[i] = Files.readAllBytes(path);
        }
        List<Path> kept = kept();
        assertEquals(List.of("20260331-120300-000", "20260331-120400-000", "20260331-120500-000"),
                kept.stream().map(version -> version.getFileName().toString()).toList());
        for (int i = 0; i < kept.size(); i++) {
            assertArrayEquals(written[i + 2], Files.readAllBytes(kept.get(i)));
        }
    }

    @Test
    void tellsWhetherSavingWouldLayTheFileOutAnew() throws IOException {
        ShopWriter writer = new ShopWriter(shop, Clock.fixed(NOON, ZoneOffset.UTC));
        assertFalse(writer.laysOutAnew(file));
        Files.writeString(path, Files.readString(path).replaceFirst("\n    schema", " schema"));
        assertTrue(writer.laysOutAnew(file));
        Files.delete(path);
        assertFalse(writer.laysOutAnew(file));
    }

    @Test
    void twoSavesInOneMomentKeepBothVersions() throws IOException {
        saveAt(NOON);
        root.setName("again");
        saveAt(NOON);
        assertEquals(2, kept().size());
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> versions = Files.list(directory.resolve(".versions/shop.cwshop"))) {
            return versions.sorted().toList();
        }
    }

    @Test
    void leavesNoScratchFileBehind() throws IOException {
        saveAt(NOON);
        try (Stream<Path> files = Files.walk(directory)) {
            assertEquals(List.of(), files.map(Path::toString).filter(name -> name.endsWith(".new")).toList());
        }
    }

    @Test
    void aFileChangedUnderneathStaysAndMineStandsBesideIt() throws IOException {
        String theirs = Files.readString(path).replace("Shed behind the mill", "Shed of somebody else");
        Files.writeString(path, theirs);
        root.setName("my shed");
        SaveOutcome outcome = saveAt(NOON);
        assertEquals(SaveOutcome.Kind.KEPT_AS_MINE, outcome.kind());
        assertEquals(theirs, Files.readString(path));
        assertEquals(directory.resolve("shop.cwshop.mine"), outcome.path());
        assertTrue(Files.readString(outcome.path()).contains("my shed"));
        assertEquals("shop.cwshop was changed by somebody else since it was read and was left alone; what you have is now in "
                + "shop.cwshop.mine. Open the shop again and compare.", outcome.message());
        assertEquals(directory.resolve("shop.cwshop.mine-2"), saveAt(NOON).path());
        assertEquals(List.of(), ShopFolder.open(directory).problems());
    }

    @Test
    void aFileDeletedUnderneathIsNotBroughtBackSilently() throws IOException {
        Files.delete(path);
        assertEquals(SaveOutcome.Kind.KEPT_AS_MINE, saveAt(NOON).kind());
        assertFalse(Files.exists(path));
    }

    @Test
    void aNewFileDoesNotOverwriteOneThatAppearedMeanwhile() throws IOException {
        Path appeared = directory.resolve("cars/blue.cwcar");
        Files.writeString(appeared, "somebody else's");
        Car car = new IdSource(new Random(1)).give(VehicleFactory.eINSTANCE.createCar());
        ShopFile blue = shop.add(FileKind.CAR, "blue", car);
        assertEquals(SaveOutcome.Kind.KEPT_AS_MINE, new ShopWriter(shop, Clock.systemUTC()).save(blue).kind());
        assertEquals("somebody else's", Files.readString(appeared));
    }

    @Test
    void whatCannotBeWrittenLeavesTheOldFileWhole() throws IOException {
        byte[] before = Files.readAllBytes(path);
        root.setName("a character that XML cannot hold: \u0001");
        SaveOutcome outcome = saveAt(NOON);
        assertEquals(SaveOutcome.Kind.REFUSED, outcome.kind());
        assertTrue(outcome.message().contains("cannot be written"), outcome.message());
        assertArrayEquals(before, Files.readAllBytes(path));
    }

    @Test
    void aReferenceToAnObjectOutsideTheShopIsNotWritten() throws IOException {
        ShopFile carFile = shop.files().stream().filter(f -> f.kind() == FileKind.CAR).findFirst().orElseThrow();
        byte[] before = Files.readAllBytes(directory.resolve(carFile.path()));
        shop.cars().get(0).getSetups().get(0).setLift(FixtureFactory.eINSTANCE.createLift());
        assertEquals(SaveOutcome.Kind.REFUSED, new ShopWriter(shop, Clock.systemUTC()).save(carFile).kind());
        assertArrayEquals(before, Files.readAllBytes(directory.resolve(carFile.path())));
    }

    @Test
    void danglingReferencesSurviveReadingAndSaving() throws IOException {
        Files.delete(directory.resolve("dollies/dolly 1.cwdolly"));
        ShopFolder read = ShopFolder.open(directory);
        assertEquals(2, read.problems().size(), read.problems()::toString);
        ShopFile car = read.files().stream().filter(f -> f.kind() == FileKind.CAR).findFirst().orElseThrow();
        byte[] before = Files.readAllBytes(directory.resolve(car.path()));
        read.cars().get(0).setNote("waits for its dolly");
        assertEquals(SaveOutcome.Kind.SAVED, new ShopWriter(read, Clock.systemUTC()).save(car).kind());
        String after = Files.readString(directory.resolve(car.path()));
        assertEquals(new String(before, StandardCharsets.UTF_8),
                after.replace("    note=\"waits for its dolly\">\n", "")
                        .replace("name=\"Green saloon\"\n", "name=\"Green saloon\">\n"));
    }

    @Test
    void aSecondFileOfOnePathAndAWrongRootAreRefused() {
        Car car = VehicleFactory.eINSTANCE.createCar();
        assertThrows(IllegalArgumentException.class, () -> shop.add(FileKind.CAR, "Green Saloon", car));
        assertThrows(IllegalArgumentException.class, () -> shop.add(FileKind.CAR, "red", FixtureFactory.eINSTANCE.createDolly()));
        assertThrows(IllegalArgumentException.class, () -> shop.add(FileKind.CAR, "../red", car));
    }
}
