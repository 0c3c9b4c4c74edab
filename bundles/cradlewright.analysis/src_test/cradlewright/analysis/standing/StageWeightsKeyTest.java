package cradlewright.analysis.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a car weighs in a stage; totals worked out by hand, give or take as root of the sum of squares (JCGM 100, 5.1.2; from memory). */
class StageWeightsKeyTest {

    private VisitShop shop;

    @BeforeEach
    void shellAndChassisWithABox() {
        shop = new VisitShop(CarrierKind.FLOOR).part("body", new Value(180, 3, Source.MAKERS_SHEET), new Vec3(2, 0, 0.8), 0);
        shop.chassisParts.add(new PartFacts("rails", "rails", Optional.of(new Value(120, 4, Source.MAKERS_SHEET)),
                Optional.of(new Spot(new Vec3(1.5, 0, 0.4), 0)), Optional.empty()));
        shop.partsOn.add("rails");
        shop.loads.add(new TemporaryLoadFacts("box", "box", TemporaryLoadFacts.Kind.BOX,
                Optional.of(new Value(20, 0, Source.GUESSED)), Optional.of(new Spot(new Vec3(3, 0, 0.9), 0))));
        shop.loadsOn.add("box");
    }

    private List<StageWeight> ask() {
        return shop.read(new StageWeightsKey("car"));
    }

    @Test
    void allThatIsOnCountsWhateverIsCarriedAtAVisit() {
        StageWeight all = ask().get(0);
        assertEquals(Optional.empty(), all.piece());
        assertEquals(320, all.weight().estimate().orElseThrow().balance().mass(), 1e-12, "180 + 120 + 20");
        assertEquals((360 + 180 + 60) / 320.0, all.weight().estimate().orElseThrow().balance().point().x(), 1e-12);
        assertEquals(5, all.weight().estimate().orElseThrow().standard(Quantity.MASS), 1e-12, "root of 9 + 16");
        assertEquals(List.of("box"), all.weight().guessed());
    }

    @Test
    void eachPieceStandsForItselfWithoutTemporaryLoads() {
        List<StageWeight> lines = ask();
        assertEquals(3, lines.size());
        assertEquals(180, lines.get(1).weight().estimate().orElseThrow().balance().mass(), 1e-12);
        assertEquals(120, lines.get(2).weight().estimate().orElseThrow().balance().mass(), 1e-12);
        assertTrue(lines.get(1).piece().isPresent() && lines.get(2).piece().isPresent());
        shop.partsOn.remove("rails");
        assertEquals(1, ask().size(), "with one piece on there is nothing to tell apart");
    }

    @Test
    void whatIsNotKnownIsNamedAndNeverCountsAsZero() {
        shop.chassisParts.add(new PartFacts("axle", "axle", Optional.empty(), Optional.empty(), Optional.empty()));
        shop.partsOn.add("axle");
        assertEquals(List.of("axle: mass"), ask().get(0).weight().missing());
        shop.partsOn.clear();
        shop.partsOn.add("axle");
        shop.loadsOn.clear();
        assertEquals(Optional.empty(), ask().get(0).weight().estimate(), "nothing known is on, so no number is given");
        assertEquals(List.of(), shop.read(new StageWeightsKey("another")));
    }
}
