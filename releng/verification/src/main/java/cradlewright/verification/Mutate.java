package cradlewright.verification;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Changes one number of a mechanics package at a time by one part in a hundred and runs the package's own tests: a change
 * that no test notices is named. What counts as a number is written at {@link NumberLiteral}.
 *
 * <p>The package and its tests are compiled anew for each change, other packages stay as built; the tests run in a JVM of
 * their own with a limit of time, and running into it counts as noticed.
 */
public final class Mutate {

    private static final String BASE = "cradlewright/mechanics/";
    private static final long SECONDS = 120;

    private enum Outcome {
        KILLED, TIMED_OUT, SURVIVED, DOES_NOT_COMPILE
    }

    private final Path work;
    private final String family;
    private final String libraries;
    private final Path testClasses;
    private final Path resources;

    private Mutate(Path work, String family, String libraries) {
        this.work = work;
        this.family = family;
        this.libraries = libraries;
        this.testClasses = work.resolve("test-classes");
        this.resources = work.resolve("src_test");
    }

    /** Arguments: folder of the mechanics bundle; packages separated by commas, or {@code all}. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path bundle = Path.of(args[0]).toRealPath();
        for (String family : args[1].equals("all") ? families(bundle) : List.of(args[1].split(","))) {
            Path work = Files.createTempDirectory("mutate-");
            Mutate mutate = new Mutate(work, family, System.getProperty("java.class.path"));
            try {
                Sources.copy(bundle.resolve("src"), work.resolve("src"));
                Sources.copy(bundle.resolve("src_test"), mutate.resources);
                mutate.run();
            } finally {
                Sources.remove(work);
            }
        }
    }

    private static List<String> families(Path bundle) throws IOException {
        try (Stream<Path> folders = Files.list(bundle.resolve("src_test").resolve(BASE))) {
            return folders.filter(Files::isDirectory).map(folder -> folder.getFileName().toString())
                    .filter(name -> !name.equals("verify")).sorted().toList();
        }
    }

    private void run() throws IOException, InterruptedException {
        List<Path> sources = Sources.below(work.resolve("src").resolve(BASE + family), ".java");
        if (!Sources.compile(Sources.below(resources, ".java"), libraries, testClasses)) {
            throw new IllegalStateException("the tests do not compile against the classes built");
        }
        if (outcome(sources) != Outcome.SURVIVED) {
            throw new IllegalStateException("the tests of " + family + " must pass before a number is changed");
        }
        int[] counts = new int[Outcome.values().length];
        List<NumberLiteral> numbers = NumberLiteral.in(sources, libraries);
        for (NumberLiteral number : numbers) {
            String original = Files.readString(number.file());
            Files.writeString(number.file(), number.changeIn(original));
            Outcome outcome = outcome(sources);
            Files.writeString(number.file(), original);
            counts[outcome.ordinal()]++;
            if (outcome != Outcome.DOES_NOT_COMPILE) {
                System.out.printf("%-9s %s:%d  %s -> %s%n", outcome.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        number.file().getFileName(), number.line(), number.text(), Double.valueOf(number.changed()));
            }
        }
        int killed = counts[Outcome.KILLED.ordinal()] + counts[Outcome.TIMED_OUT.ordinal()];
        int changed = numbers.size() - counts[Outcome.DOES_NOT_COMPILE.ordinal()];
        System.out.printf("%s: %d of %d changes noticed (%.0f %%), %d left out because they do not compile%n", family, killed,
                changed, changed == 0 ? 100.0 : 100.0 * killed / changed, counts[Outcome.DOES_NOT_COMPILE.ordinal()]);
    }

    /** Compiles the package as it stands with its tests, which may have taken over constants, and runs the tests. */
    private Outcome outcome(List<Path> sources) throws IOException, InterruptedException {
        Path classes = work.resolve("classes");
        try {
            List<Path> all = new ArrayList<>(sources);
            all.addAll(Sources.below(resources.resolve(BASE + family), ".java"));
            if (!Sources.compile(all, Sources.classPath(testClasses, libraries), classes)) {
                return Outcome.DOES_NOT_COMPILE;
            }
            return runTests(Sources.classPath(classes, testClasses, resources, libraries));
        } finally {
            Sources.remove(classes);
        }
    }

    private Outcome runTests(String classPath) throws IOException, InterruptedException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process tests = new ProcessBuilder(java.toString(), "-ea", "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-classpath",
                classPath, RunTests.class.getName(), (BASE + family).replace('/', '.')).directory(work.toFile())
                .redirectErrorStream(true).redirectOutput(work.resolve("tests.log").toFile()).start();
        if (!tests.waitFor(SECONDS, TimeUnit.SECONDS)) {
            tests.destroyForcibly().waitFor();
            return Outcome.TIMED_OUT;
        }
        return switch (tests.exitValue()) {
            case 0 -> Outcome.SURVIVED;
            case RunTests.FAILED -> Outcome.KILLED;
            default -> throw new IllegalStateException("the tests of " + family + " ended with " + tests.exitValue() + ":\n"
                    + Files.readString(work.resolve("tests.log")));
        };
    }
}
