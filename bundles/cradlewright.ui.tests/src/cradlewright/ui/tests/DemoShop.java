package cradlewright.ui.tests;

import cradlewright.ui.shop.ShopNotOpened;
import cradlewright.ui.shop.WorkingShop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Copies of the demo shop, opened for a day on which its answers are known. */
final class DemoShop {

    /** A day before all that the shop has planned: no visit is on. */
    static final Clock DAY = Clock.fixed(Instant.parse("2026-04-01T09:00:00Z"), ZoneOffset.UTC);

    /** A day on which its cars stand as their files say that they stand now. */
    static final Clock PRESENT = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private DemoShop() {
    }

    /** Makes a copy in a folder of its own. */
    static Path copy() throws IOException {
        Path from = Path.of(System.getProperty("cradlewright.demo"));
        Path to = Files.createTempDirectory("shop");
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
        return to;
    }

    /** Opens a shop in the window without asking anybody. */
    static WorkingShop open(Path folder) throws ShopNotOpened {
        return open(folder, DAY);
    }

    /** Opens a shop in the window for a day without asking anybody. */
    static WorkingShop open(Path folder, Clock day) throws ShopNotOpened {
        Bot.page().closeAllEditors(false);
        WorkingShop shop = WorkingShop.open(folder, day);
        Bot.settle();
        return shop;
    }

    /** Waits for the answers to the latest edit. */
    static void awaitAnswers() {
        Bot.await("the answers are there", () -> !WorkingShop.current().orElseThrow().workingOut());
        Bot.settle();
    }

    /** Returns the paths of all files in a folder. */
    static Set<String> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return new TreeSet<>(all.filter(Files::isRegularFile).map(path -> folder.relativize(path).toString()).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
