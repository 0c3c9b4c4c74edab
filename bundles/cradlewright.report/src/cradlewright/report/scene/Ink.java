package cradlewright.report.scene;

import java.util.Optional;

/**
 * How a role is painted.
 *
 * @param line colour of lines and edges; nothing for text
 * @param fill colour inside edges, or of letters
 * @param width of lines, in px whatever the zoom
 * @param dash whether lines are broken
 */
public record Ink(Optional<Colour> line, Optional<Colour> fill, double width, Dash dash) {

    /** Pattern of a line. */
    public enum Dash {
        NONE(), DASHED(8, 4), DOTTED(2, 3), CHAIN(10, 3, 2, 3);

        private final int[] lengths;

        Dash(int... lengths) {
            this.lengths = lengths;
        }

        /** Returns lengths of strokes and gaps in px, in turn; empty for a whole line. */
        public int[] lengths() {
            return lengths.clone();
        }
    }
}
