package cradlewright.model.io;

import javax.xml.parsers.SAXParser;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.ext.Locator2;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.DefaultHandler;

/** Plays the elements of a file that has passed the gate, and was perhaps migrated, to the loader of the object model. */
@SuppressWarnings("deprecation") // the first SAX interface is part of the class that the loader wants
final class TreeParser extends SAXParser {

    private final XmlElement root;
    private XmlElement current;

    TreeParser(XmlElement root) {
        this.root = root;
        this.current = root;
    }

    /** Returns the element that is being played. */
    XmlElement current() {
        return current;
    }

    @Override
    public void parse(InputSource unused, DefaultHandler handler) throws SAXException {
        handler.setDocumentLocator(new CurrentLine());
        handler.startDocument();
        play(root, handler);
        handler.endDocument();
    }

    private void play(XmlElement element, DefaultHandler handler) throws SAXException {
        current = element;
        AttributesImpl attributes = new AttributesImpl();
        element.attributes().forEach(a -> attributes.addAttribute("", "", a.name(), "CDATA", a.value()));
        handler.startElement("", "", element.name(), attributes);
        char[] text = element.text().toCharArray();
        handler.characters(text, 0, text.length);
        for (XmlElement child : element.children()) {
            play(child, handler);
        }
        current = element;
        handler.endElement("", "", element.name());
    }

    @Override
    public org.xml.sax.Parser getParser() {
        throw new UnsupportedOperationException("only parse(InputSource, DefaultHandler) is played");
    }

    @Override
    public XMLReader getXMLReader() {
        throw new UnsupportedOperationException("only parse(InputSource, DefaultHandler) is played");
    }

    @Override
    public boolean isNamespaceAware() {
        return false;
    }

    @Override
    public boolean isValidating() {
        return false;
    }

    @Override
    public void setProperty(String name, Object value) {
        throw new UnsupportedOperationException("there is no property " + name);
    }

    @Override
    public Object getProperty(String name) {
        throw new UnsupportedOperationException("there is no property " + name);
    }

    private final class CurrentLine implements Locator2 {

        @Override
        public String getPublicId() {
            return null;
        }

        @Override
        public String getSystemId() {
            return null;
        }

        @Override
        public int getLineNumber() {
            return current.line();
        }

        @Override
        public int getColumnNumber() {
            return 1;
        }

        @Override
        public String getXMLVersion() {
            return "1.0";
        }

        @Override
        public String getEncoding() {
            return "UTF-8";
        }
    }
}
