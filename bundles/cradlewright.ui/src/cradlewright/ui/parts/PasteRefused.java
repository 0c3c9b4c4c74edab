package cradlewright.ui.parts;

/** A pasted row that is not entered; the message says why and how to mend it. */
final class PasteRefused extends Exception {

    private static final long serialVersionUID = 1L;

    PasteRefused(String message) {
        super(message);
    }
}
