package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The form of sources as {@code .editorconfig} states it, for whoever writes without an editor that reads it. */
class SourceFormTest {

    private static final int WIDTH = 140;

    private static List<Path> sources() throws IOException {
        List<Path> found = new ArrayList<>();
        for (String top : List.of("bundles", "releng")) {
            try (Stream<Path> walk = Files.walk(Project.root().resolve(top))) {
                walk.filter(path -> path.toString().endsWith(".java")).filter(path -> !path.toString().contains("/src-gen/"))
                        .filter(path -> !path.toString().contains("/target/")).forEach(found::add);
            }
        }
        return found;
    }

    @Test
    void theWidthIsThatOfTheEditors() throws IOException {
        assertTrue(Files.readString(Project.root().resolve(".editorconfig")).contains("max_line_length = " + WIDTH + "\n"));
    }

    @Test
    void linesAreShortAndCleanAndImportsAreNamed() throws IOException {
        List<String> complaints = new ArrayList<>();
        for (Path source : sources()) {
            String text = Files.readString(source);
            if (!text.endsWith("\n") || text.endsWith("\n\n")) {
                complaints.add(source + ": ends without exactly one line end");
            }
            List<String> lines = text.lines().toList();
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                if (line.length() > WIDTH || line.indexOf('\t') >= 0 || !line.equals(line.stripTrailing())
                        || line.matches("import .*\\.\\*;")) {
                    complaints.add(source + ":" + (i + 1) + ": " + line);
                }
            }
        }
        assertEquals(List.of(), complaints);
    }
}
