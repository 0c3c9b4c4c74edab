package cradlewright.ui.wizards;

/** Says why what was typed cannot be used, and how to mend it. */
final class Unfit extends Exception {

    private static final long serialVersionUID = 1;

    Unfit(String message) {
        super(message);
    }
}
