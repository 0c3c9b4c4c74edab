package cradlewright.quantity;

import java.util.Objects;

/** A text that should hold a quantity and does not: says what was found and how to mend it. */
public final class QuantityFormatException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;
    private static final int SHOWN = 60;

    private final String what;
    private final String mend;

    /**
     * @param what what was found and why it will not do, as a clause without a full stop
     * @param mend what to write instead, as a clause without a full stop
     */
    public QuantityFormatException(String what, String mend) {
        super(Objects.requireNonNull(what, "what") + "; " + Objects.requireNonNull(mend, "mend"));
        this.what = what;
        this.mend = mend;
    }

    /** Returns what was found and why it will not do. */
    public String what() {
        return what;
    }

    /** Returns what to write instead. */
    public String mend() {
        return mend;
    }

    /** Quotes a piece of found text for a message: control characters replaced, long text cut. */
    static String quote(String found) {
        String plain = found.replaceAll("\\p{Cntrl}", "?");
        return "\"" + (plain.length() > SHOWN ? plain.substring(0, SHOWN) + "..." : plain) + "\"";
    }
}
