package cradlewright.report.scene;

import cradlewright.report.scene.Ink.Dash;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * The colours of every drawing, for a light and for a dark ground and for paper. Answers differ in lightness, in pattern and in their mark
 * as well, so that nobody has to tell colours apart; texts keep 4.5 to 1 and lines 3 to 1 against the ground (WCAG 2.1, 1.4.3 and 1.4.11).
 */
public enum Palette {
    /** Dark lines on a light ground. */
    LIGHT(0, 0xffffff, 0x20252c, 0x5b6470, 0x6f7885, 0xdfe4ea),
    /** Light lines on a dark ground. */
    DARK(1, 0x1e2227, 0xe8ebef, 0xaab2bd, 0x8f98a4, 0x3a4149),
    /** Black on white for a printer without colours: lines and texts are black, answers differ by grey, pattern and mark. */
    PAPER(2, 0xffffff, 0x000000, 0x000000, 0x000000, 0xffffff);

    private static final double THIN = 1;
    private static final double MEDIUM = 2;
    private static final double THICK = 3;

    private final Colour ground;
    private final Map<Role, Ink> inks = new EnumMap<>(Role.class);

    Palette(int which, int ground, int text, int line, int faint, int body) {
        this.ground = Colour.of(ground);
        put(Role.OUTLINE, line, -1, MEDIUM, Dash.NONE);
        put(Role.STRUCTURE, faint, body, THIN, Dash.NONE);
        put(Role.FIXTURE, line, body, THIN, Dash.NONE);
        put(Role.PAD, line, pick(which, 0xc9a36b, 0x8a6a3c, 0xd9d9d9), THIN, Dash.NONE);
        put(Role.SHIM, text, pick(which, 0xf4f6f8, 0x59626d, 0xffffff), THIN, Dash.NONE);
        put(Role.SOUND, text, ground, MEDIUM, Dash.NONE);
        put(Role.UNSOUND, pick(which, 0x8c1c20, 0xff9a8f, 0x000000), ground, MEDIUM, Dash.NONE);
        put(Role.PROP, text, body, MEDIUM, Dash.NONE);
        put(Role.ABSENT, faint, -1, THIN, Dash.DASHED);
        put(Role.CUT, pick(which, 0x8c1c20, 0xff9a8f, 0x000000), -1, THIN, Dash.DASHED);
        put(Role.WORK, pick(which, 0x5a3d8a, 0xc5b0f0, 0x000000), -1, MEDIUM, Dash.NONE);
        put(Role.CASTOR, text, ground, MEDIUM, Dash.NONE);
        put(Role.BALANCE, pick(which, 0x7a4a00, 0xffc766, 0x000000), -1, MEDIUM, Dash.NONE);
        put(Role.TIP_EDGE, line, -1, THIN, Dash.CHAIN);
        put(Role.FLOOR, line, -1, MEDIUM, Dash.NONE);
        put(Role.LOAD, pick(which, 0x0d2f4a, 0xa9d3f5, 0x000000), pick(which, 0x1f5c8b, 0x5a9fd4, 0xd0d0d0), THIN, Dash.NONE);
        put(Role.LOAD_TIGHT, pick(which, 0x7a4a00, 0xffc766, 0x000000), pick(which, 0xffe3a6, 0x7a5310, 0x8c8c8c), MEDIUM, Dash.NONE);
        put(Role.LOAD_OPEN, text, ground, MEDIUM, Dash.DASHED);
        put(Role.LOAD_STOP, pick(which, 0x3f0d10, 0xffd9d5, 0x000000), pick(which, 0x8c1c20, 0xffb3a8, 0x000000), THICK, Dash.NONE);
        put(Role.USE_LOW, line, pick(which, 0xf2f6fa, 0x242c34, 0xffffff), THIN, Dash.NONE);
        put(Role.USE_SOME, line, pick(which, 0xc6daeb, 0x33485a, 0xdcdcdc), THIN, Dash.NONE);
        put(Role.USE_HALF, line, pick(which, 0x94bcdc, 0x486b89, 0xb8b8b8), THIN, Dash.NONE);
        put(Role.USE_MUCH, line, pick(which, 0x5f9bcb, 0x6694bc, 0x929292), THIN, Dash.NONE);
        put(Role.JOINT, text, ground, MEDIUM, Dash.NONE);
        put(Role.BENT, pick(which, 0x7d2a78, 0xeaa6e4, 0x000000), -1, MEDIUM, Dash.DASHED);
        put(Role.UNLOADED, line, ground, THIN, Dash.DOTTED);
        put(Role.MARK, ground, ground, MEDIUM, Dash.NONE);
        put(Role.DIMENSION, line, -1, THIN, Dash.NONE);
        put(Role.TEXT, -1, text, 0, Dash.NONE);
        put(Role.TEXT_STRONG, -1, text, 0, Dash.NONE);
    }

    /** Returns the colour for this ground, of those for light, dark and paper. */
    private static int pick(int which, int... colours) {
        return colours[which];
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
