package cradlewright.model.io;

import cradlewright.model.base.FileRoot;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/** One file of a shop: what is in it, whether it may be written, and which bytes it had when it was last read or written. */
public final class ShopFile {

    /** What may be done with a file, from open to closed. */
    public enum State {
        /** Read wholly; may be written. */
        WRITABLE("may be written"),
        /** Something in it could not be taken over and would be lost; shown, never written. */
        INCOMPLETE("holds something that could not be read and would be lost"),
        /** Written by a newer version; shown, never written. */
        NEWER("was written by a newer version of the program"),
        /** Could not be read at all; never written. */
        REFUSED("could not be read");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** Returns the reason as the end of a sentence that begins with the file. */
        public String words() {
            return words;
        }
    }

    private final FileKind kind;
    private final String path;
    private final ShopResource resource;
    private State state = State.WRITABLE;
    private Optional<String> digest = Optional.empty();

    ShopFile(FileKind kind, String path, ShopResource resource) {
        this.kind = kind;
        this.path = path;
        this.resource = resource;
    }

    /** Returns the kind. */
    public FileKind kind() {
        return kind;
    }

    /** Returns the path below the folder of the shop, with slashes. */
    public String path() {
        return path;
    }

    /** Returns what may be done with the file. */
    public State state() {
        return state;
    }

    /** Returns whether the file was read from disk or has been saved; false for a new one. */
    public boolean onDisk() {
        return digest.isPresent();
    }

    /** Returns the object at the top; empty when the file was refused. */
    public Optional<FileRoot> root() {
        return resource.getContents().stream().findFirst().map(FileRoot.class::cast);
    }

    /**
     * Returns the line of the object in the file as it was last read or written; for an object that is not in the file yet
     * that of the nearest one around it; 0 when there is none.
     */
    public int lineOf(EObject object) {
        XmlElement element = resource.placeOf(object);
        return element == null ? 0 : element.line();
    }

    /** Returns whether the object was read with such an attribute. */
    boolean hasAttribute(EObject object, String name) {
        XmlElement element = resource.placeOf(object);
        return element != null && element.attribute(name).isPresent();
    }

    /** Returns the line of a feature of the object, or that of the object when the feature stands nowhere. */
    int lineOf(EObject object, String feature) {
        XmlElement element = resource.placeOf(object);
        if (element == null) {
            return 0;
        }
        return element.attribute(feature).map(XmlElement.Attribute::line).orElseGet(() -> element.children().stream()
                .filter(child -> child.name().equals(feature)).findFirst().map(XmlElement::line).orElse(element.line()));
    }

    ShopResource resource() {
        return resource;
    }

    /** Returns the SHA-256 of the bytes last read or written; empty for a file that is not on disk yet. */
    public Optional<String> digest() {
        return digest;
    }

    void setDigest(String sha256) {
        digest = Optional.of(sha256);
    }

    /** Makes the file at least as closed as the given state. */
    void close(State least) {
        if (least.compareTo(state) > 0) {
            state = least;
        }
    }

    /** Returns a problem of an object in this file, at the line of the feature when there is one. */
    ReadProblem problem(EObject object, String feature, String what, String mend, Severity severity) {
        return new ReadProblem(path, feature.isEmpty() ? lineOf(object) : lineOf(object, feature), Words.id(object),
                Words.name(object), what, mend, severity, "");
    }
}
