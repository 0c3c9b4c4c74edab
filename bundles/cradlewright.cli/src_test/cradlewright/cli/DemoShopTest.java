package cradlewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** When this goes red after a change of the demo files or of what the records hold, sign again: see the notes of the hold points. */
    @Test
    void oneSignatureHoldsOneHasLapsedAndTheOthersAreOpen() {
        assertEquals(List.of("before the exhaust goes on HOLDS"), verdicts("job.hold-point", "Signed by"));
        assertEquals(List.of("before the exhaust goes on HOLDS", "before the shell goes onto the chassis STOP"),
                verdicts("job.sign-off-lapsed", ""));
        assertEquals(3, verdicts("job.hold-point", "Nobody has signed").size());
        assertEquals(List.of("blasting HOLDS", "chassis of the maroon van TIGHT"), verdicts("job.back-late", ""));
        assertEquals(List.of("cut out and weld in the sill HOLDS"), verdicts("job.readings-at-hold", ""));
        assertEquals(List.of("lift the shell off and set it down on dolly 5 HOLDS"), verdicts("job.two-people", ""));
        assertEquals(Set.of("HOLDS"), Set.copyOf(verdicts("job.gear-booked-overdue", "").stream()
                .map(text -> text.substring(text.lastIndexOf(' ') + 1)).toList()));
    }

    private static List<String> verdicts(String check, String words) {
        JsonObject root = JsonParser.parseString(Run.of("check", DEMO, "--day", DAY, "--check", check, "--json").out()).getAsJsonObject();
        List<String> found = new ArrayList<>();
        for (JsonElement subject : root.getAsJsonArray("subjects")) {
            for (JsonElement finding : subject.getAsJsonObject().getAsJsonArray("findings")) {
                JsonObject object = finding.getAsJsonObject();
                if (object.get("words").getAsString().startsWith(words)) {
                    found.add(object.get("name").getAsString() + " " + object.get("verdict").getAsString());
                }
            }
        }
        Collections.sort(found);
        return found;
    }

    /** The files are laid out as the program does, so that a signature is all that changes. */
    @Test
    void aSignatureIsAllThatChanges() throws IOException {
        for (String path : Run.files(DEMO).keySet()) {
            Path target = folder.resolve(path);
            if (Files.isDirectory(DEMO.resolve(path))) {
                Files.createDirectories(target);
            } else {
                Files.copy(DEMO.resolve(path), target, StandardCopyOption.REPLACE_EXISTING);
            }
        }
        List<String> before = Files.readAllLines(folder.resolve("jobs.cwjobs"));
        // The shop has points that cannot be judged, and those are signed over only with a reason.
        Run run = Run.of("sign", folder, "engine comes out", "--by", "Bram", "--although", "two people have looked at it");
        assertEquals("", run.err());
        assertEquals(0, run.code());
        List<String> after = Files.readAllLines(folder.resolve("jobs.cwjobs"));
        int same = 0;
        while (before.get(same).equals(after.get(same))) {
            same++;
        }
        // Only the line that closed the hold point differs, since something stands in it now.
        assertEquals(before.get(same).replace("/>", ">"), after.get(same));
        List<String> rest = before.subList(same + 1, before.size());
        assertEquals(rest, after.subList(after.size() - rest.size(), after.size()));
    }

    @Test
    void theTailgateOfTheTrialDrop() {
        Run run = Run.of("may-come-off", DEMO, "tailgate", "--car", "black", "--day", DAY);
        assertEquals(0, run.code(), run.out() + run.err());
        assertTrue(run.out().contains("forward by"), "a part at the tail goes, so the rest balances further forward: " + run.out());
        assertEquals(List.of(), run.untidy());
    }
}
