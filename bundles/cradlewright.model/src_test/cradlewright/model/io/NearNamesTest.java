package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Slips that people make are found, other words are not; slips are counted against a search that tries every edit. */
class NearNamesTest {

    private static final List<String> NAMES = List.of("Hollow section 60 x 60 x 4", "Hollow section 60 x 60 x 3", "red coupe", "blue coupe",
            "support.load", "support.light");

    private static List<String> near(String typed) {
        return NearNames.of(typed, NAMES, 3);
    }

    @Test
    void oneSlipOfEachSort() {
        assertEquals(List.of("support.load"), near("support.lod").subList(0, 1));
        assertEquals(List.of("support.load"), near("support.looad").subList(0, 1));
        assertEquals(List.of("support.load"), near("support.koad").subList(0, 1));
        assertEquals(List.of("support.load"), near("support.laod").subList(0, 1));
    }

    @Test
    void capitalsBlanksAndSignsDoNotCount() {
        assertEquals(List.of("Hollow section 60 x 60 x 4", "Hollow section 60 x 60 x 3"), near("hollow SECTION 60x60x4"));
        assertEquals(List.of("support.load"), near("Support-Load").subList(0, 1));
    }

    @Test
    void aPieceOfANameIsFound() {
        assertEquals(List.of("red coupe", "blue coupe"), near("cuope"));
        assertEquals(List.of("blue coupe"), near("bleu coupe"));
    }

    @Test
    void otherWordsAreNot() {
        assertEquals(List.of(), near("trestle"));
        assertEquals(List.of(), near(""));
        assertEquals(List.of(), near("?"));
        assertEquals(List.of(), NearNames.of("red", List.of(), 3));
    }

    /** Independent way: every text one edit away is made, and every piece of the name looked for among them. Seven letters allow one. */
    @Test
    void countsLikeATrialOfEveryEdit() {
        Random random = new Random(5);
        int found = 0;
        for (int run = 0; run < 2_000; run++) {
            String name = word(random, 7);
            String typed = name;
            for (int i = random.nextInt(4); i > 0; i--) {
                List<String> all = edited(typed);
                typed = all.get(random.nextInt(all.size()));
            }
            boolean near = !NearNames.of(typed, List.of(name), 1).isEmpty();
            if (typed.length() > 3 && typed.length() < 8) {
                assertEquals(oneAway(typed, name), near, typed + " for " + name);
                found += near ? 1 : 0;
            }
        }
        assertTrue(found > 300 && found < 1_500, "the test tries both: " + found);
    }

    private static boolean oneAway(String typed, String name) {
        Set<String> away = new HashSet<>(edited(typed));
        away.add(typed);
        for (int from = 0; from <= name.length(); from++) {
            for (int to = from; to <= name.length(); to++) {
                if (away.contains(name.substring(from, to))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String word(Random random, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append((char) ('a' + random.nextInt(4)));
        }
        return text.toString();
    }

    private static List<String> edited(String text) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i <= text.length(); i++) {
            for (char c = 'a'; c <= 'd'; c++) {
                all.add(text.substring(0, i) + c + text.substring(i));
                if (i < text.length()) {
                    all.add(text.substring(0, i) + c + text.substring(i + 1));
                }
            }
            if (i < text.length()) {
                all.add(text.substring(0, i) + text.substring(i + 1));
            }
            if (i + 1 < text.length()) {
                all.add(text.substring(0, i) + text.charAt(i + 1) + text.charAt(i) + text.substring(i + 2));
            }
        }
        return all;
    }
}
