package cradlewright.cli;

/** The input cannot be used; the message says what, where and how to mend it. */
final class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BadInputException(String message) {
        super(message);
    }
}
