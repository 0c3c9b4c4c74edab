package cradlewright.model.io;

/**
 * Schema 2 to 3: dollies, setups, operations, sign-offs and waits got attributes that an older file cannot have. Each may be missing,
 * and missing means that nobody said; the number keeps an older program from saving a file whose new attributes it would not understand.
 *
 * <p>A dolly could say that it has a rocking end, but not where; now the member says which of its ends turns on a pin along it. Nobody but
 * its builder knows which member that is, so the old word goes into the note of the dolly, with what to enter.
 */
final class MoreCanBeSaid implements Migration {

    private static final String ROCKING = "rockingEnd";
    private static final String NOTE = "note";

    @Override
    public int from() {
        return 2;
    }

    @Override
    public String what() {
        return "it may now say how heights were taken, what shims are made up to, what sort of work an operation is and when it began, "
                + "what was signed for, when a wait ended, and which member of a dolly turns at a rocking end";
    }

    @Override
    public void rewrite(XmlElement root) {
        if (root.attribute(ROCKING).map(XmlElement.Attribute::value).filter("true"::equals).isPresent()) {
            String before = root.attribute(NOTE).map(note -> note.value() + " ").orElse("");
            root.set(NOTE, before + "It has a rocking end: say which member turns on its pin, turnsFrom or turnsTo.");
        }
        root.remove(ROCKING);
    }
}
