package cradlewright.model.io;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One element of a file before it becomes an object: what migrations rewrite. Elements and attributes remember the line
 * they stand on. The depth of a tree is limited by {@link SafeXml}.
 */
public final class XmlElement {

    /**
     * One attribute.
     *
     * @param name name with prefix, as written
     * @param value value with references to characters resolved
     * @param line line on which the name stands
     */
    public record Attribute(String name, String value, int line) {
    }

    private final String name;
    private final int line;
    private final List<Attribute> attributes = new ArrayList<>();
    private final List<XmlElement> children = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    XmlElement(String name, int line) {
        this.name = name;
        this.line = line;
    }

    /** Returns the name with prefix, as written. */
    public String name() {
        return name;
    }

    /** Returns the line on which the tag begins, from 1. */
    public int line() {
        return line;
    }

    /** Returns the attributes in the order of the file. */
    public List<Attribute> attributes() {
        return Collections.unmodifiableList(attributes);
    }

    /** Returns an attribute by its name. */
    public Optional<Attribute> attribute(String wanted) {
        return attributes.stream().filter(a -> a.name().equals(wanted)).findFirst();
    }

    /** Returns the children in the order of the file. */
    public List<XmlElement> children() {
        return Collections.unmodifiableList(children);
    }

    /** Returns the text directly inside, of all pieces together. */
    public String text() {
        return text.toString();
    }

    /** Sets an attribute, in its place when it is there already. */
    public void set(String attribute, String value) {
        int at = indexOf(attribute);
        if (at < 0) {
            attributes.add(new Attribute(attribute, value, line));
        } else {
            attributes.set(at, new Attribute(attribute, value, attributes.get(at).line()));
        }
    }

    /** Gives an attribute another name; nothing happens when it is not there. */
    public void rename(String attribute, String newName) {
        int at = indexOf(attribute);
        if (at >= 0) {
            attributes.set(at, new Attribute(newName, attributes.get(at).value(), attributes.get(at).line()));
        }
    }

    /** Removes an attribute if it is there. */
    public void remove(String attribute) {
        attributes.removeIf(a -> a.name().equals(attribute));
    }

    /** Calls the visitor with this element and all below, outer before inner. */
    public void walk(Consumer<XmlElement> visitor) {
        visitor.accept(this);
        children.forEach(child -> child.walk(visitor));
    }

    void add(Attribute attribute) {
        attributes.add(attribute);
    }

    void add(XmlElement child) {
        children.add(child);
    }

    void append(char[] characters, int start, int length) {
        text.append(characters, start, length);
    }

    int textLength() {
        return text.length();
    }

    /** Returns the line of an attribute, or that of the element when it has no such attribute. */
    int lineOf(String attribute) {
        return attribute(attribute).map(Attribute::line).orElse(line);
    }

    private int indexOf(String attribute) {
        for (int i = 0; i < attributes.size(); i++) {
            if (attributes.get(i).name().equals(attribute)) {
                return i;
            }
        }
        return -1;
    }
}
