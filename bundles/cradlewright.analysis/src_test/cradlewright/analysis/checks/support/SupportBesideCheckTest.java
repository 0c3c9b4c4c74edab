package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * A fixture whose top lies 1 m behind and 0.5 m to the right of the zero of the dolly, with a pad of 80 x 60 mm: HOLDS up to 15 mm, STOP
 * beyond 30 mm (common practice, no source). Distances by plane geometry.
 */
class SupportBesideCheckTest {

    private static final double TOP_X = 1;
    private static final double TOP_Y = 0.5;

    private static VisitShop shop(Vec3 mount, double u, Optional<Vec3> node) {
        VisitShop shop = new VisitShop(CarrierKind.DOLLY);
        shop.mounts.add(mount("1R", mount, u));
        shop.touch("1R").mount("1R").on("fixture").pad("pad");
        shop.dolly = Optional.of("dolly");
        FixtureFacts fixture = new FixtureFacts("fixture", "fixture 1R", Optional.of("node"), Optional.empty(), Optional.empty(),
                new Vec3(0.1, 0, 0), Optional.empty(), Hold.RESTS, Optional.empty(), OptionalInt.empty(), Optional.empty(),
                Optional.empty(), Optional.empty());
        return shop.with(pad(0.08, Optional.of(VisitShop.measured(0.06)))).with(new DollyFacts("dolly", "dolly", DollyFacts.Build.OWN,
                Optional.empty(), Optional.empty(), Optional.empty(),
                new Examination(Optional.empty(), Optional.empty(), Optional.empty()), List.of(new NodeFacts("node", "node", node)),
                List.of(), List.of(), List.of(), List.of(), List.of(fixture), List.of(), Optional.empty()));
    }

    private static VisitShop shop(double x, double y, double u) {
        return shop(new Vec3(x, y, 0.3), u, Optional.of(new Vec3(TOP_X - 0.1, TOP_Y, 0.2)));
    }

    private static MountFacts mount(String id, Vec3 at, double u) {
        return new MountFacts(id, id, Optional.of(new Spot(at, u)), Condition.SOUND, Optional.empty(), Optional.empty(),
                OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static StockFacts.Pad pad(double length, Optional<Value> width) {
        return new StockFacts.Pad("pad", "pad", StockFacts.Material.RUBBER, Optional.of(VisitShop.measured(length)), width,
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new SupportBesideCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void holdsUpToAQuarterOfTheSmallerSide() {
        // 9 and 12 mm off: 15 mm by Pythagoras, less a hair for rounding.
        Finding finding = only(shop(TOP_X + 0.009, TOP_Y - 0.011999, 0));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(0.015, finding.demand().orElseThrow().si(), 1e-6);
        assertEquals(0.03, finding.capacity().orElseThrow().si(), 1e-12);
    }

    @Test
    void standsTightBesideTheMiddle() {
        assertEquals(Verdict.TIGHT, only(shop(TOP_X + 0.016, TOP_Y, 0)).verdict());
        assertEquals(Verdict.TIGHT, only(shop(TOP_X, TOP_Y - 0.0299, 0)).verdict());
    }

    @Test
    void stopsBesideThePad() {
        Finding finding = only(shop(TOP_X - 0.031, TOP_Y, 0));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("It stands beside what is to carry it.", finding.words());
    }

    @Test
    void countsWhatThePlacesMayBeOffBy() {
        // 10 mm and give or take 2 x 6 mm (JCGM 100, k = 2): 22 mm; with 2 x 11 mm 32 mm.
        Finding tight = only(shop(TOP_X + 0.01, TOP_Y, 0.006));
        assertEquals(Verdict.TIGHT, tight.verdict());
        assertEquals(0.022, tight.demand().orElseThrow().si(), 1e-12);
        assertEquals("It may stand beside what is to carry it: the two places are not known that well.",
                only(shop(TOP_X + 0.01, TOP_Y, 0.011)).words());
    }

    @Test
    void aCarPutElsewhereStandsBeside() {
        VisitShop moved = shop(TOP_X, TOP_Y, 0);
        moved.shift = new Vec3(0.15, 0, 0.07);
        assertEquals(Verdict.STOP, only(moved).verdict());
        assertEquals(0.15, only(moved).demand().orElseThrow().si(), 1e-12);
        // Turned by a quarter, (0.5, -1) comes to lie at (1, 0.5).
        VisitShop turned = shop(0.5, -1, 0);
        turned.heading = Math.PI / 2;
        assertEquals(Verdict.HOLDS, only(turned).verdict());
    }

    @Test
    void heightIsNoDistance() {
        assertEquals(Verdict.HOLDS, only(shop(new Vec3(TOP_X, TOP_Y, 1.5), 0, Optional.of(new Vec3(TOP_X - 0.1, TOP_Y, 0.2)))).verdict());
    }

    @Test
    void aPadOfUnknownSizeCountsAsSmall() {
        VisitShop shop = shop(TOP_X + 0.02, TOP_Y, 0).with(pad(0.2, Optional.empty()));
        assertEquals(Verdict.TIGHT, only(shop).verdict());
        assertEquals(0.025, only(shop).capacity().orElseThrow().si(), 1e-12);
    }

    @Test
    void asksNothingWhereAPlaceIsMissing() {
        assertEquals(List.of(), shop(new Vec3(TOP_X, TOP_Y, 0.3), 0, Optional.empty()).ask(new SupportBesideCheck()));
        VisitShop stands = new VisitShop(CarrierKind.STANDS);
        stands.liftPoints.add(new LiftPointFacts("point", "point", Optional.of(new Spot(Vec3.ZERO, 0)), Condition.SOUND, Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty()));
        stands.touch("point").liftPoint("point");
        assertEquals(List.of(), stands.ask(new SupportBesideCheck()));
    }

    @Test
    void aMountOnAnotherMountOfTheChassisStandsBeside() {
        VisitShop shop = new VisitShop(CarrierKind.CHASSIS);
        shop.mounts.add(mount("shell", new Vec3(1, 0.5, 0.4), 0));
        shop.mounts.add(mount("chassis", new Vec3(1.03, 0.54, 0.4), 0));
        shop.touch("1R").mount("shell").on("chassis");
        Finding finding = only(shop);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(0.05, finding.demand().orElseThrow().si(), 1e-12);
    }
}
