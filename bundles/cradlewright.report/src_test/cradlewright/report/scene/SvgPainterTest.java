package cradlewright.report.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.report.Answers;
import cradlewright.report.scene.Shape.Anchor;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgPainterTest {

    private static final Scene SCENE = new Scene(Answers.NASTY, new Box(-1, -2, 999, 498), List.of(), List.of(new Item("id", Kind.NOTE,
            Optional.empty(), Answers.NASTY, "12 <N>", List.of(
            new Shape.Line(Role.STRUCTURE, 0, 0, 10.25, 20), new Shape.Circle(Role.LOAD, 1, 2, 3),
            new Shape.Polygon(Role.CASTOR, List.of(new Shape.Point(0, 0), new Shape.Point(1, 0), new Shape.Point(1, 1))),
            new Shape.Label(Role.TEXT, 1, 2, 90, Anchor.MIDDLE, Answers.NASTY + "\u0007")))));

    private static Element paint() throws Exception {
        String svg = new SvgPainter().paint(SCENE);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg))).getDocumentElement();
    }

    @Test
    void namesComeBackAsTheyWentInAndNeverAsMarkup() throws Exception {
        Element svg = paint();
        assertEquals(Answers.NASTY, svg.getAttribute("aria-label"));
        assertEquals(Answers.NASTY, svg.getElementsByTagName("text").item(0).getTextContent());
        assertEquals(0, svg.getElementsByTagName("b").getLength());
    }

    @Test
    void everyShapeIsPaintedWithItsRole() throws Exception {
        Element svg = paint();
        assertEquals("-1 -2 1000 500", svg.getAttribute("viewBox"));
        assertEquals("structure", ((Element) svg.getElementsByTagName("line").item(0)).getAttribute("class"));
        assertEquals("3.0", ((Element) svg.getElementsByTagName("circle").item(0)).getAttribute("r"));
        assertEquals("0.0,0.0 1.0,0.0 1.0,1.0", ((Element) svg.getElementsByTagName("polygon").item(0)).getAttribute("points"));
    }

    @Test
    void pointingAtAnItemTellsItsNameAndNumbers() throws Exception {
        assertEquals(Answers.NASTY + ": 12 <N>", paint().getElementsByTagName("title").item(0).getTextContent());
    }

    @Test
    void aFileOfItsOwnHasASizeOnPaperAndItsStyle() throws Exception {
        String svg = new SvgPainter().document(SCENE, Palette.DARK);
        Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
        assertEquals("http://www.w3.org/2000/svg", root.getAttribute("xmlns"));
        assertEquals("100.0mm", root.getAttribute("width"), "1000 mm at one to ten");
        assertTrue(root.getElementsByTagName("style").item(0).getTextContent().contains(Palette.DARK.ground().hex()));
    }

    @Test
    void theStyleSheetKnowsEveryRole() {
        for (Role role : Role.values()) {
            assertTrue(SvgPainter.STYLE.contains("." + role.name().toLowerCase(Locale.ROOT) + "{"), role.name());
        }
    }

    @Test
    void theLanguageOfTheMachineChangesNothing() {
        String here = new SvgPainter().paint(SCENE);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(here, new SvgPainter().paint(SCENE));
        } finally {
            Locale.setDefault(before);
        }
    }
}
