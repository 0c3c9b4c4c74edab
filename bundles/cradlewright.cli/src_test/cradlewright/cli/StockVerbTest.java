package cradlewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockVerbTest {

    private static final String NAME = "Hollow section 60 x 60 x 4";

    @TempDir
    Path folder;

    @BeforeEach
    void write() throws Exception {
        Files.writeString(folder.resolve("shop.cwshop"),
                "<base:Shop xmlns:base=\"urn:cradlewright:base\" schema=\"3\" id=\"shop000000001\" name=\"Shed\"/>\n");
    }

    @Test
    void allIsListedWithItsSource() {
        Run all = Run.of("stock");
        assertEquals(0, all.code(), all.err());
        assertEquals(List.of(), all.untidy());
        assertTrue(all.flat().contains("M10 8.8 ISO 4017, fully threaded; ISO 898-1"), all.out());
        Run some = Run.of("stock", "hollow section 60");
        assertTrue(some.out().contains(NAME) && !some.out().contains("M10"), some.out());
    }

    @Test
    void aCopyGoesIntoTheStockOfTheShopOnce() throws Exception {
        Run run = Run.of("stock", NAME, "--into", folder);
        assertEquals(0, run.code(), run.err());
        String text = Files.readString(folder.resolve("stock.cwstock"));
        assertTrue(text.contains("name=\"" + NAME + "\"") && text.contains("source=\"EN 10219-2"), text);
        assertEquals(0, Run.of("validate", folder).code());
        Run again = Run.of("stock", NAME, "--into", folder);
        assertTrue(again.flat().contains("nothing was written"), again.out());
        assertEquals(text, Files.readString(folder.resolve("stock.cwstock")));
    }

    @Test
    void whatIsWrongIsNamedAndNothingIsWritten() throws Exception {
        assertEquals(3, Run.of("stock", "unobtainium").code());
        assertTrue(Run.of("stock", "Hollow", "--into", folder).err().contains("nothing in the list is called"));
        assertTrue(Run.of("stock", "--into", folder).err().contains("name it"));
        assertTrue(Run.of("stock", NAME, "--into", folder.resolve("nowhere")).err().contains("is not a folder"));
        Files.writeString(folder.resolve("stock.cwstock"), "<broken");
        Run broken = Run.of("stock", NAME, "--into", folder);
        assertEquals(3, broken.code());
        assertTrue(broken.err().contains("validate"), broken.err());
        assertEquals("<broken", Files.readString(folder.resolve("stock.cwstock")));
        Files.delete(folder.resolve("shop.cwshop"));
        assertTrue(Run.of("stock", NAME, "--into", folder).err().contains("is no shop"));
        assertFalse(Files.exists(folder.resolve(".versions")));
    }
}
