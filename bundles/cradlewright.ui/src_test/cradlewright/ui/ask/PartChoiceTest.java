package cradlewright.ui.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which parts somebody may mean. */
class PartChoiceTest {

    private static final ShopSnapshot SHOP = shop(car("red", "Red coupe", "door", "left door", "bonnet"),
            car("grey", "Grey van", "left door", "engine"));

    private static CarFacts car(String id, String name, String... parts) {
        List<PartFacts> all = Stream.of(parts).map(part -> new PartFacts(id + "-" + part, part, Optional.empty(), Optional.empty(),
                Optional.empty())).toList();
        PieceFacts shell = new PieceFacts(id + "-shell", "shell", PieceKind.SHELL, Optional.empty(), Optional.empty(), List.of(), all);
        return new CarFacts(id, name, true, List.of(shell), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of());
    }

    private static ShopSnapshot shop(CarFacts... cars) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        Stream.of(cars).forEach(car -> facts.put(car.id(), car));
        return new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), LocalDate.of(2026, 3, 31), facts);
    }

    private static List<String> matching(String text) {
        return PartChoice.matching(PartChoice.all(SHOP), text).stream().map(PartChoice::partId).toList();
    }

    @Test
    void aWholeNameGoesBeforePiecesOfNames() {
        assertEquals(List.of("red-door"), matching("Door"));
        assertEquals(List.of("red-left door", "grey-left door"), matching(" left door "));
    }

    @Test
    void aWholeLabelMeansOnePart() {
        assertEquals(List.of("grey-left door"), matching("left door, shell of Grey van"));
    }

    @Test
    void wordsMayStandInAnyOrderAndNameTheCar() {
        assertEquals(List.of("grey-left door"), matching("van left"));
        assertEquals(List.of("red-bonnet"), matching("BON red"));
        assertEquals(List.of(), matching("piano"));
        assertEquals(List.of(), matching("  "));
    }

    @Test
    void aChoiceIsFoundAgainUntilItIsGone() {
        PartChoice choice = PartChoice.all(SHOP).get(0);
        assertEquals("door", choice.in(SHOP).orElseThrow().part().name());
        assertEquals(Optional.empty(), choice.in(shop(car("red", "Red coupe", "bonnet"))));
    }

    @Test
    void noWordIsInNoText() {
        assertTrue(Words.in("Left door", "door LEFT"));
        assertFalse(Words.in("Left door", "door right"));
        assertFalse(Words.in("Left door", ""));
    }
}
