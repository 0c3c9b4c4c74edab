package cradlewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Verdict;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What holds for every verb: help, exit codes, words for wrong input. */
class CommandLineTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"check", "may-come-off", "list-checks", "explain", "validate", "convert", "weigh", "stock", "sign"})
    void everyVerbHelpsWithinTheWidth(String verb) {
        Run run = Run.of(verb, "--help");
        assertEquals(0, run.code());
        assertTrue(run.out().startsWith("Usage: cradlewright " + verb), run.out());
        assertEquals("", run.err());
        assertEquals(0, run.out().lines().filter(line -> line.length() > 100).count(), run.out());
        boolean plain = List.of("validate", "list-checks").contains(verb);
        assertTrue(plain || run.out().contains("or example: " + verb + " ") || run.out().contains("for example: " + verb), run.out());
        assertTrue(Run.of("--help").out().contains("  " + verb + " "), "the help of the whole names it");
    }

    @Test
    void theHelpOfTheWholeTellsEveryExitCode() {
        String help = Run.of("--help").flat();
        for (String code : List.of("0 all holds", "1 a STOP", "2 a CAN'T SAY", "3 bad input", "4 internal error",
                "5 something is tight")) {
            assertTrue(help.contains(code), help);
        }
    }

    @Test
    void codesFollowTheVerdict() {
        assertEquals(0, ExitCode.of(Verdict.HOLDS, false));
        assertEquals(0, ExitCode.of(Verdict.TIGHT, false));
        assertEquals(1, ExitCode.of(Verdict.STOP, true));
        assertEquals(2, ExitCode.of(Verdict.CANT_SAY, true));
        assertEquals(5, ExitCode.of(Verdict.TIGHT, true));
        assertEquals(0, ExitCode.of(Verdict.HOLDS, true));
    }

    @Test
    void whatNobodyForesawIsFourAndSaysSoWithoutAStackTrace() throws Exception {
        StringWriter err = new StringWriter();
        CommandLine line = new CommandLine(new RootVerb()).setErr(new PrintWriter(err, true));
        assertEquals(4, CommandLineMain.broke(new IllegalStateException("a pin too many"), line, null));
        assertTrue(err.toString().contains("a pin too many"), err.toString());
        assertEquals(1, err.toString().lines().count());
    }

    @Test
    void aMissingVerbAnUnknownVerbAndAnUnknownOptionAreBadInput() {
        assertRefused(Run.of(), "a verb is missing", "may-come-off");
        assertRefused(Run.of("chekc"), "chekc");
        assertRefused(Run.of("check"), "SHOP");
        assertRefused(Run.of("check", folder, "--loud"), "--loud");
    }

    @Test
    void aFolderThatIsNoneOrNoShopIsBadInput() throws Exception {
        Path file = Files.writeString(folder.resolve("note.txt"), "x");
        for (String verb : new String[] {"check", "validate"}) {
            assertRefused(Run.of(verb, folder.resolve("nowhere")), "nowhere", "is not a folder");
            assertRefused(Run.of(verb, file), "note.txt", "is not a folder");
        }
        Run run = Run.of("check", folder);
        assertRefused(run, "shop.cwshop", "so this folder is not a shop");
        assertEquals(3, Run.of("validate", folder).code());
    }

    @Test
    void conversionsKeepMassAndForceApart() {
        // 1 in = 25.4 mm exactly: international yard and pound agreement of 1959.
        Run run = Run.of("convert", "18", "in", "mm");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("457.2"), run.out());
        assertRefused(Run.of("convert", "18", "kg", "N"), "mass");
    }

    @Test
    void listAndExplainNameEveryCheckWithinTheWidth() {
        Run list = Run.of("list-checks");
        assertEquals(0, list.code());
        assertEquals(0, list.untidy().size(), list.untidy().toString());
        assertTrue(list.out().contains("support.rank"), list.out());
        for (String id : list.out().lines().filter(line -> !line.startsWith(" ")).map(line -> line.split(" ")[0]).toList()) {
            Run explained = Run.of("explain", id);
            assertEquals(0, explained.code(), id);
            assertTrue(explained.out().startsWith(id + "  "), explained.out());
            assertTrue(explained.flat().contains(" caution "), explained.out());
            assertEquals(0, explained.untidy().size(), id + " " + explained.untidy());
        }
        assertRefused(Run.of("explain", "support.nothing"), "support.nothing", "list-checks");
    }

    @Test
    void explainPutsTheNumbersOfAShopIn() throws Exception {
        Path shop = new SmallShop(folder).part("bare shell", "300 kg u 0 weighed", 1, 0).write();
        Run run = Run.of("explain", "stand.load", shop, "--day", SmallShop.DAY);
        assertEquals(0, run.code(), run.err());
        // 300 kg on four equal stands: 75 kg each, half as much again asked of the plate (common practice, no source).
        assertTrue(run.flat().contains("113 kg, can give 2000 kg"), run.out());
        assertFalse(run.out().contains("null"), run.out());
        Run silent = Run.of("explain", "lift.strap", shop, "--day", SmallShop.DAY);
        assertTrue(silent.flat().contains("no answer"), silent.out());
    }

    @Test
    void validateNamesFileLineAndObject() throws Exception {
        Path shop = new SmallShop(folder).part("bonnet", "-17 kg weighed", 1, 0).write();
        Run run = Run.of("validate", shop);
        assertEquals(3, run.code());
        assertTrue(run.out().contains("error: cars/red.cwcar:3: part \"bonnet\""), run.out());
        assertTrue(run.out().endsWith("3 files read, 1 error, 0 other remarks" + System.lineSeparator()), run.out());
    }

    @Test
    void aBrokenFileComesFirstAndWhatFollowsIsCounted() throws Exception {
        Path shop = new SmallShop(folder).part("bonnet", "20 kg weighed", 1, 0).write();
        Path gear = shop.resolve("gear.cwgear");
        Files.writeString(gear, Files.readString(gear).replaceFirst("ratedLoad=", "ratedLoad "));
        Run run = Run.of("validate", shop);
        assertEquals(3, run.code());
        List<String> lines = run.out().lines().toList();
        assertEquals(3, lines.size(), run.out());
        assertTrue(lines.get(0).startsWith("error: gear.cwgear:") && !lines.get(0).contains(".;"), run.out());
        assertTrue(lines.get(1).startsWith("error: 4 references to objects that were not found: most likely they lie in gear.cwgear;"),
                run.out());
        assertTrue(lines.get(2).endsWith("files read, 1 error and 4 that most likely follow, 0 other remarks"), run.out());
        assertRefused(Run.of("check", shop), "gear.cwgear", "from the top");
    }

    @Test
    void whatIsGoneIsToldOnceForAllThatReferToIt() throws Exception {
        Path shop = new SmallShop(folder).part("bonnet", "20 kg weighed", 1, 0).write();
        Path car = shop.resolve("cars/red.cwcar");
        Matcher first = Pattern.compile("shop:/#stand[^\"]*").matcher(Files.readString(car));
        assertTrue(first.find());
        Files.writeString(car, Files.readString(car).replaceAll("shop:/#stand[^\"]*", "shop:/#stand00000gone"));
        Run run = Run.of("validate", shop);
        assertEquals(2, run.out().lines().count(), run.out());
        assertTrue(run.out().contains("the same goes for 3 further references to it"), run.out());
        assertTrue(run.out().contains("4 errors, 0 other remarks"), run.out());
    }

    @Test
    void aMistypedNameIsAnsweredWithThoseNearIt() throws Exception {
        Path shop = new SmallShop(folder).part("bonnet", "20 kg weighed", 1, 0).write();
        assertRefused(Run.of("chekc", shop), "there is no verb chekc, did you mean \"check\" or ");
        assertRefused(Run.of("list-checks", "all"), "one word too many: all");
        assertRefused(Run.of("check", shop, "--jsn"), "there is no option --jsn, did you mean \"--json\"?");
        assertRefused(Run.of("explain", "support.lod"), "there is no check support.lod, did you mean \"support.load\"",
                "(list-checks shows");
        assertRefused(Run.of("check", shop, "--check", "stnad.load"), "did you mean \"stand.load\"?");
        assertRefused(Run.of("check", shop, "--only", "red cuope"), "did you mean \"Red coupe\"?");
        assertRefused(Run.of("may-come-off", shop, "bonet"), "no part is called bonet in this shop, did you mean \"bonnet\"?");
        assertRefused(Run.of("may-come-off", shop, "bonnet", "--car", "rde"), "did you mean \"Red coupe\"? (there are Red coupe)");
        assertRefused(Run.of("stock", "Holow section 60x60x4", "--into", shop), "did you mean \"Hollow section 60 x 60 x 4\"");
        assertRefused(Run.of("stock", "holow"), "did you mean \"Hollow section ");
        assertRefused(Run.of("explain", "something else"), "there is no check something else: list-checks shows the ids of all");
    }

    @Test
    void theMarkOfTheStartScriptIsTakenOff() {
        assertArrayEquals(new String[] {"check", "-data", "=3 mm", ""},
                CommandLineApplication.unmarked(new String[] {"=check", "=-data", "==3 mm", "="}));
    }

    static void assertRefused(Run run, String... words) {
        assertEquals(3, run.code(), run.out() + run.err());
        assertEquals("", run.out());
        for (String word : words) {
            assertTrue(run.err().contains(word), run.err());
        }
        assertFalse(run.err().contains("Exception"), run.err());
        assertFalse(run.err().contains("\tat "), run.err());
    }
}
