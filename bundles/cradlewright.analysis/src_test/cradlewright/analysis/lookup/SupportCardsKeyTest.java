package cradlewright.analysis.lookup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Loads by moments about the supports, which are in balance whatever gives way. */
class SupportCardsKeyTest {

    private static final double G = Constants.GRAVITY;

    /** Three supports: one in front, two behind; 300 kg at two thirds of the way back load each with a third. */
    private static SupportShop tripod() {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).weighs(300, 0).balance(2, 0, 0.5, 0);
        shop.support("1M", 0, 0, 0);
        shop.support("2L", 3, -1, 0);
        shop.support("2R", 3, 1, 0);
        return shop;
    }

    private static SupportLoads loads(SupportShop shop, String name) {
        return shop.read(new SupportCardsKey(name)).get(0).held().orElseThrow().carries();
    }

    @Test
    void tellsWhatItCarriesAtRest() {
        SupportLoads loads = loads(tripod(), "1M");
        assertEquals(100 * G, loads.atRest().orElseThrow().carried().force(), 1e-6 * G);
        assertEquals("", loads.open());
    }

    @Test
    void tellsTheSituationsInWhichItCarriesMostAndLeast() {
        // Common practice: 400 N of somebody leaning come on top where they press straight down above 1M, 800 N at a bar take as much off.
        SupportShop shop = tripod().work("step", WorkPointFacts.Kind.LEAN, new Vec3(0, 0, 1), new Vec3(0, 0, -1))
                .work("hook", WorkPointFacts.Kind.BAR, new Vec3(0, 0, 1), new Vec3(0, 0, 1));
        double lean = 400;
        double bar = 800;
        SupportLoads loads = loads(shop, "1M");
        SupportLoads.Case most = loads.most().orElseThrow();
        assertEquals(Situation.Kind.LEAN, most.situation().kind());
        assertEquals(100 * G + lean, most.carried().high(), 1e-6 * G);
        SupportLoads.Case least = loads.least().orElseThrow();
        assertEquals(Situation.Kind.BAR, least.situation().kind());
        assertEquals(100 * G - bar, least.carried().low(), 1e-6 * G);
    }

    @Test
    void tellsWhyALoadIsNotKnown() {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR);
        shop.support("1M", 0, 0, 0);
        SupportLoads loads = loads(shop, "1M");
        assertEquals(List.of(), loads.cases());
        assertTrue(loads.open().startsWith("at rest: "), loads.open());
    }

    @Test
    void namesAreFoundHoweverTheyAreWritten() {
        assertEquals(List.of("2L"), tripod().read(new SupportCardsKey(" 2l ")).stream().map(SupportCard::name).toList());
        assertEquals(List.of(), tripod().read(new SupportCardsKey("2")));
    }

    @Test
    void aMountThatNothingHoldsIsFoundToo() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("tub", 200, 1, 0, 0.5)
                .mount("4L", new Vec3(3, -0.5, 0), Condition.THIN, Optional.of(true));
        SupportCard card = shop.read(new SupportCardsKey("4L")).get(0);
        assertEquals(Optional.empty(), card.held());
        assertEquals(Condition.THIN, card.mount().orElseThrow().condition());
        shop.touch("4L").mount("4L");
        List<SupportCard> cards = shop.read(new SupportCardsKey("4L"));
        assertEquals(1, cards.size());
        assertEquals("visit", cards.get(0).held().orElseThrow().visit().id());
    }

    @Test
    void weighingsOfTheStageAreAtHand() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).part("tub", 200, 1, 0, 0.5);
        shop.touch("1L").at(0, 0, 0);
        shop.weighings.add(weighing("here", "stage"));
        shop.weighings.add(weighing("before", "another stage"));
        assertEquals(List.of("here"), shop.read(new SupportCardsKey("1L")).get(0).weighings().stream().map(WeighingFacts::id).toList());
    }

    private static WeighingFacts weighing(String id, String stage) {
        return new WeighingFacts(id, id, Optional.empty(), Optional.of(stage), Optional.of("Hanna"), List.of());
    }
}
