package cradlewright.report.text;

/** Text in lines of at most {@value #WIDTH} characters, except where one word alone is longer. */
public final class Lines {

    /** Greatest length of a line. */
    public static final int WIDTH = 100;

    private Lines() {
    }

    /**
     * Breaks a text at blanks so that it stands beside its head.
     *
     * @param head begins the first line as it is; the others are moved in by its length
     * @param text its blanks, line ends and tabs count as one blank each run; other control characters are left out, so that a name from
     *        a file cannot steer a terminal
     */
    public static String wrap(String head, String text) {
        StringBuilder out = new StringBuilder(head);
        int column = head.length();
        boolean first = true;
        for (String word : plain(text).split(" ")) {
            if (!first && column + 1 + word.length() > WIDTH) {
                out.append('\n').append(" ".repeat(head.length()));
                column = head.length();
                first = true;
            }
            if (!first) {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
            first = false;
        }
        return out.append('\n').toString();
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\\x85]+", " ").replaceAll("\\p{Cc}", "").strip();
    }
}
