package cradlewright.report.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast by the definition of relative luminance and contrast ratio in WCAG 2.1. */
class PaletteTest {

    private static final double TEXT = 4.5;
    private static final double LINE = 3;
    /** So much lighter or darker that two fills differ without any colour: own choice, no source. */
    private static final double TOLD_APART = 1.25;

    private static double part(int value) {
        double c = value / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static double luminance(Colour colour) {
        return 0.2126 * part(colour.red()) + 0.7152 * part(colour.green()) + 0.0722 * part(colour.blue());
    }

    private static double contrast(Colour a, Colour b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    /** Black on white is 21 to 1 by the definition; #767676 is the lightest grey that reaches 4.5 to 1 on white (from memory). */
    @Test
    void theFormulaGivesKnownRatios() {
        Colour white = Colour.of(0xffffff);
        assertEquals(21, contrast(Colour.of(0), white), 1e-9);
        assertTrue(contrast(Colour.of(0x767676), white) >= TEXT);
        assertTrue(contrast(Colour.of(0x777777), white) < TEXT);
    }

    @ParameterizedTest
    @EnumSource
    void textsAndLinesStandOutFromTheGround(Palette palette) {
        for (Role role : Role.values()) {
            Ink ink = palette.ink(role);
            if (ink.line().isEmpty()) {
                assertTrue(contrast(ink.fill().orElseThrow(), palette.ground()) >= TEXT, role.name());
            } else if (role != Role.MARK) {
                assertTrue(contrast(ink.line().get(), palette.ground()) >= LINE, role + " " + contrast(ink.line().get(), palette.ground()));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void marksStandOutFromWhatTheyLieOn(Palette palette) {
        assertTrue(contrast(palette.ink(Role.MARK).line().orElseThrow(), palette.ink(Role.LOAD_STOP).fill().orElseThrow()) >= LINE);
        for (Role role : List.of(Role.LOAD_TIGHT, Role.LOAD_OPEN, Role.SOUND, Role.UNSOUND, Role.CASTOR, Role.PAD, Role.SHIM)) {
            Ink ink = palette.ink(role);
            assertTrue(contrast(ink.line().orElseThrow(), ink.fill().orElseThrow()) >= (role == Role.PAD ? 2 : LINE), role.name());
        }
    }

    /** Whoever sees no colours at all still tells the answers apart by lightness or by the pattern of the edge. */
    @ParameterizedTest
    @EnumSource
    void answersDifferInMoreThanColour(Palette palette) {
        Set<Role> answers = EnumSet.of(Role.LOAD, Role.LOAD_TIGHT, Role.LOAD_OPEN, Role.LOAD_STOP, Role.UNLOADED);
        for (Role a : answers) {
            for (Role b : answers) {
                Ink one = palette.ink(a);
                Ink other = palette.ink(b);
                boolean lightness = contrast(one.fill().orElseThrow(), other.fill().orElseThrow()) >= TOLD_APART;
                assertTrue(a == b || lightness || one.dash() != other.dash(), a + " and " + b);
            }
        }
    }
}
