package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.Named;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written reads back as the same objects, and writes again as the same bytes. */
class RoundTripTest {

    @TempDir
    Path directory;

    private ShopFolder built;

    @BeforeEach
    void save() throws IOException {
        built = SampleShop.build(directory);
        saveAll(built);
    }

    static void saveAll(ShopFolder shop) throws IOException {
        ShopWriter writer = new ShopWriter(shop, Clock.systemUTC());
        for (ShopFile file : shop.files()) {
            SaveOutcome outcome = writer.save(file);
            assertEquals(SaveOutcome.Kind.SAVED, outcome.kind(), outcome.message());
        }
    }

    @Test
    void everyFileReadsWithoutComplaint() {
        ShopFolder read = ShopFolder.open(directory);
        assertEquals(List.of(), read.problems().stream().map(ReadProblem::text).toList());
        assertEquals(List.of(), ValueRules.check(read).stream().map(ReadProblem::text).toList());
        assertEquals(7, read.files().size());
        assertTrue(read.files().stream().allMatch(file -> file.state() == ShopFile.State.WRITABLE));
    }

    @Test
    void objectsAreEqualInContentAndReferences() {
        ShopFolder read = ShopFolder.open(directory);
        for (int i = 0; i < built.files().size(); i++) {
            ShopFile original = built.files().get(i);
            ShopFile again = read.files().stream().filter(file -> file.path().equals(original.path())).findFirst().orElseThrow();
            Contents.walk(original.root().orElseThrow(), object -> assertFalse(object.eIsProxy()));
            assertEquals(ShopText.of(original), ShopText.of(again), original.path());
        }
        Part bonnet = (Part) find(read.cars().get(0), "bonnet");
        assertSame(bonnet, read.jobs().orElseThrow().getJobs().get(0).getOperations().get(0).getTakesOff().get(0));
        assertSame(read.dollies().get(0), read.cars().get(0).getSetups().get(0).getDolly());
        assertSame(read.find(bonnet.getId()).orElseThrow(), bonnet);
    }

    @Test
    void savingWhatWasReadChangesNoByte() throws IOException {
        ShopFolder read = ShopFolder.open(directory);
        for (ShopFile file : read.files()) {
            byte[] before = Files.readAllBytes(directory.resolve(file.path()));
            new ShopWriter(read, Clock.systemUTC()).save(file);
            assertArrayEquals(before, Files.readAllBytes(directory.resolve(file.path())), file.path());
        }
    }

    @Test
    void eachAttributeStandsOnALineOfItsOwnAndLinesEndAsOnUnix() throws IOException {
        for (ShopFile file : built.files()) {
            String text = Files.readString(directory.resolve(file.path()));
            assertFalse(text.contains("\r"), file.path());
            assertTrue(text.endsWith("\n"), file.path());
            text.lines().skip(1).forEach(line -> assertTrue(line.split("=\"", -1).length <= 2, file.path() + ": " + line));
        }
    }

    @Test
    void missingStaysMissing() {
        Car car = ShopFolder.open(directory).cars().get(0);
        assertNull(car.getConstruction());
        assertNull(car.getMounts().get(0).getSheetThickness());
        assertNull(car.getMounts().get(0).getBoltCount());
        assertNull(car.getSetups().get(0).getContacts().get(0).getHold());
        assertNull(car.getSetups().get(0).getOutdoors());
    }

    @Test
    void equalValuesInAListAreAllKeptInOrder() {
        Car car = ShopFolder.open(directory).cars().get(0);
        assertEquals(List.of("4 mm", "4 mm", "5.5 mm"),
                car.getApertureReadings().get(0).getGaps().stream().map(Object::toString).toList());
        assertEquals(List.of("boot lid", "bonnet"), car.getStages().get(0).getOn().stream().map(Named::getName).toList());
    }

    @Test
    void objectsKnowTheirLines() throws IOException {
        ShopFolder read = ShopFolder.open(directory);
        for (ShopFolder shop : List.of(built, read)) {
            ShopFile file = shop.files().stream().filter(f -> f.kind() == FileKind.CAR).findFirst().orElseThrow();
            List<String> lines = Files.readAllLines(directory.resolve(file.path()));
            Part bonnet = (Part) find(shop.cars().get(0), "bonnet");
            assertEquals("<parts", lines.get(file.lineOf(bonnet) - 1).strip());
            assertEquals("mass=\"17.5 kg weighed\"", lines.get(file.lineOf(bonnet, "mass") - 1).strip());
        }
    }

    @Test
    void referencesAcrossFilesNameTheIdOnly() throws IOException {
        String floor = Files.readString(directory.resolve("floor.cwfloor"));
        assertTrue(floor.contains("href=\"shop:/#" + built.cars().get(0).getVisits().get(0).getId() + "\""), floor);
        assertFalse(floor.contains("cwcar"), floor);
    }

    private static Named find(Car car, String name) {
        List<Named> found = new ArrayList<>();
        Contents.walk(car, object -> {
            if (object instanceof Named named && name.equals(named.getName())) {
                found.add(named);
            }
        });
        return found.get(0);
    }
}
