package cradlewright.ui.wizards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.Units;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.io.ValueRules;
import cradlewright.model.job.Person;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Shops and cars that the wizards make are files without faults; what nobody said is empty, what is guessed says so. */
class ShopAndCarPlanTest {

    @TempDir
    Path home;
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        folder = home.resolve("shed");
        new ShopPlan("Shed", Units.INCH, ZoneId.of("Europe/Dublin"), List.of("A. Fitter", "B. Welder")).write(folder);
    }

    private ShopFile car(CarKind kind, boolean guessed) throws IOException {
        ShopFolder shop = ShopFolder.open(folder);
        ShopStack stack = new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
        IdSource ids = IdSource.secure();
        Car car = ids.give(VehicleFactory.eINSTANCE.createCar());
        car.setName("new one");
        List<CarPlan.PlannedPart> parts = kind.pieces().stream().flatMap(piece -> piece.parts().stream()
                .map(part -> new CarPlan.PlannedPart(piece.name(), part,
                        guessed ? Optional.of(Measured.of(part.mass(), Unit.KILOGRAM, Source.GUESSED)) : Optional.empty()))).toList();
        CarPlan plan = new CarPlan(kind, 4, guessed ? Optional.of(new CarPlan.Size(4000, 1500)) : Optional.empty(), parts);
        NewFile.make(stack, FileKind.CAR, "new one", car, "New Car", List.of(), () -> plan.fill(car, ids));
        assertEquals(1, stack.history().size());
        stack.undo();
        assertTrue(car.getPieces().isEmpty() && car.getMounts().isEmpty());
        ShopFolder read = ShopFolder.open(folder);
        assertEquals(List.of(), read.problems());
        assertEquals(List.of(), ValueRules.check(read));
        return read.files().stream().filter(file -> file.kind() == FileKind.CAR).findFirst().orElseThrow();
    }

    @Test
    void aNewShopHoldsWhatWasTypedAndNothingIsWrongWithIt() {
        ShopFolder shop = ShopFolder.open(folder);
        assertEquals(List.of(), shop.problems());
        assertEquals(List.of(), ValueRules.check(shop));
        assertEquals("Shed", shop.shop().orElseThrow().getName());
        assertEquals("Europe/Dublin", shop.shop().orElseThrow().getZone());
        assertEquals(Units.INCH, shop.shop().orElseThrow().getUnits());
        assertEquals(List.of("A. Fitter", "B. Welder"), shop.jobs().orElseThrow().getPeople().stream().map(Person::getName).toList());
        assertTrue(shop.stock().isPresent() && shop.gear().isPresent() && shop.floor().isPresent());
    }

    @Test
    void aShopIsNotWrittenOverAnother() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("shop.cwshop"));
        ShopPlan other = new ShopPlan("Other", Units.METRIC, ZoneId.of("UTC"), List.of());
        assertTrue(assertThrows(IOException.class, () -> other.write(folder)).getMessage().contains("There is a shop"));
        assertEquals(new String(before), Files.readString(folder.resolve("shop.cwshop")));
    }

    @ParameterizedTest
    @EnumSource(CarKind.class)
    void whatNobodySaidIsEmpty(CarKind kind) throws IOException {
        Car car = (Car) car(kind, false).root().orElseThrow();
        assertEquals(List.of("1L", "1R", "2L", "2R", "3L", "3R", "4L", "4R"), car.getMounts().stream().map(Mount::getName).toList());
        List<Part> parts = car.getPieces().stream().flatMap(piece -> piece.getParts().stream()).toList();
        assertEquals(kind.pieces().stream().mapToInt(piece -> piece.parts().size()).sum(), parts.size());
        assertEquals(parts, car.getStages().get(0).getOn());
        for (Part part : parts) {
            assertNull(part.getMass());
            assertNull(part.getPosition());
            assertFalse(part.getName().isBlank());
        }
        car.getMounts().forEach(mount -> assertNull(mount.getPosition()));
    }

    @ParameterizedTest
    @EnumSource(CarKind.class)
    void whatIsGuessedSaysSoAndIsAlikeOnBothSides(CarKind kind) throws IOException {
        Car car = (Car) car(kind, true).root().orElseThrow();
        car.getPieces().forEach(piece -> piece.getParts().forEach(part -> {
            assertEquals(Source.GUESSED, part.getMass().source());
            assertEquals(Source.GUESSED, part.getPosition().source());
            assertTrue(part.getPosition().x() > 0 && part.getPosition().x() < 4000 && Math.abs(part.getPosition().y()) <= 750,
                    part.getName());
        }));
        for (int i = 0; i < car.getMounts().size(); i += 2) {
            assertEquals(car.getMounts().get(i).getPosition().x(), car.getMounts().get(i + 1).getPosition().x());
            assertTrue(car.getMounts().get(i).getPosition().y() < 0, "left is negative, y points to the right");
            assertEquals(car.getMounts().get(i).getPosition().y(), -car.getMounts().get(i + 1).getPosition().y());
        }
    }
}
