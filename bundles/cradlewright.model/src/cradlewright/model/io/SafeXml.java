package cradlewright.model.io;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/**
 * The gate through which every file comes: UTF-8 only, no document type, no entities, no reference to a schema elsewhere,
 * and limits on size, depth, number of elements and length of an attribute. Nothing outside the given bytes is ever
 * opened.
 */
final class SafeXml {

    /** Largest file in bytes. */
    static final int MOST_BYTES = 20_000_000;
    /** Deepest nesting of elements. */
    static final int MOST_DEPTH = 64;
    /** Largest number of elements. */
    static final int MOST_ELEMENTS = 1_000_000;
    /** Longest text in an attribute or element. */
    static final int MOST_TEXT = 100_000;

    private static final Pattern DECLARATION = Pattern.compile("^<\\?xml\\s[^>]*?encoding\\s*=\\s*[\"']([^\"']*)[\"']");
    private static final char MARK = '\uFEFF';
    private static final String TEXT_MEND = "open it in an editor and save it as UTF-8, or fetch the last good version";

    private SafeXml() {
    }

    /**
     * What was read.
     *
     * @param root the element at the top
     * @param problems warnings about what the program will not keep
     */
    record Result(XmlElement root, List<ReadProblem> problems) {
    }

    /**
     * Reads a file.
     *
     * @param file name for the warnings
     * @throws Refused when the file breaks a limit or is not well-formed
     */
    static Result read(byte[] bytes, String file) throws Refused {
        if (bytes.length == 0) {
            throw new Refused(0, "the file is empty",
                    "fetch the last good version from the folder .versions, or delete the file");
        }
        if (bytes.length > MOST_BYTES) {
            throw new Refused(0, "the file is larger than " + MOST_BYTES / 1_000_000 + " MB",
                    "no file of a shop gets that large: fetch the last good version");
        }
        String text = decode(bytes);
        List<ReadProblem> problems = new ArrayList<>();
        if (text.charAt(0) == MARK) {
            problems.add(ReadProblem.of(file, 1, "the file begins with a byte order mark", "nothing to do: saving leaves it out",
                    Severity.WARNING));
            text = text.substring(1);
        }
        requireUtf8Declared(text);
        return new Result(parse(text, new Builder(text, file, problems)), problems);
    }

