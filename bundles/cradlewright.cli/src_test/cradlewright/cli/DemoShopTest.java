package cradlewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo shop as it lies in the sources; the day is fixed so that answers do not age. */
class DemoShopTest {

    private static final Path DEMO = Path.of("..", "cradlewright.demo", "shop");
    private static final String DAY = "2026-11-25";

    @TempDir
    Path folder;

    @BeforeEach
    void look() {
        assumeTrue(Files.isRegularFile(DEMO.resolve("shop.cwshop")), "the demo shop is not beside this bundle");
    }

    @Test
    void itsFilesAreInOrder() {
        Run run = Run.of("validate", DEMO);
        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().contains(" 0 errors, 0 other remarks"), run.out());
    }

    @Test
    void itStopsAndSaysWhyWithinTheWidthAndTouchesNothing() throws Exception {
        Map<String, String> before = Run.files(DEMO);
        Run run = Run.of("check", DEMO, "--day", DAY, "--all", "--html", folder);
        assertEquals(1, run.code(), run.err());
        assertEquals("", run.err());
        assertEquals(List.of(), run.untidy());
        assertTrue(run.out().contains("[lift.still-fast]") && run.out().contains("[support.in-cut]"), run.out());
        assertTrue(run.out().contains("\nCautions\n"));
        assertTrue(Files.size(folder.resolve("index.html")) > 10_000);
        assertEquals(before, Run.files(DEMO));
    }

    @Test
    void theTailgateOfTheTrialDrop() {
        Run run = Run.of("may-come-off", DEMO, "tailgate", "--car", "black", "--day", DAY);
        assertEquals(0, run.code(), run.out() + run.err());
        assertTrue(run.out().contains("forward by"), "a part at the tail goes, so the rest balances further forward: " + run.out());
        assertEquals(List.of(), run.untidy());
    }
}
