package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import cradlewright.acceptance.ProcessRunner.Result;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The product as somebody gets it: unpacked, started from a shell, on the demo shop and on files that mean harm. */
@EnabledOnOs(OS.LINUX)
class CommandLineProductTest {

    private static final String DAY = "2026-11-25";
    private static final String SHOP_FILE =
            "<base:Shop xmlns:base=\"urn:cradlewright:base\" schema=\"3\" id=\"shop000000001\" name=\"Shed\"/>\n";
    private static final String CAR_HEAD =
            "<vehicle:Car xmlns:vehicle=\"urn:cradlewright:vehicle\" schema=\"3\" id=\"car0000000001\" name=\"Red coupe\">\n";

    @TempDir
    Path scratch;
    private ProcessRunner cradlewright;
    private Path shop;

    @BeforeEach
    void begin() throws IOException {
        cradlewright = new ProcessRunner(scratch);
        shop = Files.createDirectories(scratch.resolve("shop"));
    }

    @AfterEach
    void nothingIsLeftBehind() throws IOException {
        assertEquals(List.of(), cradlewright.leftBehind());
    }

    @Test
    void helpNamesTheVerbsAndTheExitCodes() throws Exception {
        Result result = cradlewright.run("--help");
        assertEquals(0, result.code(), result.err());
        for (String word : List.of("check", "may-come-off", "sign", "list-checks", "explain", "validate", "convert", "Exit codes")) {
            assertTrue(result.out().contains(word), result.out());
        }
    }

    @Test
    void theDemoShopStopsAndStaysAsItIs() throws Exception {
        Map<String, String> before = files(Project.demoShop());
        Result result = cradlewright.run("check", Project.demoShop(), "--day", DAY);
        assertEquals(1, result.code(), result.out() + result.err());
        assertEquals("", result.err());
        assertTrue(result.out().contains("[lift.still-fast]"), result.out());
        assertTrue(result.out().contains("\nCautions\n"), result.out());
        assertEquals(before, files(Project.demoShop()));
    }

    @Test
    void jsonSaysTheSameAsTheExitCode() throws Exception {
        Result result = cradlewright.run("check", Project.demoShop(), "--day", DAY, "--json");
        assertEquals(1, result.code(), result.err());
        JsonObject root = JsonParser.parseString(result.out()).getAsJsonObject();
        assertEquals(1, root.get("format").getAsInt());
        assertEquals(DAY, root.get("day").getAsString());
        assertEquals("STOP", root.get("verdict").getAsString());
        assertTrue(root.getAsJsonArray("subjects").size() > 10);
        long balanced = root.getAsJsonArray("subjects").asList().stream().map(JsonElement::getAsJsonObject)
                .filter(subject -> !subject.get("loads").isJsonNull()).peek(CommandLineProductTest::assertBalanced).count();
        assertTrue(balanced >= 10, "visits with loads: " + balanced);
    }

    /** Statics, whatever the program: the supports together carry the weight, with the standard gravity of the CGPM of 1901. */
    private static void assertBalanced(JsonObject subject) {
        double carried = 0;
        for (JsonElement support : subject.getAsJsonObject("loads").getAsJsonArray("supports")) {
            carried += support.getAsJsonObject().get("carries").getAsDouble();
        }
        double weight = 9.80665 * subject.getAsJsonObject("weight").get("mass").getAsDouble();
        assertEquals(weight, carried, 1e-6 * weight, subject.get("label").getAsString());
    }

    @Test
    void aPartOfTheDemoShop() throws Exception {
        Map<String, String> before = files(Project.demoShop());
        Result result = cradlewright.run("may-come-off", Project.demoShop(), "tailgate", "--car", "black", "--day", DAY);
        assertEquals(0, result.code(), result.out() + result.err());
        assertTrue(result.out().contains("YES"), result.out());
        assertEquals(before, files(Project.demoShop()));
    }

    @Test
    void theSchemaOfTheAnswersIsInTheProduct() throws Exception {
        try (Stream<Path> plugins = Files.list(Project.product().resolve("plugins"))) {
            Path report = plugins.filter(file -> file.getFileName().toString().startsWith("cradlewright.report_")).findFirst()
                    .orElseThrow();
            try (ZipFile jar = new ZipFile(report.toFile())) {
                assertTrue(jar.getEntry("cradlewright/report/json/answers.schema.json") != null, report.toString());
            }
        }
    }

