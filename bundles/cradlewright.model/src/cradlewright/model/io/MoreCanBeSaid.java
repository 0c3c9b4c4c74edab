package cradlewright.model.io;

/**
 * Schema 2 to 3: dollies, setups, operations, sign-offs and waits got attributes that an older file cannot have. Each may be missing,
 * and missing means that nobody said, so an older file is right as it stands and only its number changes: the number keeps an older
 * program from saving a file whose new attributes it would not understand.
 */
final class MoreCanBeSaid implements Migration {

    @Override
    public int from() {
        return 2;
    }

    @Override
    public String what() {
        return "it may now say how heights were taken, what shims are made up to, what sort of work an operation is and when it began, "
                + "what was signed for, and when a wait ended";
    }

    @Override
    public void rewrite(XmlElement root) {
        // Nothing that stands in an older file reads differently in the new form.
    }
}
