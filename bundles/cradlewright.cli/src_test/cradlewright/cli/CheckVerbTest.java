package cradlewright.cli;

import static cradlewright.cli.CommandLineTest.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The verb check on a shell of 300 kg in the middle of four stands. Each carries 300/4 = 75 kg (statics); a stand is asked for half as much
 * again, 112.5 kg (common practice, no source), and reads TIGHT in the last tenth of its plate, from 112.5/0.9 = 125 kg down.
 */
class CheckVerbTest {

    @TempDir
    Path folder;
    private Path place;

    @BeforeEach
    void begin() {
        place = folder.resolve("shop");
    }

    private SmallShop shell() {
        return new SmallShop(place).part("bare shell", "300 kg u 0 weighed", 1, 0);
    }

    private static Run check(Path shop, Object... more) {
        Object[] all = new Object[more.length + 4];
        all[0] = "check";
        all[1] = shop;
        all[2] = "--day";
        all[3] = SmallShop.DAY;
        System.arraycopy(more, 0, all, 4, more.length);
        return Run.of(all);
    }

    @Test
    void zeroWhenAllHolds() throws Exception {
        Run run = check(shell().stands("130 kg plate").write(), "--strict");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().contains("HOLDS over all: 0 STOP, 0 CAN'T SAY, 0 TIGHT"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void aLongRunTellsHowFarItIsBesideTheAnswers() throws Exception {
        Path shop = shell().stands("130 kg plate").write();
        Run quiet = check(shop);
        Run told = check(shop, "--progress");
        assertEquals(quiet.out(), told.out());
        List<String> lines = told.err().lines().filter(line -> !line.contains("what to do")).toList();
        assertTrue(lines.size() > 1 && lines.get(0).startsWith("1 of " + lines.size() + ": "), told.err());
        assertTrue(lines.get(lines.size() - 1).startsWith(lines.size() + " of " + lines.size() + ": "), told.err());
    }

    @Test
    void tightIsZeroAndUnderStrictFive() throws Exception {
        Path shop = shell().stands("120 kg plate").write();
        assertEquals(0, check(shop).code());
        Run run = check(shop, "--strict");
        assertEquals(5, run.code(), run.out());
        assertTrue(run.flat().contains("asked 113 kg, can give 120 kg (94 %)"), run.out());
    }

    @Test
    void oneWhenAStandIsTooWeak() throws Exception {
        Run run = check(shell().stands("110 kg plate").write());
        assertEquals(1, run.code(), run.out());
        assertTrue(run.out().contains("STOP over all: 4 STOP"), run.out());
        assertTrue(run.flat().contains("(102 %)"), run.out());
    }

    @Test
    void twoWhenAMassIsMissing() throws Exception {
        Run run = check(shell().part("left door", "", 1, -0.6).write());
        assertEquals(2, run.code(), run.out());
        assertTrue(run.out().contains("left door: mass"), run.out());
    }

    @Test
    void nothingAskedIsNeverReadAsHeld() throws Exception {
        Run run = check(shell().write(), "--check", "lift.strap");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.out().contains("CAN'T SAY: none of the checks asked has an answer here."), run.out());
        assertTrue(check(place, "--check", "lift.strap", "--json").out().contains("\"verdict\": \"CAN'T SAY\""));
    }

    @Test
    void answersAreTidyAndCautionsStandAtTheEndOnceEach() throws Exception {
        Path shop = shell().part("a very long name of a part that somebody wrote so that nobody mixes it up with the other one of its kind",
                "5 kg u 0 weighed", 1, 0).stands("100 kg plate").write();
        Run run = check(shop, "--all");
        assertEquals(List.of(), run.untidy());
        String cautions = run.flat().substring(run.flat().indexOf(" Cautions "));
        assertTrue(cautions.contains("a licensed structural engineer confirms"), cautions);
        assertTrue(cautions.contains("Keep hands out from between pad and body while lowering."), cautions);
        assertEquals(cautions.indexOf("Raise by a finger"), cautions.lastIndexOf("Raise by a finger"), cautions);
    }

    @Test
    void unitsOfTheReader() throws Exception {
        Path shop = shell().stands("110 kg plate").write();
        // 110 kg / 0.45359237 kg = 242.5 lb; 112.5 kg = 248.0 lb (pound of 1959).
        assertTrue(check(shop, "--units", "inch").flat().contains("asked 248 lb, can give 243 lb (102 %)"));
        assertRefused(check(shop, "--units", "furlong"), "furlong", "metric or inch");
    }

    @Test
    void wordsForWrongOptions() throws Exception {
        Path shop = shell().write();
        assertRefused(check(shop, "--check", "stand.size"), "stand.size", "list-checks");
        assertRefused(check(shop, "--only", "green van"), "green van", "without --only");
        assertRefused(Run.of("check", shop, "--day", "31.3.2026"), "31.3.2026", "2026-03-31");
        assertRefused(Run.of("check", shop, "--day", "2026-02-30"), "2026-02-30");
    }

    @Test
    void anEmptyShopSaysThatThereIsNothing() throws Exception {
        shell().write();
        Files.delete(place.resolve("cars/red.cwcar"));
        Files.delete(place.resolve("gear.cwgear"));
        assertRefused(check(place), "nothing to check");
    }

    @Test
    void onlyTakesNamesAndIds() throws Exception {
        Path shop = shell().write();
        assertTrue(check(shop, "--only", "stand 3").out().contains("HOLDS over all: 0 STOP, 0 CAN'T SAY, 0 TIGHT, 3 HOLDS"));
        assertFalse(check(shop, "--only", "visit00000001").out().contains("HOLDS      Stand 3"));
    }

    @Test
    void pagesGoIntoTheFolderNamedAndNowhereElse() throws Exception {
        Path shop = shell().stands("110 kg plate").write();
        Map<String, String> before = Run.files(shop);
        Path pages = folder.resolve("pages/today");
        assertEquals(1, check(shop, "--html", pages).code());
        assertEquals(List.of("", "index.html"), List.copyOf(Run.files(pages).keySet()));
        assertEquals(before, Run.files(shop));
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        assertRefused(check(shop, "--html", file), "taken", "is a file");
        assertRefused(check(shop, "--html", file.resolve("below")), "cannot be written", "name another folder");
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void noVerbLeavesATraceInTheShop() throws Exception {
        Path shop = shell().part("left door", "25 kg u 0 weighed", 1, -0.6).write();
        Map<String, String> before = Run.files(folder);
        check(shop, "--all", "--json");
        check(shop, "--units", "inch");
        Run.of("validate", shop);
        Run.of("explain", "support.rank", shop, "--day", SmallShop.DAY);
        Run.of("may-come-off", shop, "left door", "--day", SmallShop.DAY);
        assertEquals(before, Run.files(folder));
    }

    @Test
    void controlCharactersOfANameDoNotReachTheTerminal() throws Exception {
        shell().write();
        Path car = place.resolve("cars/red.cwcar");
        Files.writeString(car, Files.readString(car).replace("name=\"Red coupe\"", "name=\"Red&#10;coupe\u0085&#x9b;31m\""));
        Run run = check(place);
        assertTrue(run.out().lines().noneMatch(line -> line.chars().anyMatch(c -> c < ' ' || c > 126 && c < 160)), run.out());
    }
}
