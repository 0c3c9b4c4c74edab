package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.ThrowingSupplier;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are broken or mean harm are answered in words, quickly, and are never touched. */
class HostileFilesTest {

    private static final Duration LIMIT = Duration.ofSeconds(5);
    /** Stops a hang; the limit itself is on processor time, which other work on the machine does not lengthen. */
    private static final Duration HANG = Duration.ofSeconds(60);
    private static final String CAR = "cars/x.cwcar";
    private static final String HEAD =
            "<vehicle:Car xmlns:vehicle=\"urn:cradlewright:vehicle\" schema=\"3\" id=\"car0000000001\" name=\"x\"";

    @TempDir
    Path directory;

    @BeforeEach
    void beginShop() throws IOException {
        Files.createDirectories(directory.resolve("cars"));
        Files.writeString(directory.resolve("shop.cwshop"),
                "<base:Shop xmlns:base=\"urn:cradlewright:base\" schema=\"3\" id=\"shop000000001\" name=\"Shed\"/>\n");
    }

    /** One line of the list of expectations. */
    record Expected(String file, ShopFile.State state, String line, String fragment) {
        @Override
        public String toString() {
            return file;
        }
    }

    static Stream<Expected> expectations() throws IOException {
        return resource("expected.tsv").lines().skip(1).map(line -> line.split("\t", -1))
                .map(cells -> new Expected(cells[0], ShopFile.State.valueOf(cells[1]), cells[2], cells[3]));
    }

    private static String resource(String name) throws IOException {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) throws IOException {
        try (var in = HostileFilesTest.class.getResourceAsStream("/hostile/" + name)) {
            return in.readAllBytes();
        }
    }

    @ParameterizedTest
    @MethodSource("expectations")
    void isAnsweredInWordsAndLeftAlone(Expected expected) throws IOException {
        byte[] bytes = bytes(expected.file() + ".cwcar");
        List<ReadProblem> problems = problems(bytes, expected.state());
        List<ReadProblem> fitting = problems.stream().filter(problem -> problem.text().contains(expected.fragment())).toList();
        assertFalse(fitting.isEmpty(), () -> "wanted " + expected.fragment() + " among " + texts(problems));
        ReadProblem problem = fitting.get(0);
        assertEquals(CAR, problem.file());
        if (!expected.line().isEmpty()) {
            assertEquals(Integer.parseInt(expected.line()), problem.line(), problem.text());
        }
        assertFalse(problem.mend().isBlank());
        for (ReadProblem each : problems) {
            assertFalse(each.text().contains("Exception") || each.text().contains("\n"), each.text());
        }
    }

