package cradlewright.model.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes files so that at every moment either the old or the new one is whole: written beside, forced to disk, then renamed. */
public final class WholeFile {

    private WholeFile() {
    }

    /**
     * Writes a file, with the folders above it; one that is there is replaced.
     *
     * @throws IOException when the disk does not take it; the old file is still whole then
     */
    public static void write(Path target, byte[] bytes) throws IOException {
        Files.createDirectories(target.getParent());
        Path beside = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".new");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            move(beside, target);
        } finally {
            Files.deleteIfExists(beside);
        }
        forceFolder(target.getParent());
    }

    /** Returns the wanted path when nothing is there, else the first one with a number behind it that is free. */
    public static Path free(Path wanted) {
        Path path = wanted;
        for (int i = 2; Files.exists(path); i++) {
            path = wanted.resolveSibling(wanted.getFileName() + "-" + i);
        }
        return path;
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            // Some network drives: a plain replacement is the best there is.
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows does not open folders; there the rename is on disk with the file itself.
            return;
        }
    }
}
