package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An element that may be of several sorts is answered with those that fit, not with the words of the platform. */
class MissingSortTest {

    @TempDir
    Path directory;

    private ReadProblem read(String item) throws IOException {
        Files.writeString(directory.resolve("shop.cwshop"),
                "<base:Shop xmlns:base=\"urn:cradlewright:base\" schema=\"3\" id=\"k3w9z0shop001\" name=\"Shed\"/>\n");
        Files.writeString(directory.resolve("stock.cwstock"), "<stock:Stock xmlns:stock=\"urn:cradlewright:stock\" "
                + "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" schema=\"3\">\n  " + item + "\n</stock:Stock>\n");
        List<ReadProblem> problems = ShopFolder.open(directory).problems();
        assertEquals(1, problems.size(), problems::toString);
        assertEquals(2, problems.get(0).line());
        return problems.get(0);
    }

    @Test
    void namesTheSortsThatFit() throws IOException {
        ReadProblem problem = read("<items xsi:type=\"stock:Section\" id=\"k3w9z0sec0001\" name=\"tube\"/>");
        assertEquals("nothing says what sort of section this is", problem.what());
        assertEquals("write xsi:type=\"stock:FoldedSection\" or xsi:type=\"stock:HollowSection\" or xsi:type=\"stock:RoundTube\" or "
                + "xsi:type=\"stock:FlatBar\" or xsi:type=\"stock:TeeSection\" or xsi:type=\"stock:TimberRail\" into it", problem.mend());
    }

    @Test
    void namesTheSortThatASlipAwayIsMeant() throws IOException {
        ReadProblem problem = read("<items xsi:type=\"stock:RundTube\" id=\"k3w9z0sec0001\" name=\"tube\"/>");
        assertEquals("there is no sort \"RundTube\"", problem.what());
        assertEquals("write xsi:type=\"stock:RoundTube\" into it", problem.mend());
    }

    @Test
    void aMissingSortIsNotTakenForASpelling() throws IOException {
        assertTrue(read("<items id=\"k3w9z0sec0001\" name=\"tube\"/>").mend().contains("xsi:type=\"stock:RoundTube\""));
    }
}
