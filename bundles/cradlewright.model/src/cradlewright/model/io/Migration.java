package cradlewright.model.io;

/**
 * Brings a file from one schema number to the next by rewriting its elements before any object is made of them. There is
 * one class and one frozen sample file for each; a migration is never changed once it has shipped.
 */
public interface Migration {

    /** Returns the schema number that is read; the one that is made is larger by 1. */
    int from();

    /** Returns what changes, as a clause for the person who opens the file. */
    String what();

    /** Rewrites the file; the schema number at the root is set by the caller. */
    void rewrite(XmlElement root);
}