    private static String decode(byte[] bytes) throws Refused {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw new Refused(lineAt(bytes, in.position()), "byte " + (in.position() + 1) + " of the file is not text in UTF-8",
                    TEXT_MEND);
        }
        String text = out.flip().toString();
        int zero = text.indexOf('\0');
        if (zero >= 0) {
            throw new Refused(0, "the file holds zero bytes, so it is not text in UTF-8", TEXT_MEND);
        }
        return text;
    }

    private static int lineAt(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    private static void requireUtf8Declared(String text) throws Refused {
        Matcher declaration = DECLARATION.matcher(text);
        if (declaration.find() && !declaration.group(1).equalsIgnoreCase("UTF-8")) {
            throw new Refused(1, "the first line says the encoding is " + Words.quote(declaration.group(1)) + ", UTF-8 is wanted",
                    TEXT_MEND + ", with encoding=\"UTF-8\" in the first line");
        }
    }

    private static XmlElement parse(String text, Builder builder) throws Refused {
        try {
            SAXParser parser = hardenedParser();
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", builder);
            parser.parse(new InputSource(new StringReader(text)), builder);
            return builder.root;
        } catch (SAXParseException e) {
            if (e.getMessage().contains("DOCTYPE")) {
                throw new Refused(Math.max(e.getLineNumber(), 0),
                        "the file declares a document type (DOCTYPE), which is never read",
                        "delete the declaration and what stands in it; if you did not write it, do not trust the file");
            }
            throw new Refused(Math.max(e.getLineNumber(), 0),
                    "the file breaks off or is not well-formed XML: " + e.getMessage().replaceFirst("\\.$", ""),
                    "mend this line, or fetch the last good version from the folder .versions");
        } catch (SAXException e) {
            if (e.getException() instanceof Refused refused) {
                throw refused;
            }
            throw new IllegalStateException("the XML parser failed", e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException("the XML parser failed", e);
        }
    }

    private static SAXParser hardenedParser() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        factory.setXIncludeAware(false);
        SAXParser parser = factory.newSAXParser();
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        return parser;
    }

    /** Builds the tree and stops the parser at the first broken limit. */
    private static final class Builder extends DefaultHandler2 {

        private final TagLines lines;
        private final String file;
        private final List<ReadProblem> problems;
        private final Deque<XmlElement> open = new ArrayDeque<>();
        private XmlElement root;
        private int elements;
        private boolean commentSeen;
        private Locator locator;

        Builder(String text, String file, List<ReadProblem> problems) {
            this.lines = new TagLines(text);
            this.file = file;
            this.problems = problems;
        }

        @Override
        public void setDocumentLocator(Locator given) {
            locator = given;
        }

        @Override
        public void startElement(String uri, String localName, String name, Attributes attributes) throws SAXException {
            lines.next();
            if (open.size() == MOST_DEPTH) {
                throw stop(lines.line(), "elements are nested deeper than " + MOST_DEPTH,
                        "no file of a shop is that deep: fetch the last good version");
            }
            if (++elements > MOST_ELEMENTS) {
                throw stop(lines.line(), "the file has more than " + MOST_ELEMENTS + " elements", "fetch the last good version");
            }
            XmlElement element = new XmlElement(name, lines.line());
            for (int i = 0; i < attributes.getLength(); i++) {
                add(element, attributes.getQName(i), attributes.getValue(i));
            }
            if (root == null) {
                root = element;
            } else {
                open.peek().add(element);
            }
            open.push(element);
        }

        private void add(XmlElement element, String name, String value) throws SAXException {
            if (name.endsWith("chemaLocation")) {
                throw stop(lines.line(name),
                        "the attribute " + Words.quote(name) + " points to another file, which is never opened",
                        "delete the attribute");
            }
            if (value.length() > MOST_TEXT) {
                throw stop(lines.line(name),
                        "the attribute " + Words.quote(name) + " is longer than " + MOST_TEXT + " characters", "shorten it");
            }
            element.add(new XmlElement.Attribute(name, value, lines.line(name)));
        }

        @Override
        public void characters(char[] characters, int start, int length) throws SAXException {
            XmlElement element = open.peek();
            if (element.textLength() + length > MOST_TEXT) {
                throw stop(lines.line(), "the text in the element " + Words.quote(element.name()) + " is longer than " + MOST_TEXT
                        + " characters", "shorten it");
            }
            element.append(characters, start, length);
        }

        @Override
        public void endElement(String uri, String localName, String name) throws SAXException {
            XmlElement element = open.pop();
            boolean holdsMore = !element.attributes().isEmpty() || !element.children().isEmpty();
            if (holdsMore && !element.text().isBlank()) {
                throw new SAXException(new Refused(element.line(),
                        "the text " + Words.quote(element.text().strip()) + " stands loose in the element " + Words.quote(name),
                        "put it into an attribute, for example note, or delete it"));
            }
        }

        @Override
        public void comment(char[] characters, int start, int length) {
            warnOnce("a comment");
        }

        @Override
        public void processingInstruction(String target, String data) {
            warnOnce("a processing instruction");
        }

        private void warnOnce(String thing) {
            if (!commentSeen) {
                commentSeen = true;
                problems.add(ReadProblem.of(file, locator.getLineNumber(),
                        thing + " stands in the file and will be lost when it is saved",
                        "move what is worth keeping into a note", Severity.WARNING));
            }
        }

        private static SAXException stop(int line, String what, String mend) {
            return new SAXException(new Refused(line, what, mend));
        }
    }
}
