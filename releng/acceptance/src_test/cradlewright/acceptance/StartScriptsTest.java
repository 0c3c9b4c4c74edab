package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The start script for Windows is run on no machine of the build, so it is held to the one for Unix, which every test of the product
 * runs: the same options and the same library in the same order, paths in quotation marks, words of the user marked alike.
 */
class StartScriptsTest {

    private static final List<String> VARIABLES = List.of("here", "cache", "launcher", "java", "word");

    private String unix;
    private String windows;

    @BeforeEach
    void read() throws IOException {
        Path scripts = Project.root().resolve("features/cradlewright.core.feature/rootfiles");
        unix = Files.readString(scripts.resolve("cradlewright"));
        windows = Files.readString(scripts.resolve("cradlewright.cmd"));
    }

    /** Returns the one command that starts Java, its lines joined. */
    private static String start(String script, String java, String goesOn) {
        String joined = script.replace("\r", "").replace(goesOn + "\n", " ");
        List<String> lines = joined.lines().filter(line -> line.startsWith(java)).toList();
        assertEquals(1, lines.size(), joined);
        return lines.get(0);
    }

    private String unixStart() {
        return start(unix, "\"$java\" ", " \\");
    }

    private String windowsStart() {
        return start(windows, "\"%java%\" ", " ^");
    }

    /** Returns the words of a command as Java gets them, with one spelling for what the two shells spell differently. */
    private static List<String> words(String command) {
        return Arrays.stream(command.replace("\"", "").replace('\\', '/').split("\\s+")).map(word -> word.replaceAll("/$", "")).toList();
    }

    @Test
    void bothStartTheSame() {
        String fromUnix = unixStart().replace("${CRADLEWRIGHT_JAVA_OPTIONS:-}", "<options>").replace(" \"${@/#/=}\"", " <words>")
                .replaceAll("\\$(\\w+)", "<$1>");
        String fromWindows = windowsStart().replace("%CRADLEWRIGHT_JAVA_OPTIONS%", "<options>").replace("%words%", " <words>")
                .replaceAll("%(\\w+)%", "<$1>");
        assertEquals(words(fromUnix), words(fromWindows));
        assertTrue(words(fromWindows).containsAll(List.of("-jar", "<launcher>", "cradlewright.cli.app", "<words>")), fromWindows);
        assertTrue(unix.contains("/plugins/org.eclipse.equinox.launcher_*.jar") && windows.contains(
                "\\plugins\\org.eclipse.equinox.launcher_*.jar"), "the same library starts both");
    }

    @Test
    void pathsStandInQuotationMarks() {
        assertEquals(List.of(), bare(unix.replaceAll("(?m)^(#|java=).*", ""), "\\$%s\\b"));
        assertEquals(List.of(), bare(windows.replaceAll("(?m)^rem.*", ""), "%%%s%%"));
    }

    /** Returns the variables with a path in them that stand outside quotation marks somewhere. */
    private static List<String> bare(String script, String variable) {
        String outside = script.replaceAll("\"[^\"\\r\\n]*\"", "");
        return VARIABLES.stream().filter(name -> Pattern.compile(String.format(variable, name)).matcher(outside).find()).toList();
    }

    @Test
    void noPathSwallowsTheQuotationMarkBehindIt() {
        String withoutDoubling = windows.replace("if \"%word:~-1%\"==\"\\\" set \"word=%word%\\\"\r\n", "");
        assertFalse(withoutDoubling.equals(windows), "a folder written with a backslash at its end is looked after");
        assertFalse(withoutDoubling.contains("\\\""), "a backslash before a quotation mark takes its meaning away");
        assertTrue(windows.contains("set \"here=%~dp0.\""), "the folder of the script ends in a backslash of its own");
    }

    @Test
    void everyWordOfTheUserIsMarkedOnceAndNothingElseOfThemIsHandedOn() {
        assertTrue(unix.contains("\"${@/#/=}\""));
        assertTrue(windows.contains("set \"word=%~1\"\r\n") && windows.contains("set words=%words% \"=%word%\"\r\n"), windows);
        assertFalse(windows.contains("%*"), "words that the platform keeps for itself would reach it unmarked");
        assertTrue(windows.contains("DisableDelayedExpansion"), "an exclamation mark in a word would be taken away");
    }

    @Test
    void bothTellTheCodeOfTheProgramAndThatThereIsNoJava() {
        assertTrue(unix.strip().endsWith("\"${@/#/=}\""), "the last command gives the code");
        assertTrue(windows.contains("set \"code=%ERRORLEVEL%\"\r\n") && windows.stripTrailing().endsWith("exit /b %code%"), windows);
        assertTrue(windows.indexOf("set \"code=%ERRORLEVEL%\"") == windows.indexOf("%words%\r\n") + "%words%\r\n".length(),
                "nothing comes between the program and its code");
        Matcher said = Pattern.compile("no Java was found: [^\">]+").matcher(unix);
        assertTrue(said.find() && windows.contains(said.group()), "the same words");
    }

    @Test
    void theOneForWindowsHasLinesOfWindowsAndGoesWhereThereIsALabel() {
        assertEquals(0, windows.replace("\r\n", "").chars().filter(c -> c == '\n' || c == '\r').count(), "labels are missed otherwise");
        assertTrue(windows.chars().allMatch(c -> c < 128), "it is read in whatever code page the console has");
        Matcher jump = Pattern.compile("goto (\\w+)").matcher(windows);
        while (jump.find()) {
            assertTrue(windows.contains("\r\n:" + jump.group(1) + "\r\n"), jump.group());
        }
    }
}
