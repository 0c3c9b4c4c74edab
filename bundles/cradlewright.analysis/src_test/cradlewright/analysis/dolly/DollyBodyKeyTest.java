package cradlewright.analysis.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SteelDolly;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A frame of bars 50 mm by 20 mm, 7850 kg/m3 (EN 1993-1-1, 3.2.6): 7.85 kg/m; a rectangle of 2 m by 1 m weighs 47.1 kg. */
class DollyBodyKeyTest {

    private static Optional<Value> value(double si) {
        return Optional.of(VisitShop.measured(si));
    }

    private static final Fact BAR = new StockFacts.Flat("bar", "bar", value(0.05), value(0.02));

    private static SteelDolly rectangle(String section) {
        return new SteelDolly("dolly").node("a", 0, -0.5, 0.2).node("b", 2, -0.5, 0.2).node("c", 2, 0.5, 0.2).node("d", 0, 0.5, 0.2)
                .member("left", "a", "b", section).member("rear", "b", "c", section).member("right", "c", "d", section)
                .member("front", "d", "a", section);
    }

    private static DollyBody body(SteelDolly dolly, Fact... stock) {
        VisitShop shop = new VisitShop(CarrierKind.FLOOR).with(dolly.facts());
        for (Fact fact : stock) {
            shop.with(fact);
        }
        return shop.read(new DollyBodyKey("dolly"));
    }

    @Test
    void membersWeighDensityTimesAreaTimesLength() {
        DollyBody body = body(rectangle("bar"), BAR);
        assertEquals(47.1, body.mass(), 1e-9);
        assertEquals(0, body.centre().orElseThrow().minus(new Vec3(1, 0, 0.2)).norm(), 1e-12);
        assertTrue(body.frame().isPresent());
        assertEquals(List.of(), body.missing());
        assertEquals(List.of(), body.loose());
    }

    @Test
    void castorsCountWithTheirPlace() {
        // 5 kg at (0, -0.5): centre x = 47.1 * 1 / 52.1, y = -2.5 / 52.1.
        Fact type = new StockFacts.CastorType("big", "big", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), value(5));
        DollyBody body = body(rectangle("bar").castor("castor", "a", Optional.of("big")), BAR, type);
        assertEquals(52.1, body.mass(), 1e-9);
        assertEquals(5, body.castorMass(), 1e-12);
        assertEquals(47.1 / 52.1, body.centre().orElseThrow().x(), 1e-12);
        assertEquals(-2.5 / 52.1, body.centre().orElseThrow().y(), 1e-12);
    }

    @Test
    void aWeighedDollyWeighsThat() {
        SteelDolly dolly = rectangle("bar");
        dolly.mass = value(60);
        dolly.balance = Optional.of(new Vec3(0.9, 0, 0.3));
        assertEquals(60, body(dolly, BAR).mass());
        assertEquals(new Vec3(0.9, 0, 0.3), body(dolly, BAR).centre().orElseThrow());
    }

    @Test
    void aLooseMemberIsNamed() {
        SteelDolly dolly = rectangle("bar").node("e", 0, 2, 0.2).node("f", 1, 2, 0.2).member("stray", "e", "f", "bar");
        assertEquals(List.of("stray"), body(dolly, BAR).loose());
        assertTrue(body(dolly, BAR).frame().isEmpty());
    }

    @Test
    void whatNoFrameCanBeMadeOfIsNamed() {
        assertEquals(List.of("left: a section with all its measures", "rear: a section with all its measures",
                "right: a section with all its measures", "front: a section with all its measures",
                "mass of the dolly: weigh it, or read it off its plate"), body(rectangle("gone")).missing());
        SteelDolly open = rectangle("bar").member("nowhere", "a", "z", "bar");
        assertEquals(List.of("nowhere: a place for both of its ends"), body(open, BAR).missing());
        SteelDolly point = rectangle("bar").node("a2", 0, -0.5, 0.2).member("point", "a", "a2", "bar");
        assertEquals(List.of("point: two ends that do not lie in one place"), body(point, BAR).missing());
        assertEquals(List.of("the dolly itself"), new VisitShop(CarrierKind.FLOOR).read(new DollyBodyKey("gone")).missing());
    }

    @Test
    void timberWeighsByItsClass() {
        // C24: mean density 420 kg/m3 (EN 338, from memory); 0.1 m by 0.05 m, 6 m.
        Fact rail = new StockFacts.TimberRail("rail", "rail", value(0.1), value(0.05), Optional.of("spruce"));
        Fact spruce = new StockFacts.Timber("spruce", "spruce C24", Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(420 * 0.005 * 6, body(rectangle("rail"), rail, spruce).mass(), 1e-9);
        assertTrue(body(rectangle("rail"), rail, spruce).frame().isPresent());
        Fact unsaid = new StockFacts.TimberRail("rail", "rail", value(0.1), value(0.05), Optional.empty());
        assertTrue(body(rectangle("rail"), unsaid).missing().contains("left: what its timber is (strength class)"));
    }

    @Test
    void anUprightMemberIsNoTrouble() {
        SteelDolly dolly = rectangle("bar").node("top", 0, -0.5, 1.2).member("upright", "a", "top", "bar");
        assertTrue(body(dolly, BAR).frame().isPresent());
        assertEquals(47.1 + 7.85, body(dolly, BAR).mass(), 1e-9);
    }

    @Test
    void aCastorWithoutMassIsNamedUnlessTheDollyWasWeighed() {
        SteelDolly dolly = rectangle("bar").castor("castor 1L", "a", Optional.empty());
        assertEquals(List.of("castor 1L: mass of its type (weigh one, or weigh the whole dolly)"), body(dolly, BAR).missing());
        dolly.mass = value(60);
        assertEquals(List.of(), body(dolly, BAR).missing());
    }
}
