package cradlewright.acceptance;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs the materialised command line as a process of its own, in an empty folder and with an empty folder for temporary files, and ends it
 * when it hangs. The limit is far above any honest run: it catches a hang and measures nothing.
 */
final class ProcessRunner {

    /** What came back. */
    record Result(int code, String out, String err) {
    }

    private static final long HANG_SECONDS = 120;

    private final Path product;
    private final Path temporary;
    private final Path working;
    private final Path streams;

    /** Runs the product as built; makes three empty folders below the one given. */
    ProcessRunner(Path scratch) throws IOException {
        this(Project.product(), scratch);
    }

    /** Runs a product of one's own. */
    ProcessRunner(Path product, Path scratch) throws IOException {
        this.product = product;
        temporary = Files.createDirectories(scratch.resolve("temporary"));
        working = Files.createDirectories(scratch.resolve("working"));
        streams = Files.createDirectories(scratch.resolve("streams"));
    }

    /** Runs the command line to its end; throws IllegalStateException when it hangs. */
    Result run(Object... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(product.resolve("cradlewright").toString()));
        Stream.of(arguments).map(Object::toString).forEach(command::add);
        Path out = streams.resolve("out");
        Path err = streams.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command).directory(working.toFile()).redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("TMPDIR", temporary.toString());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        process.getOutputStream().close();
        try {
            if (!process.waitFor(HANG_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("still running after " + HANG_SECONDS + " s: " + command);
            }
        } finally {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        return new Result(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    /** Returns what the runs left in the folders that were empty before. */
    List<String> leftBehind() throws IOException {
        try (Stream<Path> one = Files.list(temporary); Stream<Path> other = Files.list(working)) {
            return Stream.concat(one, other).map(Path::toString).sorted().toList();
        }
    }
}
