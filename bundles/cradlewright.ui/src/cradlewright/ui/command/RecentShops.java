package cradlewright.ui.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The folders of the shops that were opened last, the latest first. */
final class RecentShops {

    private static final int KEPT = 8;
    private static final String KEY = "recentShops";

    private RecentShops() {
    }

    /** Returns those that are still there. */
    static List<Path> all() {
        return preferences().get(KEY, "").lines().filter(line -> !line.isBlank()).map(Path::of).filter(Files::isDirectory).toList();
    }

    static void add(Path folder) {
        store(Stream.concat(Stream.of(folder), all().stream().filter(other -> !other.equals(folder))).limit(KEPT).toList());
    }

    static void remove(Path folder) {
        List<Path> left = new ArrayList<>(all());
        left.remove(folder);
        store(left);
    }

    private static void store(List<Path> folders) {
        IEclipsePreferences preferences = preferences();
        preferences.put(KEY, String.join("\n", folders.stream().map(Path::toString).toList()));
        try {
            preferences.flush();
        } catch (BackingStoreException e) {
            ILog.of(RecentShops.class).warn("The list of recent shops was not kept.", e);
        }
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode("cradlewright.ui");
    }
}
