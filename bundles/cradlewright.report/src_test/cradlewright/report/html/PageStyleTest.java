package cradlewright.report.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.report.scene.SvgPainter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Page and drawings can be read on light and dark screens and print black on white. Contrast by WCAG 2.2, W3C: (L1 + 0.05) / (L2 + 0.05)
 * with the relative luminance L; at least 4.5 for text (1.4.3).
 */
class PageStyleTest {

    private static final Pattern MEDIA = Pattern.compile("@media ([^{]+)\\{\\n((?:[^@{}]+\\{[^{}]*\\}\\s*)+)\\}");
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final Pattern COLOUR = Pattern.compile("#(?:[0-9a-f]{6}|[0-9a-f]{3})\\b");
    private static final List<String> VERDICTS = List.of(".stop", ".cant_say", ".tight", ".holds");

    /** Colours by selector and property, those of a medium over those for all. */
    private static Map<String, String> colours(String medium) {
        Map<String, String> found = new TreeMap<>();
        for (String sheet : List.of(PageStyle.SHEET, SvgPainter.STYLE)) {
            add(found, MEDIA.matcher(sheet).replaceAll(""));
            Matcher media = MEDIA.matcher(sheet);
            while (media.find()) {
                if (media.group(1).contains(medium)) {
                    add(found, media.group(2));
                }
            }
        }
        return found;
    }

    private static void add(Map<String, String> found, String rules) {
        Matcher rule = RULE.matcher(rules);
        while (rule.find()) {
            for (String declaration : rule.group(2).split(";")) {
                Matcher colour = COLOUR.matcher(declaration);
                if (colour.find()) {
                    String property = declaration.substring(0, declaration.indexOf(':')).strip();
                    found.put(rule.group(1).strip() + " " + (property.startsWith("border") ? "border" : property), colour.group());
                }
            }
        }
    }

    private static double luminance(String colour) {
        String six = colour.length() == 7 ? colour.substring(1) : colour.substring(1).replaceAll("(.)", "$1$1");
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(six.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static void assertContrast(Map<String, String> colours, String front, String back, double least) {
        double contrast = contrast(colours.get(front), colours.get(back));
        assertTrue(contrast >= least, front + " on " + back + ": " + contrast);
    }

    @Test
    void contrastIsThatOfTheStandard() {
        assertEquals(21, contrast("#000", "#ffffff"), 1e-12);
        // Known pair at the limit of 1.4.3: #767676 on white is 4.54 to 1 (WebAIM contrast checker; from memory).
        assertEquals(4.54, contrast("#767676", "#fff"), 0.005);
    }

    @ParameterizedTest
    @ValueSource(strings = {"none", "dark", "print"})
    void textsStandOut(String medium) {
        Map<String, String> colours = colours(medium);
        for (String text : List.of("body color", ".small color", "a color")) {
            assertContrast(colours, text, "body background", 4.5);
        }
        for (String verdict : VERDICTS) {
            assertContrast(colours, verdict + " color", verdict + " background", 4.5);
        }
        assertEquals(luminance(colours.get("body background")), luminance(colours.get("svg.scene background")), 1e-12,
                "drawings lie on the page, and PaletteTest looks after what is drawn on that ground");
    }

    @Test
    void aDarkScreenIsDarkAndTheOtherNot() {
        assertTrue(luminance(colours("dark").get("body background")) < 0.02);
        assertEquals("#fff", colours("none").get("body background"));
    }

    @Test
    void paperIsWhiteWithBlackTextsAndLinesWithoutBackgrounds() {
        List<String> other = new ArrayList<>();
        colours("print").forEach((property, colour) -> {
            assertTrue(colour.matches("#(?:(..)\\1\\1|(.)\\2\\2)"), property + " has a colour: " + colour);
            boolean white = property.endsWith(" background") || property.equals(".holds border") || property.equals(".mark stroke")
                    || property.startsWith(".text") && property.endsWith("stroke");
            if (!property.endsWith(" fill") && luminance(colour) != (white ? 1.0 : 0.0)) {
                other.add(property + " " + colour);
            }
        });
        assertEquals(List.of(), other);
    }

    @Test
    void paperTellsVerdictsByTheirBorders() {
        assertTrue(PageStyle.SHEET.contains(".stop{background:#fff;color:#000;border-color:#000;border-style:double;border-width:.4rem}"));
        assertTrue(PageStyle.SHEET.contains("border-style:dashed"));
    }
}
