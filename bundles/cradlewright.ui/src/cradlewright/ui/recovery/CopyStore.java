package cradlewright.ui.recovery;

import cradlewright.model.io.Digest;
import cradlewright.model.io.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder with the copies of one shop: below it one folder for each run of the program, in it one copy a file. What another run has left
 * is there because that run did not end in order, or because somebody put off what to do with it. Knows nothing of windows; may be used
 * from any thread, one at a time.
 */
final class CopyStore {

    private static final String END = ".copy";
    private static final int DIGITS = 16;

    private final Path folder;
    private final Path own;

    /**
     * @param all the folder of the copies of all shops
     * @param shop the folder of the shop
     * @param run name of this run, which no other run has had
     */
    CopyStore(Path all, Path shop, String run) {
        this.folder = all.resolve(shortDigest(shop.toString()));
        this.own = folder.resolve(run);
    }

    private static String shortDigest(String text) {
        return Digest.of(text.getBytes(StandardCharsets.UTF_8)).substring(0, DIGITS);
    }

    private static String name(String path) {
        return shortDigest(path) + END;
    }

    /** Writes a copy in place of the one that this run made of the same file before. */
    synchronized void put(UnsavedCopy copy) throws IOException {
        WholeFile.write(own.resolve(name(copy.path())), copy.written());
    }

    /** Removes the copy that this run made of a file, if there is one. */
    synchronized void remove(String path) throws IOException {
        if (Files.deleteIfExists(own.resolve(name(path)))) {
            tidy(own);
        }
    }

    /** Removes all copies of this run. */
    synchronized void removeAll() throws IOException {
        removeAll(own);
    }

    /** Returns what other runs have left, the latest run first. */
    synchronized List<LeftCopies> left() throws IOException {
        List<LeftCopies> all = new ArrayList<>();
        for (Path run : list(folder)) {
            if (!run.equals(own)) {
                LeftCopies copies = read(run);
                if (copies.copies().isEmpty() && copies.broken().isEmpty()) {
                    removeAll(run);
                } else {
                    all.add(copies);
                }
            }
        }
        all.sort(Comparator.comparing(LeftCopies::last).reversed());
        return all;
    }

    private static LeftCopies read(Path run) throws IOException {
        List<UnsavedCopy> copies = new ArrayList<>();
        List<String> broken = new ArrayList<>();
        for (Path file : list(run)) {
            if (file.getFileName().toString().endsWith(END)) {
                try {
                    copies.add(UnsavedCopy.read(Files.readAllBytes(file)));
                } catch (IOException e) {
                    broken.add(file + ": " + e.getMessage());
                }
            }
        }
        copies.sort(Comparator.comparing(UnsavedCopy::path));
        return new LeftCopies(run, copies, broken);
    }

    /** Removes what another run has left. */
    synchronized void remove(LeftCopies left) throws IOException {
        removeAll(left.run());
    }

    private void removeAll(Path run) throws IOException {
        for (Path file : list(run)) {
            Files.delete(file);
        }
        Files.deleteIfExists(run);
        tidy(folder);
    }

    private static void tidy(Path folder) throws IOException {
        if (Files.isDirectory(folder) && list(folder).isEmpty()) {
            Files.delete(folder);
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        } catch (NoSuchFileException e) {
            return List.of();
        }
    }
}
