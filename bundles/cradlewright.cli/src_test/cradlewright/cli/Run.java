package cradlewright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** One run of the command line with what it wrote. */
record Run(int code, String out, String err) {

    static Run of(Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] words = Stream.of(arguments).map(Object::toString).toArray(String[]::new);
        int code = CommandLineMain.run(words, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Returns lines that are too long, or end in blanks, or hold a tab. */
    List<String> untidy() {
        return out.lines().filter(line -> line.length() > 100 || !line.equals(line.stripTrailing()) || line.contains("\t")).toList();
    }

    /** Returns the text without breaks, so that sentences can be found. */
    String flat() {
        return out.replaceAll("\\s+", " ");
    }

    /** Returns every file below a folder with its bytes. */
    static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.toList()) {
                String bytes = Files.isDirectory(file) ? "folder" : Base64.getEncoder().encodeToString(Files.readAllBytes(file));
                found.put(folder.relativize(file).toString(), bytes);
            }
        }
        return found;
    }
}
