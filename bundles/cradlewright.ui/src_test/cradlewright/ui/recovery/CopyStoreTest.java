package cradlewright.ui.recovery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies on disk: what comes back, what is not taken for whole, what goes when. */
class CopyStoreTest {

    private static final Path SHOP = Path.of("shed").toAbsolutePath();

    @TempDir
    Path folder;

    private CopyStore run(String name) {
        return new CopyStore(folder.resolve("unsaved"), SHOP, name);
    }

    private static UnsavedCopy copy(String path, String text, int minute) {
        return new UnsavedCopy(path, Optional.of("abc"), Instant.parse("2026-04-01T09:00:00Z").plusSeconds(60L * minute),
                text.getBytes(StandardCharsets.UTF_8));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !path.equals(folder)).toList();
        }
    }

    @Test
    void aCopyComesBackAsItWas() throws IOException {
        UnsavedCopy copy = copy("cars/größe 1.cwcar", "line\nline\n\n", 3);
        UnsavedCopy back = UnsavedCopy.read(copy.written());
        assertEquals(List.of(copy.path(), copy.from(), copy.made()), List.of(back.path(), back.from(), back.made()));
        assertArrayEquals(copy.text(), back.text());
        UnsavedCopy fresh = new UnsavedCopy("shop.cwshop", Optional.empty(), copy.made(), new byte[0]);
        assertEquals(Optional.empty(), UnsavedCopy.read(fresh.written()).from());
    }

    @Test
    void noByteCanBeMissingOrOther() throws IOException {
        byte[] whole = copy("cars/a.cwcar", "text of a car", 0).written();
        for (int length = 0; length < whole.length; length++) {
            byte[] part = Arrays.copyOf(whole, length);
            assertThrows(IOException.class, () -> UnsavedCopy.read(part), () -> "the first " + part.length);
        }
        for (int i = whole.length - 13; i < whole.length; i++) {
            byte[] other = whole.clone();
            other[i] ^= 1;
            assertThrows(IOException.class, () -> UnsavedCopy.read(other));
        }
        byte[] elsewhere = copy("../../evil.txt", "text", 0).written();
        assertThrows(IOException.class, () -> UnsavedCopy.read(elsewhere), "no file of a shop");
    }

    @Test
    void onlyOtherRunsAreLeftAndTheLatestComesFirst() throws IOException {
        run("one").put(copy("cars/a.cwcar", "old", 1));
        run("two").put(copy("cars/a.cwcar", "new", 5));
        run("two").put(copy("cars/a.cwcar", "newest", 6));
        CopyStore own = run("three");
        own.put(copy("cars/b.cwcar", "own", 7));
        List<LeftCopies> left = own.left();
        assertEquals(List.of("newest", "old"), left.stream()
                .map(each -> new String(each.copies().get(0).text(), StandardCharsets.UTF_8)).toList());
        own.remove(left.get(0));
        assertEquals(1, own.left().size());
        assertEquals(List.of(), new CopyStore(folder.resolve("unsaved"), Path.of("other").toAbsolutePath(), "three").left(),
                "copies of another shop");
    }

    @Test
    void aBrokenCopyIsToldOfAndTheOthersStay() throws IOException {
        CopyStore crashed = run("one");
        crashed.put(copy("cars/a.cwcar", "text", 1));
        Path broken = files().stream().filter(Files::isRegularFile).findFirst().orElseThrow();
        Files.writeString(broken, "half");
        crashed.put(copy("cars/b.cwcar", "text", 1));
        LeftCopies left = run("two").left().get(0);
        assertEquals(List.of("cars/b.cwcar"), left.copies().stream().map(UnsavedCopy::path).toList());
        assertEquals(List.of(broken + ": it ends too early"), left.broken());
    }

    @Test
    void nothingIsLeftOnDiskOfWhatIsSavedOrClosed() throws IOException {
        CopyStore own = run("one");
        own.put(copy("cars/a.cwcar", "text", 1));
        own.put(copy("cars/b.cwcar", "text", 1));
        own.remove("cars/a.cwcar");
        assertFalse(run("two").left().isEmpty());
        own.removeAll();
        assertEquals(List.of(), run("two").left());
        own.put(copy("cars/a.cwcar", "text", 1));
        own.remove("cars/a.cwcar");
        assertEquals(List.of(), files().stream().filter(Files::isRegularFile).toList());
    }
}
