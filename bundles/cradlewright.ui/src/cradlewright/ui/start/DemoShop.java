package cradlewright.ui.start;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.Bundle;

/** The invented shop that comes with the program, as files that people may edit. */
final class DemoShop {

    private static final String BUNDLE = "cradlewright.demo";
    private static final String FOLDER = "shop";

    private DemoShop() {
    }

    /** Returns the folder in the home of the person into which it goes unless they choose another. */
    static Path usualFolder() {
        return Path.of(System.getProperty("user.home"), Messages.Demo_folder);
    }

    /** Tells whether the program came with it. */
    static boolean available() {
        return Platform.getBundle(BUNDLE) != null;
    }

    /**
     * Copies it.
     *
     * @param folder made when missing; must be empty
     * @throws IOException when something lies there already, or the disk refuses
     */
    static void copyTo(Path folder) throws IOException {
        Files.createDirectories(folder);
        if (!empty(folder)) {
            throw new IOException(Messages.Demo_notEmpty);
        }
        Bundle bundle = Platform.getBundle(BUNDLE);
        List<URL> entries = Collections.list(bundle.findEntries(FOLDER, "*", true));
        for (URL entry : entries) {
            String inside = entry.getPath().replaceFirst("^/?" + FOLDER + "/", "");
            if (!inside.endsWith("/")) {
                Path target = folder.resolve(inside);
                Files.createDirectories(target.getParent());
                try (InputStream in = entry.openStream()) {
                    Files.copy(in, target);
                }
            }
        }
    }

    /** Tells whether nothing lies in a folder, or there is none. */
    static boolean empty(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return true;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
