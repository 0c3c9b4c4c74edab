package cradlewright.report.scene;

import cradlewright.report.scene.Ink.Dash;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The colours of every drawing, for a light and for a dark ground. Answers differ in lightness, in pattern and in their mark as well, so
 * that nobody has to tell colours apart; texts keep 4.5 to 1 and lines 3 to 1 against the ground (WCAG 2.1, 1.4.3 and 1.4.11).
 */
public enum Palette {
    /** Dark lines on a light ground. */
    LIGHT(true, 0xffffff, 0x20252c, 0x5b6470, 0x6f7885, 0xdfe4ea),
    /** Light lines on a dark ground. */
    DARK(false, 0x1e2227, 0xe8ebef, 0xaab2bd, 0x8f98a4, 0x3a4149);

    private static final double THIN = 1;
    private static final double MEDIUM = 2;
    private static final double THICK = 3;

    private final Colour ground;
    private final Map<Role, Ink> inks = new EnumMap<>(Role.class);

    Palette(boolean light, int ground, int text, int line, int faint, int body) {
        this.ground = Colour.of(ground);
        put(Role.OUTLINE, line, -1, MEDIUM, Dash.NONE);
        put(Role.STRUCTURE, faint, body, THIN, Dash.NONE);
        put(Role.FIXTURE, line, body, THIN, Dash.NONE);
        put(Role.PAD, line, light ? 0xc9a36b : 0x8a6a3c, THIN, Dash.NONE);
        put(Role.SHIM, text, light ? 0xf4f6f8 : 0x59626d, THIN, Dash.NONE);
        put(Role.SOUND, text, ground, MEDIUM, Dash.NONE);
        put(Role.UNSOUND, light ? 0x8c1c20 : 0xff9a8f, ground, MEDIUM, Dash.NONE);
        put(Role.PROP, text, body, MEDIUM, Dash.NONE);
        put(Role.ABSENT, faint, -1, THIN, Dash.DASHED);
        put(Role.CUT, light ? 0x8c1c20 : 0xff9a8f, -1, THIN, Dash.DASHED);
        put(Role.WORK, light ? 0x5a3d8a : 0xc5b0f0, -1, MEDIUM, Dash.NONE);
        put(Role.CASTOR, text, ground, MEDIUM, Dash.NONE);
        put(Role.BALANCE, light ? 0x7a4a00 : 0xffc766, -1, MEDIUM, Dash.NONE);
        put(Role.TIP_EDGE, line, -1, THIN, Dash.CHAIN);
        put(Role.FLOOR, line, -1, MEDIUM, Dash.NONE);
        put(Role.LOAD, light ? 0x0d2f4a : 0xa9d3f5, light ? 0x1f5c8b : 0x5a9fd4, THIN, Dash.NONE);
        put(Role.LOAD_TIGHT, light ? 0x7a4a00 : 0xffc766, light ? 0xffe3a6 : 0x7a5310, MEDIUM, Dash.NONE);
        put(Role.LOAD_OPEN, text, ground, MEDIUM, Dash.DASHED);
        put(Role.LOAD_STOP, light ? 0x3f0d10 : 0xffd9d5, light ? 0x8c1c20 : 0xffb3a8, THICK, Dash.NONE);
        put(Role.UNLOADED, line, ground, THIN, Dash.DOTTED);
        put(Role.MARK, ground, ground, MEDIUM, Dash.NONE);
        put(Role.DIMENSION, line, -1, THIN, Dash.NONE);
        put(Role.TEXT, -1, text, 0, Dash.NONE);
        put(Role.TEXT_STRONG, -1, text, 0, Dash.NONE);
    }

    private void put(Role role, int line, int fill, double width, Dash dash) {
        inks.put(role, new Ink(colour(line), colour(fill), width, dash));
    }

    private static Optional<Colour> colour(int rgb) {
        return rgb < 0 ? Optional.empty() : Optional.of(Colour.of(rgb));
    }

    /** Returns the colour of the sheet. */
    public Colour ground() {
        return ground;
    }

    /** Returns how a role is painted. */
    public Ink ink(Role role) {
        return inks.get(role);
    }
}
