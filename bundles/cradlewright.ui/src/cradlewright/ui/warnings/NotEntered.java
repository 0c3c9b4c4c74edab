package cradlewright.ui.warnings;

/** What was tried cannot be entered into the files; nothing of it is left there. */
final class NotEntered extends RuntimeException {

    private static final long serialVersionUID = 1;

    NotEntered(Throwable cause) {
        super(Messages.Fix_notReached, cause);
    }
}
