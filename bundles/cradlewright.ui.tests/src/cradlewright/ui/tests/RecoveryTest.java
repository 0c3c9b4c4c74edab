package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What the window says and does about edits that a run left unsaved, and about a file that was spoilt. That a killed window leaves such
 * copies is seen by {@code releng/acceptance/crash}; here they are set aside by hand before the shop is closed.
 */
class RecoveryTest {

    private static final String FILE = "cars/red coupe.cwcar";

    private Path folder;
    private WorkingShop shop;

    @BeforeEach
    void open() throws Exception {
        folder = DemoShop.copy();
        shop = DemoShop.open(folder);
    }

    @AfterEach
    void close() {
        Bot.page().closeAllEditors(false);
        WorkingShop.close();
        Bot.settle();
    }

    private static Path unsaved() {
        return Platform.getStateLocation(Platform.getBundle("cradlewright.ui")).toPath().resolve("unsaved");
    }

    private static List<Path> copies() {
        if (!Files.isDirectory(unsaved())) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(unsaved())) {
            return all.filter(path -> path.toString().endsWith(".copy")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ShopFile file() {
        return shop.folder().files().stream().filter(each -> each.path().equals(FILE)).findFirst().orElseThrow();
    }

    private Car car() {
        return (Car) file().root().orElseThrow();
    }

    /** Edits, waits for the copy, and leaves it as a run that broke down would. */
    private void crash(String name) throws IOException {
        shop.stack().execute(new ShopChange("rename", file(), () -> car().setName(name)));
        Bot.await("the edit is copied", () -> copies().size() == 1);
        Path copy = copies().get(0);
        Path other = copy.getParent().resolveSibling("run-before").resolve(copy.getFileName());
        Files.createDirectories(other.getParent());
        Files.copy(copy, other);
        WorkingShop.close();
        Bot.await("the copy of this run is gone", () -> copies().equals(List.of(other)));
    }

    private void openAgain(Consumer<Shell> then) {
        Bot.withDialog(() -> {
            try {
                shop = DemoShop.open(folder);
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }, then);
    }

    @Test
    void anUnsavedEditIsTakenUpAndCanBeTakenBack() throws Exception {
        String before = car().getName();
        byte[] onDisk = Files.readAllBytes(folder.resolve(FILE));
        crash("left unsaved");
        openAgain(dialog -> {
            Bot.picture(dialog, "unsaved-edits");
            assertEquals(List.of(), Eyes.complaints(dialog));
            assertTrue(Bot.find(dialog, Text.class, text -> true).getText().contains("changed: car " + before + " (name)"), "what differs");
            Bot.press(dialog, "Decide Later");
        });
        assertEquals(before, car().getName());
        assertFalse(copies().isEmpty(), "put off, not thrown away");
        Bot.withDialog(() -> Bot.menu("File", "Unsaved Edits"), dialog -> Bot.press(dialog, "Take Them Up"));
        assertEquals("left unsaved", car().getName());
        assertEquals(List.of(file()), shop.stack().dirtyFiles());
        assertEquals(-1, Arrays.mismatch(onDisk, Files.readAllBytes(folder.resolve(FILE))));
        shop.stack().undo();
        assertEquals(before, car().getName());
        assertEquals(List.of(), shop.stack().dirtyFiles());
        Bot.await("no copy is left of what is as it was saved", () -> copies().isEmpty());
    }

    @Test
    void whatIsThrownAwayIsGoneAndAChangedFileIsSaidToBe() throws Exception {
        crash("left unsaved");
        Path path = folder.resolve(FILE);
        Files.writeString(path, Files.readString(path).replace("bonnet", "other bonnet"));
        openAgain(dialog -> {
            Bot.picture(dialog, "unsaved-edits-changed");
            assertTrue(Bot.find(dialog, Table.class, table -> true).getItem(0).getText(2).startsWith("changed"));
            Bot.press(dialog, "Throw Them Away");
        });
        Bot.await("the copy is gone", () -> copies().isEmpty());
        assertFalse(Files.exists(folder.resolve(FILE + ".unsaved")));
    }

    @Test
    void aSpoiltFileIsPutBackByOneButton() throws Exception {
        String good = Files.readString(folder.resolve(FILE));
        WorkingShop.close();
        Bot.settle();
        Files.writeString(folder.resolve(FILE), "<spoilt");
        shop = DemoShop.open(folder);
        ShopEditors.open(Bot.page(), file());
        Bot.settle();
        Bot.picture(Bot.shell(), "spoilt-file");
        Bot.press(Bot.shell(), "Put This Version Back");
        Bot.await("the shop is read again", () -> WorkingShop.current().filter(now -> now != shop).isPresent());
        shop = WorkingShop.current().orElseThrow();
        assertEquals(good, Files.readString(folder.resolve(FILE)));
        assertEquals(ShopFile.State.WRITABLE, file().state());
        assertEquals("<spoilt", Files.readString(folder.resolve(FILE + ".unreadable")));
    }
}
