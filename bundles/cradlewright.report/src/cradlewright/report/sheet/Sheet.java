package cradlewright.report.sheet;

import java.util.List;

/**
 * An answer as lines in their order. Whoever shows it chooses fonts and widths, not words.
 *
 * @param lines the lines
 */
public record Sheet(List<Line> lines) {

    /** Copies the list. */
    public Sheet {
        lines = List.copyOf(lines);
    }

    /** One line, however often it has to be broken. */
    public sealed interface Line {

        /** Returns what it says. */
        String text();
    }

    /** The name of what the lines below it are about. */
    public record Title(String text) implements Line {
    }

    /** A sentence that stands by itself. */
    public record Sentence(String text) implements Line {
    }

    /**
     * Something with a word in front.
     *
     * @param head the word in front
     * @param text what there is to say
     * @param inner whether it belongs to the row above
     */
    public record Row(String head, String text, boolean inner) implements Line {
    }

    /** One of several things of a list. */
    public record Point(String text) implements Line {
    }
}
