package cradlewright.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Named;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.VehicleFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a copy says differs, and that taking it up gives what was copied: the text of the files is the second opinion. */
class KeptCopyTest {

    private static final long SEED = 1938;

    @TempDir
    Path directory;
    private ShopFolder shop;
    private ShopStack stack;

    @BeforeEach
    void build() {
        shop = EditShop.build(directory, SEED, 2, 3);
        stack = new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
    }

    private Map<ShopFile, byte[]> bytes() {
        Map<ShopFile, byte[]> all = new TreeMap<>((one, other) -> one.path().compareTo(other.path()));
        shop.files().forEach(file -> all.put(file, stack.bytes(file).orElseThrow()));
        return all;
    }

    private static KeptCopy copy(ShopFile file, byte[] bytes) {
        ShopFolder alone = ShopFolder.alone(file.kind(), file.path(), bytes);
        return new KeptCopy(file, alone.files().get(0).root().orElseThrow());
    }

    private static List<KeptCopy> copies(Map<ShopFile, byte[]> all) {
        List<KeptCopy> copies = new ArrayList<>();
        all.forEach((file, bytes) -> copies.add(copy(file, bytes)));
        return copies;
    }

    private static Map<String, String> text(Map<ShopFile, byte[]> all) {
        Map<String, String> text = new TreeMap<>();
        all.forEach((file, bytes) -> text.put(file.path(), new String(bytes, StandardCharsets.UTF_8)));
        return text;
    }

    @Test
    void randomEditsOfAllKindsComeBackAndCanBeTakenBackAsOne() {
        Map<String, String> before = text(bytes());
        int changed = 0;
        for (int round = 0; round < 15; round++) {
            for (int i = 0; i < 8; i++) {
                stack.execute(RandomEdit.of(shop, 100 * round + i));
            }
            Map<ShopFile, byte[]> kept = bytes();
            while (stack.canUndo()) {
                stack.undo();
            }
            assertEquals(before, text(bytes()));
            List<KeptCopy> copies = copies(kept);
            changed += copies.stream().filter(copy -> !copy.differences().isEmpty()).count();
            for (KeptCopy copy : copies) {
                String path = copy.file().path();
                assertEquals(text(kept).get(path).equals(before.get(path)), copy.differences().isEmpty(),
                        path + ", round " + round + ", seed " + SEED);
            }
            stack.execute(KeptCopy.takeUp("take up", shop, copies));
            assertEquals(text(kept), text(bytes()), "round " + round + ", seed " + SEED);
            assertTrue(copies(kept).stream().allMatch(copy -> copy.differences().isEmpty()));
            if (stack.canUndo()) {
                stack.undo();
            }
            assertFalse(stack.canUndo(), "one change");
            assertEquals(before, text(bytes()), "round " + round + ", seed " + SEED);
        }
        assertTrue(changed > 25, "only " + changed + " copies differ");
    }

    @Test
    void differencesNameTheObjectsThatCameWentAndChanged() {
        ShopFile file = EditShop.file(shop, "cars/car 0.cwcar");
        Car car = (Car) file.root().orElseThrow();
        Piece shell = car.getPieces().get(0);
        Part first = shell.getParts().get(0);
        byte[] before = stack.bytes(file).orElseThrow();
        Part made = EditShop.giveName(VehicleFactory.eINSTANCE.createPart(), IdSource.secure(), "new part");
        Part gone = shell.getParts().get(2);
        stack.execute(new ShopChange("edit", file, () -> {
            first.setName("other name");
            car.getStages().get(0).getOn().remove(gone);
            shell.getParts().remove(gone);
            shell.getParts().add(made);
        }));
        byte[] after = stack.bytes(file).orElseThrow();
        assertEquals(List.of("ADDED shell part 2", "CHANGED as it came on", "CHANGED other name name", "REMOVED new part"),
                words(copy(file, before)));
        stack.undo();
        assertEquals(List.of("ADDED new part", "CHANGED as it came on", "CHANGED shell part 0 name", "REMOVED shell part 2"),
                words(copy(file, after)));
        stack.execute(KeptCopy.takeUp("take up", shop, List.of(copy(file, after))));
        assertSame(first, shell.getParts().get(0), "what has the same id is the same object");
        assertEquals("other name", first.getName());
        assertTrue(stack.isDirty(file));
    }

    private static List<String> words(KeptCopy copy) {
        return copy.differences().stream().map(difference -> difference.kind() + " " + ((Named) difference.object()).getName()
                + difference.features().stream().map(feature -> " " + feature.getName()).collect(Collectors.joining())).sorted().toList();
    }

    @Test
    void aCopyOfAnotherThingIsRefused() {
        ShopFile file = EditShop.file(shop, "cars/car 0.cwcar");
        FileRoot other = EditShop.file(shop, "cars/car 1.cwcar").root().orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> new KeptCopy(file, other));
    }
}