    @Test
    void aFolderThatIsNoShopIsBadInput() throws Exception {
        assertRefused(cradlewright.run("check", scratch.resolve("nowhere")), "nowhere", "is not a folder");
        assertRefused(cradlewright.run("check", shop), "shop.cwshop", "this folder is not a shop");
        assertRefused(cradlewright.run("check", Project.demoShop(), "--check", "no.such"), "no.such", "list-checks");
    }

    @Test
    void wordsOfThePlatformAreTheUsersOwn() throws Exception {
        for (String word : List.of("-application", "-data", "-console", "-clean", "-debug", "-vmargs")) {
            assertRefused(cradlewright.run("list-checks", word, "x y"), "no option " + word);
        }
        assertRefused(cradlewright.run("list-checks", "x y"), "x y");
        Result result = cradlewright.run("convert", "=3 mm", "in");
        assertRefused(result, "=3 mm");
    }

    @Test
    void anEntityBombIsTurnedDown() throws Exception {
        StringBuilder bomb = new StringBuilder("<?xml version=\"1.0\"?>\n<!DOCTYPE x [\n<!ENTITY e0 \"boom\">\n");
        for (int i = 1; i < 20; i++) {
            bomb.append("<!ENTITY e").append(i).append(" \"").append(("&e" + (i - 1) + ";").repeat(10)).append("\">\n");
        }
        assertHostile("red.cwcar", bomb + "]>\n" + CAR_HEAD.replace("Red coupe", "&e19;") + "</vehicle:Car>\n", "cars/red.cwcar:2");
    }

    @Test
    void aFileFromOutsideIsNotFetched() throws Exception {
        Path secret = Files.writeString(scratch.resolve("secret.txt"), "the safe opens at noon");
        String text = "<?xml version=\"1.0\"?>\n<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>\n"
                + CAR_HEAD.replace("Red coupe", "&e;") + "</vehicle:Car>\n";
        Result result = assertHostile("red.cwcar", text, "cars/red.cwcar:2");
        assertFalse((result.out() + result.err()).contains("noon"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<", "\u0000\u0001\u0002", "<vehicle:Car xmlns:vehicle=\"urn:cradlewright:vehicle\" schema=\"3\" na"})
    void aTruncatedFileIsTurnedDown(String text) throws Exception {
        assertHostile("red.cwcar", text, "cars/red.cwcar");
    }

    @Test
    void aNegativeThicknessIsNamedWithFileLineAndObject() throws Exception {
        String text = CAR_HEAD + "  <liftPoints id=\"point00000001\" name=\"front left\"\n"
                + "      sheetThickness=\"-2 mm measured\"/>\n</vehicle:Car>\n";
        Result result = assertHostile("red.cwcar", text, "cars/red.cwcar:3");
        assertTrue(result.err().contains("lift point \"front left\""), result.err());
        assertTrue(result.err().contains("-2 mm"), result.err());
    }

    private Result assertHostile(String name, String text, String place) throws Exception {
        Files.writeString(shop.resolve("shop.cwshop"), SHOP_FILE);
        Files.createDirectories(shop.resolve("cars"));
        Files.writeString(shop.resolve("cars").resolve(name), text, StandardCharsets.UTF_8);
        Map<String, String> before = files(shop);
        Result result = cradlewright.run("check", shop, "--day", DAY);
        assertRefused(result, place);
        assertEquals(before, files(shop));
        return result;
    }

    private static void assertRefused(Result result, String... words) {
        assertEquals(3, result.code(), result.out() + result.err());
        assertEquals("", result.out());
        for (String word : words) {
            assertTrue(result.err().contains(word), result.err());
        }
        assertFalse(result.err().contains("\tat ") || result.err().contains("Exception"), result.err());
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.toList()) {
                found.put(folder.relativize(file).toString(),
                        Files.isDirectory(file) ? "folder" : Base64.getEncoder().encodeToString(Files.readAllBytes(file)));
            }
        }
        return found;
    }
}
