package cradlewright.verification;

import java.util.List;
import java.util.stream.Collectors;

/** A page of headings, paragraphs and tables. */
interface Page {

    void heading(int level, String text);

    void paragraph(String text);

    void table(List<String> head, List<List<String>> rows);

    /** Returns the whole page. */
    String text();

    /** The page as Markdown. */
    final class Markdown implements Page {

        private final StringBuilder out = new StringBuilder();

        private static String escaped(String text) {
            return text.replaceAll("([\\\\|*_<`])", "\\\\$1");
        }

        private static String line(List<String> cells) {
            return cells.stream().map(Markdown::escaped).collect(Collectors.joining(" | ", "| ", " |\n"));
        }

        @Override
        public void heading(int level, String text) {
            out.append("#".repeat(level)).append(' ').append(escaped(text)).append("\n\n");
        }

        @Override
        public void paragraph(String text) {
            out.append(escaped(text)).append("\n\n");
        }

        @Override
        public void table(List<String> head, List<List<String>> rows) {
            out.append(line(head)).append("|---".repeat(head.size())).append("|\n");
            rows.forEach(row -> out.append(line(row)));
            out.append('\n');
        }

        @Override
        public String text() {
            return out.toString();
        }
    }

    /** The page as HTML. */
    final class Html implements Page {

        private static final String HEAD = """
                <!DOCTYPE html>
                <html lang="en"><head><meta charset="utf-8"><title>Verification of the mechanics</title><style>
                body { font: 15px sans-serif; margin: 2em; }
                table { border-collapse: collapse; margin-bottom: 1.5em; }
                th, td { border: 1px solid #888; padding: 0.2em 0.5em; text-align: left; vertical-align: top; }
                </style></head><body>
                """;

        private final StringBuilder out = new StringBuilder(HEAD);

        private static String escaped(String text) {
            return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        }

        private static String line(String tag, List<String> cells) {
            return cells.stream().map(cell -> "<" + tag + ">" + escaped(cell) + "</" + tag + ">")
                    .collect(Collectors.joining("", "<tr>", "</tr>\n"));
        }

        @Override
        public void heading(int level, String text) {
            out.append("<h").append(level).append('>').append(escaped(text)).append("</h").append(level).append(">\n");
        }

        @Override
        public void paragraph(String text) {
            out.append("<p>").append(escaped(text)).append("</p>\n");
        }

        @Override
        public void table(List<String> head, List<List<String>> rows) {
            out.append("<table>\n").append(line("th", head));
            rows.forEach(row -> out.append(line("td", row)));
            out.append("</table>\n");
        }

        @Override
        public String text() {
            return out + "</body></html>\n";
        }
    }
}
