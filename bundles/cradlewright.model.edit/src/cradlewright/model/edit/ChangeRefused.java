package cradlewright.model.edit;

/** A change that breaks a rule of the shop; nothing of it is left. The message says which, and how to mend it. */
public final class ChangeRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    ChangeRefused(String label, String why) {
        super("\"" + label + "\" was not done: " + why);
    }
}
