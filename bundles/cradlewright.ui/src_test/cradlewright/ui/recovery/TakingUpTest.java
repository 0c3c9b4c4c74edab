package cradlewright.ui.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Shop;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.VehicleFactory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an edit that was never saved, through the copy, to the same edit in a shop that was opened anew. */
class TakingUpTest {

    private static final String CAR = "cars/one.cwcar";

    @TempDir
    Path folder;
    private final IdSource ids = IdSource.secure();

    @BeforeEach
    void write() throws IOException {
        ShopFolder made = new ShopFolder(folder);
        ShopStack stack = stack(made);
        Shop shop = ids.give(BaseFactory.eINSTANCE.createShop());
        shop.setName("shed");
        stack.save(stack.add(FileKind.SHOP, "", shop));
        stack.save(stack.add(FileKind.CAR, "one", car("as saved")));
    }

    private Car car(String name) {
        Car car = ids.give(VehicleFactory.eINSTANCE.createCar());
        car.setName(name);
        return car;
    }

    private static ShopStack stack(ShopFolder shop) {
        return new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
    }

    private static ShopFile file(ShopStack stack, String path) {
        return stack.shop().files().stream().filter(each -> each.path().equals(path)).findFirst().orElseThrow();
    }

    private static String name(ShopStack stack) {
        return ((Car) file(stack, CAR).root().orElseThrow()).getName();
    }

    private static void rename(ShopStack stack, String name) {
        ShopFile file = file(stack, CAR);
        stack.execute(new ShopChange("rename", file, () -> ((Car) file.root().orElseThrow()).setName(name)));
    }

    private static UnsavedCopy copy(ShopStack stack, String path) {
        ShopFile file = file(stack, path);
        return new UnsavedCopy(path, file.digest(), Instant.EPOCH, stack.bytes(file).orElseThrow());
    }

    private UnsavedCopy unsaved() {
        ShopStack crashed = stack(ShopFolder.open(folder));
        rename(crashed, "as edited");
        return copy(crashed, CAR);
    }

    private List<CopyRow> rows(ShopStack stack, UnsavedCopy... copies) {
        return new CopyRows(stack.shop()).of(new LeftCopies(folder, List.of(copies), List.of()));
    }

    @Test
    void anUnsavedEditComesBackAsOneThatCanBeTakenBack() throws IOException {
        UnsavedCopy copy = unsaved();
        byte[] onDisk = Files.readAllBytes(folder.resolve(CAR));
        ShopStack stack = stack(ShopFolder.open(folder));
        List<CopyRow> rows = rows(stack, copy);
        assertEquals(CopyRow.State.FITS, rows.get(0).state());
        assertEquals(1, rows.get(0).differences().size());
        assertEquals(List.of(), new TakingUp(stack).run(rows, true));
        assertEquals("as edited", name(stack));
        assertTrue(stack.isDirty(file(stack, CAR)));
        assertEquals(-1, Arrays.mismatch(onDisk, Files.readAllBytes(folder.resolve(CAR))), "nothing is saved by itself");
        stack.undo();
        assertEquals("as saved", name(stack));
        assertFalse(stack.isDirty(file(stack, CAR)));
    }

    @Test
    void whatWasSavedMeanwhileIsTheSame() throws IOException {
        ShopStack crashed = stack(ShopFolder.open(folder));
        rename(crashed, "as edited");
        UnsavedCopy copy = copy(crashed, CAR);
        crashed.save(file(crashed, CAR));
        assertEquals(CopyRow.State.SAME, rows(stack(ShopFolder.open(folder)), copy).get(0).state());
    }

    @Test
    void aFileChangedSinceStaysAndTheCopyGoesBesideIt() throws IOException {
        UnsavedCopy copy = unsaved();
        ShopStack other = stack(ShopFolder.open(folder));
        rename(other, "as changed by others");
        other.save(file(other, CAR));
        ShopStack stack = stack(ShopFolder.open(folder));
        List<CopyRow> rows = rows(stack, copy);
        assertEquals(CopyRow.State.FILE_CHANGED, rows.get(0).state());
        List<Path> beside = new TakingUp(stack).run(rows, true);
        assertEquals(List.of(folder.resolve(CAR + ".unsaved")), beside);
        assertTrue(Files.readString(beside.get(0)).contains("as edited"));
        assertEquals("as changed by others", name(stack));
        assertEquals(0, ShopFolder.open(folder).problems().size(), "the file beside does not disturb the shop");
        new TakingUp(stack).run(rows, false);
        assertEquals("as edited", name(stack));
    }

    @Test
    void aNewFileComesBackAsAWhole() throws IOException {
        ShopStack crashed = stack(ShopFolder.open(folder));
        crashed.add(FileKind.CAR, "two", car("never saved"));
        UnsavedCopy copy = copy(crashed, "cars/two.cwcar");
        assertEquals(Optional.empty(), copy.from());
        ShopStack stack = stack(ShopFolder.open(folder));
        new TakingUp(stack).run(rows(stack, copy), true);
        assertEquals(List.of("as saved", "never saved"), stack.shop().cars().stream().map(Car::getName).toList());
        assertTrue(stack.dirtyFiles().contains(file(stack, "cars/two.cwcar")));
    }

    @Test
    void aFileThatCannotBeReadIsNotTouched() throws IOException {
        UnsavedCopy copy = unsaved();
        Files.writeString(folder.resolve(CAR), "<car");
        ShopStack stack = stack(ShopFolder.open(folder));
        List<CopyRow> rows = rows(stack, copy);
        assertEquals(CopyRow.State.ONLY_BESIDE, rows.get(0).state());
        new TakingUp(stack).run(rows, false);
        assertEquals("<car", Files.readString(folder.resolve(CAR)));
        assertTrue(Files.readString(folder.resolve(CAR + ".unsaved")).contains("as edited"));
    }

    @Test
    void aCopyThatIsNotUnderstoodSaysWhy() {
        byte[] text = "<unfinished".getBytes(StandardCharsets.UTF_8);
        CopyRow row = rows(stack(ShopFolder.open(folder)), new UnsavedCopy(CAR, Optional.empty(), Instant.EPOCH, text)).get(0);
        assertEquals(CopyRow.State.ONLY_BESIDE, row.state());
        assertTrue(row.why().startsWith("the copy is not understood: "), row.why());
    }
}
