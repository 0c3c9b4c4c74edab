package cradlewright.ui.recovery;

import cradlewright.model.io.Digest;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The bytes that each file of a shop had when it was last read without fault or saved, kept outside the shop: for the day on which the
 * disk, a text editor or a file share has spoilt it. Knows nothing of windows; may be used from any thread.
 */
public final class GoodCopies {

    private static final int DIGITS = 16;

    private final Path folder;
    private final Path shop;

    /**
     * @param all the folder of the copies of all shops
     * @param shop the folder of the shop
     */
    GoodCopies(Path all, Path shop) {
        this.folder = all.resolve(Digest.of(shop.toString().getBytes(StandardCharsets.UTF_8)).substring(0, DIGITS));
        this.shop = shop;
    }

    private Path place(String path) {
        return folder.resolve(path);
    }

    /** Keeps a file as it is on disk, unless that is not what was read or saved last. */
    synchronized void keep(String path, String digest) throws IOException {
        byte[] bytes = Files.readAllBytes(shop.resolve(path));
        Path place = place(path);
        if (Digest.of(bytes).equals(digest) && !(Files.exists(place) && Arrays.equals(bytes, Files.readAllBytes(place)))) {
            WholeFile.write(place, bytes);
        }
    }

    /** Returns where the last good copy of a file lies. */
    public Optional<Path> find(ShopFile file) {
        return Optional.of(place(file.path())).filter(Files::isRegularFile);
    }

    /**
     * Puts a good version back in place of a file that cannot be read, which stays beside it under another name.
     *
     * @return where the file that cannot be read lies now; empty when there was none any more
     * @throws IOException when the disk does not take it
     */
    public static Optional<Path> putBack(Path shop, String path, Path good) throws IOException {
        byte[] bytes = Files.readAllBytes(good);
        Path file = shop.resolve(path);
        Optional<Path> aside = Optional.empty();
        if (Files.exists(file)) {
            Path free = WholeFile.free(file.resolveSibling(file.getFileName() + ".unreadable"));
            WholeFile.write(free, Files.readAllBytes(file));
            aside = Optional.of(free);
        }
        WholeFile.write(file, bytes);
        return aside;
    }
}
