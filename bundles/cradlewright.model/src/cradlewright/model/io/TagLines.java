package cradlewright.model.io;

import java.util.HashMap;
import java.util.Map;

/**
 * Finds the lines of start tags and of their attributes. A parser reports where a tag ends, which in files with one
 * attribute a line is far from where it begins. Walks the text once, tag by tag, behind a parser that has already found
 * each tag to be well-formed and refuses document type declarations.
 */
final class TagLines {

    private final String text;
    private int at;
    private int line = 1;
    private int tagLine;
    private final Map<String, Integer> attributeLines = new HashMap<>();

    TagLines(String text) {
        this.text = text;
    }

    /** Moves behind the next start tag. */
    void next() {
        while (true) {
            advanceTo(text.indexOf('<', at));
            if (text.startsWith("<!--", at)) {
                advanceBehind("-->");
            } else if (text.startsWith("<![CDATA[", at)) {
                advanceBehind("]]>");
            } else if (text.startsWith("<?", at)) {
                advanceBehind("?>");
            } else if (text.startsWith("</", at)) {
                advanceBehind(">");
            } else {
                readTag();
                return;
            }
        }
    }

    /** Returns the line of the last tag. */
    int line() {
        return tagLine;
    }

    /** Returns the line of an attribute of the last tag. */
    int line(String attribute) {
        return attributeLines.getOrDefault(attribute, tagLine);
    }

    private void readTag() {
        tagLine = line;
        attributeLines.clear();
        skipName();
        while (text.charAt(at) != '>') {
            if (isNameEnd(text.charAt(at))) {
                advanceTo(at + 1);
            } else {
                readAttribute();
            }
        }
        at++;
    }

    private void readAttribute() {
        int start = at;
        int startLine = line;
        skipName();
        attributeLines.put(text.substring(start, at), startLine);
        while (text.charAt(at) != '"' && text.charAt(at) != '\'') {
            advanceTo(at + 1);
        }
        advanceTo(text.indexOf(text.charAt(at), at + 1) + 1);
    }

    private void skipName() {
        while (!isNameEnd(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isNameEnd(char c) {
        return c <= ' ' || c == '=' || c == '>' || c == '/';
    }

    private void advanceBehind(String end) {
        advanceTo(text.indexOf(end, at) + end.length());
    }

    private void advanceTo(int target) {
        while (at < target) {
            if (text.charAt(at) == '\n') {
                line++;
            }
            at++;
        }
    }
}
