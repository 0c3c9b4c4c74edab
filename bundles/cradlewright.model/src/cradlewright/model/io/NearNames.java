package cradlewright.model.io;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Finds what somebody who mistyped may have meant. A slip is a letter too many, too few, another one, or two exchanged; capitals, blanks
 * and signs between letters do not count.
 */
public final class NearNames {

    /** One slip in so many letters still counts as near; common practice, no source. */
    private static final int LETTERS_A_SLIP = 4;
    private static final int MOST_SLIPS = 3;
    private static final int LONGEST = 200;

    private NearNames() {
    }

    /**
     * Returns the names that somebody may have meant, the nearest first and else in their order: those that have, in whole or as a piece,
     * what was typed with at most one slip in four letters.
     *
     * @param typed what somebody typed
     * @param names what there is
     * @param most how many to return at most
     */
    public static List<String> of(String typed, Collection<String> names, int most) {
        return of(typed, names, Function.identity(), most);
    }

    /** Returns the things whose names somebody may have meant, in the same way. */
    static <T> List<T> of(String typed, Collection<T> things, Function<T, String> name, int most) {
        String wanted = plain(typed);
        int allowed = Math.min(MOST_SLIPS, Math.max(1, wanted.length() / LETTERS_A_SLIP));
        record Near<T>(T thing, int piece, int whole) {
        }
        List<Near<T>> near = new ArrayList<>();
        for (T thing : things) {
            String there = plain(name.apply(thing));
            int piece = wanted.length() <= allowed ? slips(wanted, there, false) : slips(wanted, there, true);
            if (piece <= allowed) {
                near.add(new Near<>(thing, piece, slips(wanted, there, false)));
            }
        }
        return near.stream().sorted(Comparator.<Near<T>>comparingInt(Near::piece).thenComparingInt(Near::whole)).map(Near::thing)
                .distinct().limit(most).toList();
    }

    private static String plain(String text) {
        String letters = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
        return letters.length() > LONGEST ? letters.substring(0, LONGEST) : letters;
    }

    /**
     * Counts the slips between two texts by the usual table, row by row: the entry at i, j is the least number of slips that make the first
     * j letters of one text out of the first i of the other.
     *
     * @param piece whether {@code there} may go on before and behind
     */
    private static int slips(String typed, String there, boolean piece) {
        int[] last = null;
        int[] row = new int[there.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = piece ? 0 : j;
        }
        for (int i = 1; i <= typed.length(); i++) {
            int[] next = new int[row.length];
            next[0] = i;
            for (int j = 1; j < next.length; j++) {
                int other = row[j - 1] + (typed.charAt(i - 1) == there.charAt(j - 1) ? 0 : 1);
                next[j] = Math.min(other, Math.min(row[j], next[j - 1]) + 1);
                if (i > 1 && j > 1 && typed.charAt(i - 1) == there.charAt(j - 2) && typed.charAt(i - 2) == there.charAt(j - 1)) {
                    next[j] = Math.min(next[j], last[j - 2] + 1);
                }
            }
            last = row;
            row = next;
        }
        int least = row[row.length - 1];
        for (int j = 0; piece && j < row.length; j++) {
            least = Math.min(least, row[j]);
        }
        return least;
    }
}
