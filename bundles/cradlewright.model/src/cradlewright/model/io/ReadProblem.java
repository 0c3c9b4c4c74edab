package cradlewright.model.io;

import java.util.Objects;

/**
 * One thing that is wrong with a file of the shop.
 *
 * @param file path below the folder of the shop, with slashes
 * @param line line in the file as it was last read or written, from 1; 0 when the whole file or an unsaved object is meant
 * @param objectId id of the object, empty when there is none
 * @param objectName kind and name of the object as in {@code part "bonnet"}, empty when there is none
 * @param what what was found, a clause without a full stop
 * @param mend what to do about it, a clause without a full stop
 * @param severity how much it matters
 * @param unknownId the id that the object refers to and no object of the shop has; empty when that is not what is wrong
 */
public record ReadProblem(String file, int line, String objectId, String objectName, String what, String mend,
        Severity severity, String unknownId) {

    /** Refuses null. */
    public ReadProblem {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(objectId, "objectId");
        Objects.requireNonNull(objectName, "objectName");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(mend, "mend");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(unknownId, "unknownId");
    }

    /** Returns a problem of a file, or of a line in it, that belongs to no object. */
    static ReadProblem of(String file, int line, String what, String mend, Severity severity) {
        return new ReadProblem(file, line, "", "", what, mend, severity, "");
    }

    /** Returns the same as a reference to an id that no object of the shop has. */
    ReadProblem refersTo(String id) {
        return new ReadProblem(file, line, objectId, objectName, what, mend, severity, id);
    }

    /** Returns one line of text: {@code cars/red.cwcar:17: part "bonnet" (id k3v...): what; mend}. */
    public String text() {
        String where = line > 0 ? file + ":" + line : file;
        String who = objectName.isEmpty() ? "" : objectName + (objectId.isEmpty() ? "" : " (id " + objectId + ")") + ": ";
        return where + ": " + who + what + "; " + mend;
    }
}
