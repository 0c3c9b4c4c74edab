package cradlewright.ui.ask;

import java.util.Locale;
import java.util.stream.Stream;

/** Looks for words in texts, whatever their capitals and order. */
final class Words {

    private Words() {
    }

    /** Tells whether every word of {@code wanted} is in a text; no word at all is in none. */
    static boolean in(String text, String wanted) {
        String lower = text.toLowerCase(Locale.ROOT);
        return !wanted.isBlank() && Stream.of(wanted.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(lower::contains);
    }
}
