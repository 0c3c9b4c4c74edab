package cradlewright.analysis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.SettingsKey;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A change that is only tried gives what a changed shop would give, keeps to itself, and works out only what it touches. */
class WhatIfTest {

    private static final long SEED = 20261126L;
    /** Who asks about a change, one after the other: each of them has to see later edits, whoever asked first. */
    private static final List<List<String>> WHO = List.of(List.of("me"), List.of("you"), List.of("me", "you"), List.of("you", "me"));
    /** Ids whose length was worked out, in order. */
    private static final List<String> MEASURED = new ArrayList<>();

    /** Length of the name that a record points at, or of its own; so that what is read depends on values. */
    private record LengthKey(String id) implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            MEASURED.add(id);
            Optional<PlacementFacts> fact = reader.read(new FactKey<>(PlacementFacts.class, id));
            Optional<String> other = fact.flatMap(PlacementFacts::placeId);
            return other.isPresent() ? reader.read(new FactKey<>(PlacementFacts.class, other.get())).map(f -> f.name().length()).orElse(-1)
                    : fact.map(f -> f.name().length()).orElse(0);
        }
    }

    private record TotalKey() implements Key<Double> {
        @Override
        public Double compute(Reader reader) {
            double sum = reader.read(new SettingsKey()).personMass();
            for (String id : reader.read(new IdsKey<>(PlacementFacts.class))) {
                sum = 3 * sum + reader.read(new LengthKey(id)) % 2;
            }
            return sum;
        }
    }

    private record ThenKey(String who, Change change) implements Key<Double> {
        @Override
        public Double compute(Reader reader) {
            return reader.after(change).read(new TotalKey());
        }
    }

    /** Breaks off while there is no record of that id; who reads it gets over that. */
    private record NeededKey(String id) implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            return reader.read(new FactKey<>(PlacementFacts.class, id)).orElseThrow().name().length();
        }
    }

    private record PerhapsKey(String who, Change change) implements Key<Integer> {
        @Override
        public Integer compute(Reader reader) {
            try {
                return reader.after(change).read(new NeededKey("needed"));
            } catch (NoSuchElementException e) {
                return -1;
            }
        }
    }

    /** Whether the reader says that something is tried: outside of a change, right after it and beneath. */
    private record TriedKey(Optional<Change> change) implements Key<List<Boolean>> {
        @Override
        public List<Boolean> compute(Reader reader) {
            return change.map(c -> List.of(reader.tried(), reader.after(c).tried(), reader.after(c).read(new TriedKey(Optional.empty()))
                    .get(0))).orElse(List.of(reader.tried()));
        }
    }

    private record LoopKey() implements Key<Double> {
        @Override
        public Double compute(Reader reader) {
            return reader.after(Change.of(fact("a", "", null))).read(new LoopThenKey());
        }
    }

    private record LoopThenKey() implements Key<Double> {
        @Override
        public Double compute(Reader reader) {
            return reader.read(new LoopThenKey());
        }
    }

    private static PlacementFacts fact(String id, String name, String other) {
        return new PlacementFacts(id, name, Optional.empty(), Optional.ofNullable(other));
    }

    private static ShopSnapshot shop(SettingsFacts settings, Fact... facts) {
        Map<String, Fact> all = new LinkedHashMap<>();
        List.of(facts).forEach(fact -> all.put(fact.id(), fact));
        return new ShopSnapshot(1, "test", settings, LocalDate.of(2026, 1, 5), all);
    }

    private static ShopSnapshot shop(Fact... facts) {
        return shop(SettingsFacts.commonPractice(), facts);
    }

    private static double anew(ShopSnapshot shop) {
        Engine engine = new Engine();
        engine.update(shop);
        return engine.read(new TotalKey(), Progress.NONE);
    }

    private static ShopSnapshot changed(ShopSnapshot shop, Change change) {
        Map<String, Fact> facts = new LinkedHashMap<>(shop.facts());
        change.facts().forEach(fact -> facts.put(fact.id(), fact));
        return new ShopSnapshot(2, shop.name(), change.settings().orElse(shop.settings()), shop.today(), facts);
    }

    @Test
    void onlyWhatTheChangeTouchesIsWorkedOut() {
        Engine engine = new Engine();
        engine.update(shop(fact("a", "x", null), fact("b", "xx", null), fact("c", "ooo", "b")));
        engine.read(new TotalKey(), Progress.NONE);
        MEASURED.clear();
        engine.read(new ThenKey("me", Change.of(fact("b", "x", null))), Progress.NONE);
        assertEquals(List.of("b", "c"), MEASURED);
        MEASURED.clear();
        engine.read(new TotalKey(), Progress.NONE);
        engine.read(new ThenKey("me", Change.of(fact("b", "x", null))), Progress.NONE);
        assertEquals(List.of(), MEASURED, "what was tried is remembered as one answer, and the shop itself was never touched");
    }

    @Test
    void whoAsksAboutTheSameChangeFindsItWorkedOut() {
        Engine engine = new Engine();
        engine.update(shop(fact("a", "x", null), fact("b", "xx", null)));
        engine.read(new ThenKey("me", Change.of(fact("b", "x", null))), Progress.NONE);
        MEASURED.clear();
        engine.read(new ThenKey("you", Change.of(fact("b", "x", null))), Progress.NONE);
        assertEquals(List.of(), MEASURED);
        engine.read(new ThenKey("you", Change.of(fact("b", "yyy", null))), Progress.NONE);
        assertEquals(List.of("a", "b"), MEASURED, "another change is another shop, and nobody asked about the shop as it is");
    }

    @Test
    void aFailureThatWasGotOverIsLookedAtAgainWhenItsCauseIsEdited() {
        Engine engine = new Engine();
        Change change = Change.of(fact("a", "x", null));
        engine.update(shop());
        assertEquals(-1, engine.read(new PerhapsKey("me", change), Progress.NONE));
        assertEquals(-1, engine.read(new PerhapsKey("you", change), Progress.NONE));
        engine.update(shop(fact("needed", "xx", null)));
        assertEquals(2, engine.read(new PerhapsKey("you", change), Progress.NONE));
        assertEquals(2, engine.read(new PerhapsKey("me", change), Progress.NONE));
    }

    @Test
    void whatIsTriedIsToldFromTheShopAsItIs() {
        Engine engine = new Engine();
        engine.update(shop());
        assertEquals(List.of(false, true, true), engine.read(new TriedKey(Optional.of(Change.of(fact("a", "x", null)))), Progress.NONE));
    }

    @Test
    void randomChangesOfARandomlyEditedShopGiveTheSameAsStartingAnew() {
        Random random = new Random(SEED);
        Engine engine = new Engine();
        List<Change> tried = new ArrayList<>();
        ShopSnapshot shop = shop(fact("n0", "x", null));
        for (int edit = 0; edit < 1500; edit++) {
            shop = changed(shop, random(random));
            engine.update(shop);
            if (random.nextBoolean()) {
                assertEquals(anew(shop), engine.read(new TotalKey(), Progress.NONE));
            }
            Change change = tried.isEmpty() || random.nextInt(3) == 0 ? random(random) : tried.get(random.nextInt(tried.size()));
            tried.add(change);
            for (String who : WHO.get(random.nextInt(WHO.size()))) {
                assertEquals(anew(changed(shop, change)), engine.read(new ThenKey(who, change), Progress.NONE),
                        who + ", edit " + edit + ", seed " + SEED);
            }
        }
    }

    private static Change random(Random random) {
        if (random.nextInt(10) == 0) {
            SettingsFacts s = SettingsFacts.commonPractice();
            return Change.of(s.withJointFactor(1 + random.nextInt(3)));
        }
        return Change.of(fact("n" + random.nextInt(8), "x".repeat(1 + random.nextInt(3)), random.nextInt(3) == 0 ? "n" + random.nextInt(8)
                : null));
    }

    @Test
    void settingsCanBeTriedToo() {
        Engine engine = new Engine();
        ShopSnapshot shop = shop(fact("a", "x", null));
        engine.update(shop);
        SettingsFacts heavier = new SettingsFacts(200, 400, 800, 1.5, 0.1, 1.4, 0.005, 0.003, 0.01, 1.1,
                SettingsFacts.commonPractice().shimTolerance(), SettingsFacts.commonPractice().friction());
        assertEquals(601, engine.read(new ThenKey("me", Change.of(heavier)), Progress.NONE));
        assertEquals(361, engine.read(new TotalKey(), Progress.NONE));
    }

    @Test
    void aValueThatNeedsItselfIsRefused() {
        Engine engine = new Engine();
        engine.update(shop());
        assertThrows(CycleException.class, () -> engine.read(new LoopKey(), Progress.NONE));
    }

    @Test
    void aChangeThatChangesNothingOrContradictsItselfIsRefused() {
        assertThrows(IllegalArgumentException.class, Change::of);
        assertThrows(IllegalArgumentException.class, () -> Change.of(fact("a", "x", null), fact("a", "y", null)));
        assertTrue(Change.of(fact("a", "x", null)).find("b").isEmpty());
    }
}