    @Test
    void everyFileOfTheCorpusIsExpected() throws IOException {
        List<String> expected = expectations().map(Expected::file).toList();
        try (Stream<Path> files = Files.list(Path.of("src_test/hostile"))) {
            List<String> corpus = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".cwcar"))
                    .map(name -> name.replace(".cwcar", "")).sorted().toList();
            assertEquals(corpus, expected.stream().sorted().toList());
        }
    }

    @Test
    void twoHundredThousandNestedElements() throws IOException {
        String deep = HEAD + ">" + "<pieces>".repeat(200_000) + "</pieces>".repeat(200_000) + "</vehicle:Car>";
        assertSays("nested deeper than 64", problems(deep, ShopFile.State.REFUSED));
    }

    @Test
    void depthIsRefusedFromTheSixtyFifthElementOn() throws IOException {
        String inside64 = HEAD + ">" + "<pieces>".repeat(63) + "</pieces>".repeat(63) + "</vehicle:Car>";
        problems(inside64, ShopFile.State.INCOMPLETE);
        String inside65 = HEAD + ">" + "<pieces>".repeat(64) + "</pieces>".repeat(64) + "</vehicle:Car>";
        assertSays("nested deeper than 64;", problems(inside65, ShopFile.State.REFUSED));
    }

    @Test
    void twoHundredThousandElementsThatAreNeverClosed() throws IOException {
        assertSays("nested deeper than 64", problems(HEAD + ">" + "<pieces>".repeat(200_000), ShopFile.State.REFUSED));
    }

    @Test
    void moreThanAMillionElements() throws IOException {
        String wide = HEAD + ">" + "<marks/>".repeat(1_000_001) + "</vehicle:Car>";
        assertSays("more than 1000000 elements", problems(wide, ShopFile.State.REFUSED));
    }

    @Test
    void moreThanTwentyMegabytes() throws IOException {
        String large = HEAD + ">" + " ".repeat(20_000_001) + "</vehicle:Car>";
        assertSays("larger than 20 MB", problems(large, ShopFile.State.REFUSED));
    }

    @Test
    void hugeAttribute() throws IOException {
        String huge = HEAD + " note=\"" + "n".repeat(15_000_000) + "\"/>";
        assertSays("longer than 100000 characters", problems(huge, ShopFile.State.REFUSED));
    }

    @Test
    void hugeText() throws IOException {
        String huge = HEAD + "><pieces id=\"piece00000001\" name=\"s\"><outline>" + "1".repeat(15_000_000)
                + "</outline></pieces></vehicle:Car>";
        assertSays("longer than 100000 characters", problems(huge, ShopFile.State.REFUSED));
    }

    @Test
    void longListOfReferencesToNothing() throws IOException {
        StringBuilder list = new StringBuilder();
        for (int i = 0; i < 9_000; i++) {
            list.append("nothing").append(i).append(' ');
        }
        String marks = "<marks id=\"m%d\" name=\"m\"/>";
        StringBuilder text = new StringBuilder(HEAD + ">");
        for (int i = 0; i < 20_000; i++) {
            text.append(String.format(marks, i));
        }
        text.append("<stages id=\"stage00000001\" name=\"s\" on=\"").append(list.substring(0, 99_000))
                .append("\"/></vehicle:Car>");
        List<ReadProblem> problems = problems(text.toString(), ShopFile.State.INCOMPLETE);
        assertSays("which no object in this file has", problems);
        assertSays("more problems in this file are not listed", problems);
        assertTrue(problems.size() < 250, () -> problems.size() + " problems");
    }

    @Test
    void longCircleOfReferences() throws IOException {
        int length = 30_000;
        StringBuilder text = new StringBuilder(
                "<job:JobBook xmlns:job=\"urn:cradlewright:job\" schema=\"3\"><jobs id=\"job0000000001\" name=\"j\">");
        for (int i = 0; i < length; i++) {
            text.append("<operations id=\"o").append(i).append("\" name=\"o").append(i).append("\" after=\"o")
                    .append((i + 1) % length).append("\"/>");
        }
        Files.writeString(directory.resolve("jobs.cwjobs"), text.append("</jobs></job:JobBook>"));
        ShopFolder shop = inTime(() -> ShopFolder.open(directory));
        assertSays("goes round in a circle", shop.problems());
        assertEquals(1, shop.problems().size(), () -> texts(shop.problems()));
    }

    @Test
    void operationAfterItself() throws IOException {
        Files.writeString(directory.resolve("jobs.cwjobs"), """
                <job:JobBook xmlns:job="urn:cradlewright:job" schema="3">
                  <jobs id="job0000000001" name="j">
                    <operations id="op00000000001" name="weld" after="op00000000001"/>
                  </jobs>
                </job:JobBook>
                """);
        List<ReadProblem> problems = ShopFolder.open(directory).problems();
        assertSays("goes round in a circle", problems);
        assertEquals(3, problems.get(0).line());
        assertEquals("operation \"weld\"", problems.get(0).objectName());
        assertEquals("op00000000001", problems.get(0).objectId());
    }

    @Test
    void folderWithoutShopAndFolderThatIsNotThere() {
        for (String name : List.of("cars", "nowhere")) {
            ShopFolder shop = ShopFolder.open(directory.resolve(name));
            assertSays("this folder is not a shop", shop.problems());
            assertTrue(shop.files().isEmpty());
        }
    }

    @Test
    void linkOutOfTheShop(@TempDir Path elsewhere) throws IOException {
        Path outside = Files.writeString(elsewhere.resolve("secret.cwcar"), HEAD + "/>");
        Files.createSymbolicLink(directory.resolve(CAR), outside);
        assertSays("leads out of the shop", ShopFolder.open(directory).problems());
    }

    @Test
    void folderNamedLikeAFile() throws IOException {
        Files.createDirectories(directory.resolve(CAR));
        assertSays("this is not a file", ShopFolder.open(directory).problems());
    }

    @Test
    void fileThatLiesInTheWrongFolder() throws IOException {
        Files.writeString(directory.resolve("x.cwcar"), HEAD + "/>");
        ShopFolder shop = ShopFolder.open(directory);
        assertSays("does not belong here", shop.problems());
        assertTrue(shop.cars().isEmpty());
    }

    private List<ReadProblem> problems(String text, ShopFile.State state) throws IOException {
        return problems(text.getBytes(StandardCharsets.UTF_8), state);
    }

    private List<ReadProblem> problems(byte[] bytes, ShopFile.State state) throws IOException {
        Path car = directory.resolve(CAR);
        Files.write(car, bytes);
        PrintStream usual = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        ShopFolder shop;
        List<ReadProblem> problems;
        try {
            shop = inTime(() -> ShopFolder.open(directory));
            problems = new ArrayList<>(shop.problems());
            problems.addAll(inTime(() -> ValueRules.check(shop)));
        } finally {
            System.setErr(usual);
        }
        assertEquals("", printed.toString(StandardCharsets.UTF_8), "nothing is printed past the caller");
        ShopFile file = shop.files().stream().filter(f -> f.path().equals(CAR)).findFirst().orElseThrow();
        assertEquals(state, file.state(), () -> texts(problems));
        if (state != ShopFile.State.WRITABLE) {
            assertEquals(SaveOutcome.Kind.REFUSED, new ShopWriter(shop, Clock.systemUTC()).save(file).kind());
        }
        assertArrayEquals(bytes, Files.readAllBytes(car), "the file was changed");
        return problems;
    }

    private static <T> T inTime(ThrowingSupplier<T> work) {
        return assertTimeoutPreemptively(HANG, () -> {
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            long before = threads.getCurrentThreadCpuTime();
            T result = work.get();
            long used = threads.getCurrentThreadCpuTime() - before;
            assertTrue(used < LIMIT.toNanos(), () -> "took " + Duration.ofNanos(used));
            return result;
        });
    }

    private static void assertSays(String fragment, List<ReadProblem> problems) {
        assertTrue(problems.stream().anyMatch(problem -> problem.text().contains(fragment)),
                () -> "wanted " + fragment + " among " + texts(problems));
    }

    private static String texts(List<ReadProblem> problems) {
        return String.join("\n", problems.stream().limit(20).map(ReadProblem::text).toList());
    }
}
