package cradlewright.codegen;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The checked-in code of the model is what the generator makes of the ecore files, byte for byte. */
class SrcGenIsFreshTest {

    private static final Path BUNDLE = Path.of(System.getProperty("model.bundle"));
    private static final String MEND = ": run the class Regenerate with --write (see the pom of this module)";

    @Test
    void sourcesAreGeneratedFromTheMetamodel(@TempDir Path scratch) throws IOException {
        Path fresh = Regenerate.generate(BUNDLE, scratch);
        Path checkedIn = BUNDLE.resolve("src-gen");
        assertFalse(Regenerate.list(fresh).isEmpty(), "nothing was generated");
        assertEquals(Regenerate.list(fresh), Regenerate.list(checkedIn), "list of generated files" + MEND);
        for (String name : Regenerate.list(fresh)) {
            assertArrayEquals(Files.readAllBytes(fresh.resolve(name)), Files.readAllBytes(checkedIn.resolve(name)), name + MEND);
        }
    }

    @Test
    void twoRunsGiveTheSameBytes(@TempDir Path scratch) throws IOException {
        Path first = Regenerate.generate(BUNDLE, scratch.resolve("first"));
        Path second = Regenerate.generate(BUNDLE, scratch.resolve("second"));
        assertEquals(Regenerate.list(first), Regenerate.list(second));
        for (String name : Regenerate.list(first)) {
            assertEquals(-1, Files.mismatch(first.resolve(name), second.resolve(name)), name);
        }
    }
}
