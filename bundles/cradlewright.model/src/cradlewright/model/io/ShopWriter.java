package cradlewright.model.io;

import cradlewright.model.base.FileRoot;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Saves files of a shop so that at every moment either the old or the new one is whole: written beside, forced to disk,
 * then renamed. The last three versions are kept below {@code .versions}. A file that somebody else changed since it was
 * read is not overwritten; mine is kept beside it as {@code name.mine}.
 *
 * <p>Between looking whether the file changed and renaming lies a moment in which another program could still write it;
 * that is not guarded against.
 */
public final class ShopWriter {

    /** How many earlier versions of each file are kept. */
    static final int KEPT = 3;

    private static final String VERSIONS = ".versions";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS").withZone(ZoneOffset.UTC);

    private final ShopFolder shop;
    private final Clock clock;

    /**
     * @param shop the shop whose files are saved
     * @param clock gives the times in the names of earlier versions
     */
    public ShopWriter(ShopFolder shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /**
     * Saves one file.
     *
     * @throws IOException when the disk does not take it; the old file is still whole then
     */
    public SaveOutcome save(ShopFile file) throws IOException {
        Path target = shop.directory().resolve(file.path());
        if (file.state() != ShopFile.State.WRITABLE) {
            return new SaveOutcome(SaveOutcome.Kind.REFUSED, target,
                    file.path() + " was not saved: it " + file.state().words() + ".");
        }
        Text text;
        try {
            text = text(file);
        } catch (Refused refused) {
            return new SaveOutcome(SaveOutcome.Kind.REFUSED, target, "Not saved. " + refused.in(file.path()).text() + ".");
        }
        Optional<byte[]> onDisk = Files.exists(target) ? Optional.of(Files.readAllBytes(target)) : Optional.empty();
        if (!onDisk.map(Digest::of).equals(file.digest())) {
            Path mine = WholeFile.free(target.resolveSibling(target.getFileName() + ".mine"));
            WholeFile.write(mine, text.bytes());
            return new SaveOutcome(SaveOutcome.Kind.KEPT_AS_MINE, mine, file.path()
                    + " was changed by somebody else since it was read and was left alone; what you have is now in "
                    + mine.getFileName() + ". Open the shop again and compare.");
        }
        if (onDisk.isPresent()) {
            keep(file.path(), onDisk.get());
        }
        WholeFile.write(target, text.bytes());
        file.setDigest(Digest.of(text.bytes()));
        file.resource().rememberPlaces(text.tree());
        return new SaveOutcome(SaveOutcome.Kind.SAVED, target, file.path() + " is saved.");
    }

    /**
     * Tells whether saving would change the bytes of a file although nobody edited what is in it: it is of an older form, or was laid out
     * by hand.
     *
     * @throws IOException when the file cannot be read
     */
    public boolean laysOutAnew(ShopFile file) throws IOException {
        Path target = shop.directory().resolve(file.path());
        try {
            return Files.exists(target) && !Arrays.equals(Files.readAllBytes(target), text(file).bytes());
        } catch (Refused refused) {
            return false;
        }
    }

    /** Returns the bytes of a file as they would be saved; empty when its contents cannot be written. */
    public Optional<byte[]> bytes(ShopFile file) {
        try {
            return Optional.of(text(file).bytes());
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    /**
     * A file as it would be saved.
     *
     * @param bytes what goes to disk
     * @param tree the same, read back through the gate
     */
    record Text(byte[] bytes, XmlElement tree) {
    }

    /**
     * Returns the text of a file as it would be saved.
     *
     * @throws Refused when the contents cannot be written as a file that this program reads
     */
    static Text text(ShopFile file) throws Refused {
        FileRoot root = file.root().orElseThrow(() -> new Refused(0, "the file has no object at its top", "open the shop again"));
        root.setSchema(Schema.CURRENT);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            file.resource().save(out, ShopResource.saveOptions());
        } catch (IOException | RuntimeException e) {
            // Loose objects that are referred to, and characters that XML cannot hold, surface as various exceptions here.
            throw new Refused(0, "the contents cannot be written: " + e.getMessage(),
                    "undo the last change, or delete unusual characters from names and notes");
        }
        byte[] bytes = out.toByteArray();
        return new Text(bytes, SafeXml.read(bytes, file.path()).root());
    }

    private void keep(String path, byte[] old) throws IOException {
        Path folder = shop.directory().resolve(VERSIONS).resolve(path);
        Files.createDirectories(folder);
        WholeFile.write(WholeFile.free(folder.resolve(STAMP.format(clock.instant()))), old);
        List<Path> versions = versions(folder);
        for (Path oldest : versions.subList(0, Math.max(versions.size() - KEPT, 0))) {
            Files.delete(oldest);
        }
    }

    private static List<Path> versions(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return new ArrayList<>(entries.sorted().toList());
        }
    }
}
