package cradlewright.report.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.report.Answers;
import cradlewright.report.UnitSystem;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class HtmlReportTest {

    @TempDir
    Path folder;

    private String page() throws Exception {
        new HtmlReport(UnitSystem.METRIC).write(Answers.all(), Answers.engine().reader(), Answers.DAY, folder.resolve("pages"));
        return Files.readString(folder.resolve("pages/index.html"), StandardCharsets.UTF_8);
    }

    /** The page is written so that every element is closed; an XML parser then proves nesting and masking. */
    private Document document() throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page())));
    }

    @Test
    void everyElementIsClosedAndNamesAreMasked() throws Exception {
        Document page = document();
        assertEquals("html", page.getDocumentElement().getTagName());
        assertEquals("Shed & yard", page.getElementsByTagName("title").item(0).getTextContent());
        assertTrue(page.getElementsByTagName("h2").item(0).getTextContent().startsWith(Answers.NASTY));
        assertEquals(0, page.getElementsByTagName("b").getLength());
        assertTrue(page.getDocumentElement().getTextContent().contains("It gives way & falls."));
    }

    @Test
    void everyLinkLeadsToAHeading() throws Exception {
        Document page = document();
        NodeList links = page.getElementsByTagName("a");
        assertEquals(1, links.getLength(), "one line for the visit; nothing is asked about the dolly");
        String id = ((Element) links.item(0)).getAttribute("href").substring(1);
        assertEquals(id, ((Element) page.getElementsByTagName("h2").item(0)).getAttribute("id"));
    }

    @Test
    void theCarsComeFirstOneLineEach() throws Exception {
        new HtmlReport(UnitSystem.METRIC).write(Answers.all(), Answers.engineWithCar().reader(), Answers.DAY, folder);
        String page = Files.readString(folder.resolve("index.html"), StandardCharsets.UTF_8);
        Document read = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
        Element cars = (Element) read.getElementsByTagName("table").item(0);
        NodeList cells = cars.getElementsByTagName("td");
        assertEquals(4, cells.getLength());
        assertEquals("STOP", cells.item(0).getTextContent());
        assertEquals(Answers.NASTY, cells.item(1).getTextContent());
        assertEquals("nobody wrote down where (nobody wrote down on what)", cells.item(2).getTextContent());
        assertEquals("no job is written down", cells.item(3).getTextContent());
    }

    @Test
    void verdictsAreWordsAndCautionsAreThere() throws Exception {
        String text = document().getDocumentElement().getTextContent();
        for (String word : new String[] {"STOP", "CAN'T SAY", "TIGHT", "HOLDS", "Cautions", "Keep off.", "no certificate",
            "Dolly 1: none of the questions asked arises here."}) {
            assertTrue(text.contains(word), word);
        }
    }

    @Test
    void nothingIsFetchedFromANetwork() throws Exception {
        String page = page();
        assertFalse(page.contains("http://") || page.contains("https://") || page.contains("<script") || page.contains("url("), page);
    }
}
