package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import cradlewright.acceptance.ProcessRunner.Result;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A bundle that is not part of the project, compiled against the plugins of the product and dropped into a copy of it: it adds a check
 * through the extension point, with nothing but what the bundles export.
 */
@EnabledOnOs(OS.LINUX)
class ContributedBundleTest {

    private static final String CHECK = "yard.pushed-by-one";

    @TempDir
    Path scratch;
    private ProcessRunner cradlewright;

    @BeforeEach
    void addTheBundle() throws IOException {
        Path product = scratch.resolve("a product in a folder with blanks");
        copy(Project.product(), product);
        Path bundle = product.resolve("plugins/yard.checks_1.0.0.jar");
        pack(compile(product.resolve("plugins")), bundle);
        Files.writeString(product.resolve("configuration/org.eclipse.equinox.simpleconfigurator/bundles.info"),
                "yard.checks,1.0.0,plugins/yard.checks_1.0.0.jar,4,false\n", StandardOpenOption.APPEND);
        cradlewright = new ProcessRunner(product, scratch);
    }

    @Test
    void itsCheckIsListedExplainedAndAsked() throws Exception {
        Result list = cradlewright.run("list-checks");
        assertTrue(list.out().contains(CHECK) && list.out().contains("May one person move this alone?"), list.out() + list.err());
        Result explained = cradlewright.run("explain", CHECK);
        assertEquals(0, explained.code(), explained.err());
        assertTrue(explained.out().contains("rule of this yard"), explained.out());

        Result run = cradlewright.run("check", Project.demoShop(), "--day", "2026-11-25", "--check", CHECK, "--json");
        assertEquals(1, run.code(), run.err());
        int asked = 0;
        for (JsonElement element : JsonParser.parseString(run.out()).getAsJsonObject().getAsJsonArray("subjects")) {
            JsonObject subject = element.getAsJsonObject();
            JsonArray findings = subject.getAsJsonArray("findings");
            if (findings.isEmpty() || subject.get("weight").isJsonNull()) {
                continue;
            }
            JsonObject weight = subject.getAsJsonObject("weight");
            boolean heavy = weight.get("mass").getAsDouble() + weight.get("massGiveOrTake").getAsDouble() > 300;
            assertEquals(heavy, "STOP".equals(findings.get(0).getAsJsonObject().get("verdict").getAsString()), subject.toString());
            asked++;
        }
        assertTrue(asked > 8, run.out());
    }

    private Path compile(Path plugins) throws IOException {
        Path source = Project.root().resolve("releng/acceptance/sample/yard.checks");
        Path classes = scratch.resolve("classes");
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> arguments = new ArrayList<>(List.of("--release", "17", "-proc:none", "-d", classes.toString(), "-cp"));
        try (Stream<Path> jars = Files.list(plugins); Stream<Path> files = Files.walk(source.resolve("src"))) {
            arguments.add(jars.map(Path::toString).filter(name -> name.contains("cradlewright.")).collect(Collectors.joining(":")));
            files.map(Path::toString).filter(name -> name.endsWith(".java")).forEach(arguments::add);
        }
        assertEquals(0, compiler.run(null, null, null, arguments.toArray(String[]::new)));
        copy(source.resolve("META-INF"), classes.resolve("META-INF"));
        Files.copy(source.resolve("plugin.xml"), classes.resolve("plugin.xml"));
        return classes;
    }

    private static void pack(Path classes, Path jar) throws IOException {
        try (OutputStream file = Files.newOutputStream(jar); JarOutputStream out = new JarOutputStream(file);
                Stream<Path> walk = Files.walk(classes)) {
            for (Path path : walk.filter(Files::isRegularFile).toList()) {
                out.putNextEntry(new ZipEntry(classes.relativize(path).toString()));
                Files.copy(path, out);
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> walk = Files.walk(from)) {
            for (Path path : walk.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
    }
}
