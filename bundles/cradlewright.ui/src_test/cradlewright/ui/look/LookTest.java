package cradlewright.ui.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

/** Pictures are there, and everything can be seen on light and dark grounds: contrast as WCAG 2.2 defines it, criteria 1.4.3 and 1.4.11. */
class LookTest {

    private static final double FOR_WORDS = 4.5;
    private static final double FOR_PICTURES = 3;
    private static final Map<RGB, Boolean> GROUNDS = Map.of(new RGB(255, 255, 255), false, new RGB(0xf8, 0xf8, 0xf8), false,
            new RGB(0x2f, 0x2f, 0x2f), true, new RGB(0x48, 0x48, 0x4c), true);
    private static final Pattern COLOUR = Pattern.compile("(?:stroke|fill)=\"#([0-9a-f]{6})\"");

    /** Pictures that only the extensions name. */
    private static final Pattern NAMED = Pattern.compile("\"icons/([a-z_]+\\.svg)\"");

    /** Relative luminance by the formula of WCAG 2.2. */
    private static double luminance(RGB rgb) {
        return 0.2126 * part(rgb.red) + 0.7152 * part(rgb.green) + 0.0722 * part(rgb.blue);
    }

    private static double part(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double contrast(RGB a, RGB b) {
        double lighter = Math.max(luminance(a), luminance(b));
        double darker = Math.min(luminance(a), luminance(b));
        return (lighter + 0.05) / (darker + 0.05);
    }

    @Test
    void theFormulaGivesWhatTheStandardSays() {
        assertEquals(21, contrast(new RGB(0, 0, 0), new RGB(255, 255, 255)), 1e-9);
        assertEquals(1, contrast(new RGB(9, 99, 199), new RGB(9, 99, 199)), 1e-9);
    }

    @Test
    void wordsOfVerdictsCanBeReadOnEveryGround() {
        GROUNDS.forEach((ground, dark) -> {
            for (Verdict verdict : Verdict.values()) {
                assertTrue(contrast(VerdictLook.rgb(verdict, dark), ground) >= FOR_WORDS, verdict + " on " + ground);
            }
            assertTrue(contrast(VerdictLook.faintRgb(dark), ground) >= FOR_WORDS, "faint words on " + ground);
        });
    }

    @Test
    void everyPictureIsThereAndNoOther() throws IOException {
        Set<String> wanted = Stream.concat(Stream.of(Picture.values()).map(Enum::name), Stream.of(Verdict.values()).map(Enum::name))
                .map(name -> name.toLowerCase(Locale.ROOT) + ".svg").collect(Collectors.toCollection(TreeSet::new));
        wanted.add("splash.svg");
        NAMED.matcher(Files.readString(Path.of("plugin.xml"))).results().map(found -> found.group(1)).forEach(wanted::add);
        try (Stream<Path> files = Files.list(Path.of("icons"))) {
            assertEquals(wanted, files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".svg"))
                    .collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    /** In each picture at least one colour stands out from every ground, so that no picture vanishes in one of the styles. */
    @Test
    void everyPictureStandsOutFromEveryGround() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("icons"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".svg")).toList()) {
                Set<RGB> colours = colours(Files.readString(file));
                GROUNDS.keySet().forEach(ground -> assertTrue(colours.stream().anyMatch(each -> contrast(each, ground) >= FOR_PICTURES),
                        file.getFileName() + " on " + ground));
            }
        }
    }

    private static Set<RGB> colours(String svg) {
        Matcher found = COLOUR.matcher(svg);
        return found.results().map(match -> Integer.parseInt(match.group(1), 16))
                .map(value -> new RGB(value >> 16, value >> 8 & 255, value & 255)).collect(Collectors.toSet());
    }
}
