package cradlewright.ui.properties;

import cradlewright.quantity.Source;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value as somebody types it in one go: {@code 285 kg +- 8, weighed}.
 *
 * @param value what stands first
 * @param giveOrTake what stands after the sign for it; nothing when there is none
 * @param source the word at the end; nothing when there is none
 */
record Phrase(String value, Optional<String> giveOrTake, Optional<Source> source) {

    private static final Pattern GIVE_OR_TAKE = Pattern.compile("(.*?)(?:\\+/?-|±)(.*)");

    static Phrase of(String text) {
        String rest = text.strip();
        String lower = rest.toLowerCase(Locale.ROOT);
        Optional<Source> source = Arrays.stream(Source.values()).filter(each -> each != Source.UNSTATED)
                .filter(each -> lower.endsWith(" " + each.word()) || lower.endsWith("," + each.word()))
                .max(Comparator.comparing(each -> each.word().length()));
        if (source.isPresent()) {
            rest = rest.substring(0, rest.length() - source.get().word().length()).strip();
            rest = rest.endsWith(",") || rest.endsWith(";") ? rest.substring(0, rest.length() - 1).strip() : rest;
        }
        Matcher parts = GIVE_OR_TAKE.matcher(rest);
        return parts.matches() ? new Phrase(parts.group(1).strip(), Optional.of(parts.group(2).strip()), source)
                : new Phrase(rest, Optional.empty(), source);
    }

    /** Writes a value as it could be typed. */
    static String write(Known known, Habits habits) {
        StringBuilder text = new StringBuilder(known.show(habits));
        known.giveOrTake().ifPresent(size -> text.append(" ± ").append(habits.showDifference(size, known.dimension())));
        return known.source() == Source.UNSTATED ? text.toString() : text.append(", ").append(known.source().word()).toString();
    }
}
