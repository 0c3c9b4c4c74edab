package cradlewright.verification;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Folders of source files: finding, copying, compiling, removing. */
final class Sources {

    private Sources() {
    }

    /** Returns the files below a folder whose names have the given end, in order. */
    static List<Path> below(Path folder, String end) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(end)).filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Copies all files below {@code from} to {@code to}. */
    static void copy(Path from, Path to) {
        for (Path file : below(from, "")) {
            Path target = to.resolve(from.relativize(file).toString());
            try {
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Removes a folder with all that lies in it. */
    static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Compiles files into a folder; returns false when they do not compile. */
    static boolean compile(List<Path> files, String classPath, Path target) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> quiet = new DiagnosticCollector<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(quiet, Locale.ROOT, null)) {
            Files.createDirectories(target);
            List<String> options = List.of("-proc:none", "-nowarn", "-classpath", classPath, "-d", target.toString());
            return compiler.getTask(null, manager, quiet, options, null, manager.getJavaFileObjectsFromPaths(files)).call();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Joins parts of a class path. */
    static String classPath(Object... parts) {
        return String.join(File.pathSeparator, Stream.of(parts).map(Object::toString).toList());
    }
}
