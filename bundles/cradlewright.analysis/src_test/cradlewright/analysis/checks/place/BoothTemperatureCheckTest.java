package cradlewright.analysis.checks.place;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A booth of 80 degrees Celsius; zero degrees Celsius are 273.15 K (SI brochure, 2.3.1; from memory). */
class BoothTemperatureCheckTest {

    private static VisitShop shop(PlaceFacts.Kind kind, Optional<Value> heat) {
        return new VisitShop(CarrierKind.STANDS)
                .with(new PlaceFacts("booth", "booth", kind, Optional.empty(), false, Optional.empty(), heat, Optional.empty()))
                .with(new PlacementFacts("other", "other", Optional.of("other visit"), Optional.of("nowhere")))
                .with(new PlacementFacts("here", "here", Optional.of("visit"), Optional.of("booth")));
    }

    private static VisitShop hot() {
        return shop(PlaceFacts.Kind.BOOTH, Optional.of(VisitShop.measured(80)));
    }

    private static VisitShop onPad(VisitShop shop, Optional<Value> limit) {
        shop.with(new StockFacts.Pad("cork", "cork", StockFacts.Material.CORK, Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), limit));
        shop.touch("A").at(0, 0, 0).pad("cork");
        return shop;
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new BoothTemperatureCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void aPadHoldsUpToItsLimitAndStopsAbove() {
        Finding holds = only(onPad(hot(), Optional.of(VisitShop.measured(80))));
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(353.15, holds.demand().orElseThrow().si(), 1e-9);
        assertEquals(353.15, holds.capacity().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.STOP, only(onPad(hot(), Optional.of(VisitShop.measured(79)))).verdict());
    }

    @Test
    void theUnfavourableEndsDecide() {
        // 80 give or take 2 against 81; 80 against 84 give or take 6.
        Value giveOrTake = new Value(80, 1, Source.MEASURED);
        assertEquals(Verdict.STOP,
                only(onPad(shop(PlaceFacts.Kind.BOOTH, Optional.of(giveOrTake)), Optional.of(VisitShop.measured(81)))).verdict());
        assertEquals(Verdict.STOP, only(onPad(hot(), Optional.of(new Value(84, 3, Source.MAKERS_SHEET)))).verdict());
    }

    @Test
    void cantSayWithoutLimitOrHeat() {
        assertEquals(Verdict.CANT_SAY, only(onPad(hot(), Optional.empty())).verdict());
        assertEquals(Verdict.CANT_SAY, only(shop(PlaceFacts.Kind.BOOTH, Optional.empty())).verdict());
    }

    @Test
    void castorsAreAskedByTheirType() {
        VisitShop shop = hot().with(new StockFacts.CastorType("hard", "hard", Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(VisitShop.measured(60)), Optional.empty()));
        SteelDolly dolly = new SteelDolly("dolly").node("n", 0, 0, 0).castor("c1", "n", Optional.of("hard")).castor("c2", "n",
                Optional.empty())
                .castor("c3", "n", Optional.of("gone"));
        shop.with(dolly.facts());
        shop.kind = CarrierKind.DOLLY;
        shop.dolly = Optional.of("dolly");
        List<Finding> findings = shop.ask(new BoothTemperatureCheck());
        assertEquals(List.of("c1", "c2", "c3"), findings.stream().map(Finding::objectId).toList());
        assertEquals(List.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.CANT_SAY), findings.stream().map(Finding::verdict).toList());
    }

    @Test
    void partsThatAreOnAndHaveALimitAreAsked() {
        VisitShop shop = hot().part("body", 100, 0, 0, 0);
        shop.shellParts.add(new PartFacts("loom", "loom", Optional.empty(), Optional.empty(), Optional.of(VisitShop.measured(70))));
        assertEquals(List.of(), shop.ask(new BoothTemperatureCheck()));
        shop.partsOn.add("loom");
        assertEquals("loom", only(shop).objectId());
        assertEquals(Verdict.STOP, only(shop).verdict());
    }

    @Test
    void asksNothingOutsideABooth() {
        assertEquals(List.of(), onPad(shop(PlaceFacts.Kind.BAY, Optional.of(VisitShop.measured(80))), Optional.empty())
                .ask(new BoothTemperatureCheck()));
        assertEquals(List.of(), onPad(new VisitShop(CarrierKind.STANDS), Optional.empty()).ask(new BoothTemperatureCheck()));
    }
}
