package cradlewright.analysis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is remembered, what is worked out again, and that both always give the same as starting anew. */
class EngineTest {

    private static final long SEED = 20261125L;

    private record LengthKey(String id) implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            return reader.read(new FactKey<>(PlacementFacts.class, id)).map(fact -> fact.name().length()).orElse(0);
        }
    }

    private record EvenKey(String id) implements Key<Boolean> {
        @Override
        public Boolean compute(Reader reader) {
            return reader.read(new LengthKey(id)) % 2 == 0;
        }
    }

    private record TotalKey() implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            int even = 0;
            for (String id : reader.read(new IdsKey<>(PlacementFacts.class))) {
                even += reader.read(new EvenKey(id)) ? 1 : 0;
            }
            return even;
        }
    }

    private record LoopKey(int step) implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            return reader.read(new LoopKey((step + 1) % 3));
        }
    }

    private long number;

    private ShopSnapshot shop(Map<String, String> names) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        names.forEach((id, name) -> facts.put(id, new PlacementFacts(id, name, Optional.empty(), Optional.empty())));
        return new ShopSnapshot(++number, "test", SettingsFacts.commonPractice(), LocalDate.of(2026, 1, 5), facts);
    }

    @Test
    void nothingIsWorkedOutTwice() {
        Engine engine = new Engine();
        engine.update(shop(Map.of("a", "x")));
        engine.read(new TotalKey(), Progress.NONE);
        int first = engine.recomputed().size();
        engine.read(new TotalKey(), Progress.NONE);
        assertEquals(first, engine.recomputed().size());
        engine.update(shop(Map.of("a", "x")));
        engine.read(new TotalKey(), Progress.NONE);
        assertEquals(List.of(), engine.recomputed());
    }

    @Test
    void anEditThatLeavesTheValueStopsThere() {
        Engine engine = new Engine();
        engine.update(shop(Map.of("a", "xx")));
        engine.read(new TotalKey(), Progress.NONE);
        engine.update(shop(Map.of("a", "yyyy")));
        assertEquals(1, engine.read(new TotalKey(), Progress.NONE));
        assertEquals(List.of(new LengthKey("a"), new EvenKey("a")), engine.recomputed());
    }

    @Test
    void onlyDependentsOfTheEditAreWorkedOutAgain() {
        Map<String, String> names = new LinkedHashMap<>(Map.of("a", "x", "b", "yy", "c", "zzz"));
        Engine engine = new Engine();
        engine.update(shop(names));
        assertEquals(1, engine.read(new TotalKey(), Progress.NONE));
        names.put("b", "y");
        engine.update(shop(names));
        assertEquals(0, engine.read(new TotalKey(), Progress.NONE));
        assertEquals(List.of(new LengthKey("b"), new EvenKey("b"), new TotalKey()), engine.recomputed());
    }

    @Test
    void randomEditsGiveTheSameAsStartingAnew() {
        Random random = new Random(SEED);
        Map<String, String> names = new LinkedHashMap<>();
        Engine engine = new Engine();
        List<Map<String, String>> history = new ArrayList<>();
        for (int edit = 0; edit < 2000; edit++) {
            if (!history.isEmpty() && random.nextInt(4) == 0) {
                names = new LinkedHashMap<>(history.get(random.nextInt(history.size())));
            } else if (random.nextInt(3) == 0 && !names.isEmpty()) {
                names.remove(names.keySet().iterator().next());
            } else {
                names.put("n" + random.nextInt(30), "x".repeat(1 + random.nextInt(4)));
            }
            history.add(new LinkedHashMap<>(names));
            ShopSnapshot snapshot = shop(names);
            engine.update(snapshot);
            Engine anew = new Engine();
            anew.update(snapshot);
            assertEquals(anew.read(new TotalKey(), Progress.NONE), engine.read(new TotalKey(), Progress.NONE),
                    "edit " + edit + ", seed " + SEED);
        }
    }

    @Test
    void whatNobodyAsksForAnyMoreIsForgotten() {
        Engine engine = new Engine();
        for (int edit = 0; edit < 1000; edit++) {
            engine.update(shop(Map.of("a", "xx")));
            assertEquals(1, engine.read(new TotalKey(), Progress.NONE));
            assertEquals(0, engine.read(new LengthKey("gone " + edit), Progress.NONE));
            // A length and its record for each of the last updates; total, ids, one evenness, length and record stay.
            assertTrue(engine.size() <= 2 * 201 + 5, () -> "remembers " + engine.size());
        }
        engine.update(shop(Map.of("a", "xx")));
        engine.read(new TotalKey(), Progress.NONE);
        assertEquals(List.of(), engine.recomputed());
    }

    @Test
    void aCancelledRunCanBeTakenUpAgain() {
        Engine engine = new Engine();
        engine.update(shop(Map.of("a", "xx", "b", "yy")));
        Set<Integer> calls = new HashSet<>();
        Progress impatient = new Progress() {
            @Override
            public boolean cancelled() {
                calls.add(calls.size());
                return calls.size() > 4;
            }
        };
        assertThrows(CancelledException.class, () -> engine.read(new TotalKey(), impatient));
        assertEquals(2, engine.read(new TotalKey(), Progress.NONE));
    }

    @Test
    void aValueThatNeedsItselfIsRefused() {
        Engine engine = new Engine();
        engine.update(shop(Map.of()));
        assertThrows(CycleException.class, () -> engine.read(new LoopKey(0), Progress.NONE));
    }

    /** A list as long as a name, worth letting go. */
    private record ListKey(String id) implements Key<List<String>> {
        @Override
        public List<String> compute(Reader reader) {
            return Collections.nCopies(reader.read(new LengthKey(id)), id);
        }

        @Override
        public boolean bulky() {
            return true;
        }
    }

    /** Reads all lists, and those with an even number of entries once more. */
    private record JoinedKey() implements Key<String> {
        @Override
        public String compute(Reader reader) {
            List<String> ids = reader.read(new IdsKey<>(PlacementFacts.class));
            StringBuilder all = new StringBuilder();
            ids.forEach(id -> all.append(reader.read(new ListKey(id))));
            ids.stream().map(id -> reader.read(new ListKey(id))).filter(list -> list.size() % 2 == 0).forEach(all::append);
            return all.toString();
        }
    }

    @Test
    void bulkyValuesAreLetGoAndWorkedOutAgainWhenNeeded() {
        Engine engine = new Engine(1);
        Map<String, String> names = new LinkedHashMap<>();
        names.put("a", "xx");
        names.put("b", "yy");
        engine.update(shop(names));
        assertEquals(List.of("a", "a"), engine.read(new ListKey("a"), Progress.NONE));
        assertEquals(List.of("b", "b"), engine.read(new ListKey("b"), Progress.NONE));
        assertEquals(List.of("a", "a"), engine.read(new ListKey("a"), Progress.NONE));
        assertEquals(2, engine.recomputed().stream().filter(new ListKey("a")::equals).count(), "only the last one is kept");
        assertEquals("[a, a][b, b][a, a][b, b]", engine.read(new JoinedKey(), Progress.NONE));
        engine.update(shop(names));
        engine.read(new JoinedKey(), Progress.NONE);
        assertEquals(List.of(), engine.recomputed(), "a value that was let go has not changed by that");
        names.put("b", "zzz");
        engine.update(shop(names));
        assertEquals("[a, a][b, b, b][a, a]", engine.read(new JoinedKey(), Progress.NONE));
    }

    @Test
    void lettingGoChangesNoAnswer() {
        Random random = new Random(SEED);
        Map<String, String> names = new LinkedHashMap<>();
        Engine engine = new Engine(3);
        for (int edit = 0; edit < 500; edit++) {
            names.put("n" + random.nextInt(9), "x".repeat(1 + random.nextInt(4)));
            ShopSnapshot snapshot = shop(names);
            engine.update(snapshot);
            Engine anew = new Engine();
            anew.update(snapshot);
            assertEquals(anew.read(new JoinedKey(), Progress.NONE), engine.read(new JoinedKey(), Progress.NONE), "edit " + edit);
        }
    }

    /** Breaks off on names of one letter. */
    private record FussyKey() implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            int length = reader.read(new LengthKey("a"));
            if (length == 1) {
                throw new IllegalStateException("too short");
            }
            return length;
        }
    }

    /** Gets over the failure of what it reads. */
    private record PatientKey() implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            try {
                return reader.read(new FussyKey());
            } catch (IllegalStateException e) {
                return -1;
            }
        }
    }

    @Test
    void aFailureIsLookedAtAgainWhenWhatItRestsOnChanges() {
        Engine engine = new Engine();
        for (String name : List.of("oo", "o", "o", "ooo", "y")) {
            engine.update(shop(Map.of("a", name)));
            assertEquals(name.length() == 1 ? -1 : name.length(), engine.read(new PatientKey(), Progress.NONE), name);
        }
    }
}
