package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The product with the window as somebody gets it: its start script, and that it keeps what is its own out of the shop. */
@EnabledOnOs(OS.LINUX)
class WorkbenchProductTest {

    private static final long HANG_SECONDS = 120;
    private static final int NO_DISPLAY = 3;

    @TempDir
    Path scratch;

    private ProcessBuilder script(Path... shop) {
        List<String> command = new ArrayList<>(List.of(Project.workbench().resolve("cradlewright-workbench").toString()));
        Stream.of(shop).map(Path::toString).forEach(command::add);
        ProcessBuilder builder = new ProcessBuilder(command).directory(scratch.toFile()).redirectErrorStream(true)
                .redirectOutput(scratch.resolve("output").toFile());
        builder.environment().put("CRADLEWRIGHT_HOME", scratch.resolve("home").toString());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        return builder;
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                all.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return all;
    }

    private static Path copyOfTheDemoShop(Path to) throws IOException {
        for (Map.Entry<String, String> file : contents(Project.demoShop()).entrySet()) {
            Path target = to.resolve(file.getKey());
            Files.createDirectories(target.getParent());
            Files.writeString(target, file.getValue());
        }
        return to;
    }

    @Test
    void withoutADisplayItSaysSoAndNamesTheCommandLine() throws IOException, InterruptedException {
        ProcessBuilder script = script();
        script.environment().remove("DISPLAY");
        script.environment().remove("WAYLAND_DISPLAY");
        Process process = script.start();
        assertTrue(process.waitFor(HANG_SECONDS, TimeUnit.SECONDS));
        assertEquals(NO_DISPLAY, process.exitValue());
        String words = Files.readString(scratch.resolve("output"));
        assertTrue(words.contains("no display") && words.contains("cradlewright check"), words);
    }

    @Test
    void itsCommandLineAnswersAsTheOneWithoutAWindow() throws IOException, InterruptedException {
        ProcessRunner.Result here = new ProcessRunner(Project.workbench(), scratch.resolve("here")).run("list-checks");
        ProcessRunner.Result there = new ProcessRunner(scratch.resolve("there")).run("list-checks");
        assertEquals(0, here.code(), here.err());
        assertEquals(there.out(), here.out());
    }

    @Test
    @EnabledIfEnvironmentVariable(named = "DISPLAY", matches = ".+")
    void itOpensTheShopThatIsNamedAndWritesNothingIntoIt() throws IOException, InterruptedException {
        Path shop = copyOfTheDemoShop(scratch.resolve("shop"));
        Map<String, String> before = contents(shop);
        Process process = script(shop).start();
        Path project = scratch.resolve("home/window/.metadata/.plugins/org.eclipse.core.resources/.projects/shop");
        try {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(HANG_SECONDS);
            while (!Files.isDirectory(project) && process.isAlive() && System.nanoTime() < end) {
                TimeUnit.MILLISECONDS.sleep(200);
            }
            assertTrue(process.isAlive(), () -> "it ended: " + output());
            assertTrue(Files.isDirectory(project), () -> "no project: " + output());
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().waitFor();
        }
        assertEquals(before, contents(shop));
    }

    private String output() {
        try {
            return Files.readString(scratch.resolve("output"));
        } catch (IOException e) {
            return e.getMessage();
        }
    }
}
