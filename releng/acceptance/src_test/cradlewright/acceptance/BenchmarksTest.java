package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The benchmarks are run by hand and belong to no bundle; here they are at least compiled against what was built. */
class BenchmarksTest {

    @TempDir
    Path classes;

    @Test
    void theBenchmarksStillFitTheBundles() throws IOException {
        compile("releng/benchmarks/src", Project.product());
    }

    @Test
    void theMeasurementsOfTheWindowStillFitTheBundles() throws IOException {
        compile("releng/benchmarks/window-src", Project.workbench());
    }

    private void compile(String sources, Path product) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("--release", "17", "-proc:none", "-nowarn", "-d", classes.toString(), "-cp"));
        arguments.add(Stream.concat(builtClasses(), libraries(product)).collect(Collectors.joining(File.pathSeparator)));
        try (Stream<Path> walk = Files.walk(Project.root().resolve(sources))) {
            walk.map(Path::toString).filter(name -> name.endsWith(".java")).forEach(arguments::add);
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int code = ToolProvider.getSystemJavaCompiler().run(null, said, said, arguments.toArray(String[]::new));
        assertEquals(0, code, said.toString(StandardCharsets.UTF_8));
    }

    private static Stream<String> builtClasses() throws IOException {
        try (Stream<Path> bundles = Files.list(Project.root().resolve("bundles"))) {
            return bundles.map(bundle -> bundle.resolve("target/classes")).filter(Files::isDirectory).map(Path::toString).toList().stream();
        }
    }

    private static Stream<String> libraries(Path product) throws IOException {
        try (Stream<Path> plugins = Files.list(product.resolve("plugins"))) {
            return plugins.filter(jar -> !jar.getFileName().toString().startsWith("cradlewright.")).map(Path::toString).toList().stream();
        }
    }
}
