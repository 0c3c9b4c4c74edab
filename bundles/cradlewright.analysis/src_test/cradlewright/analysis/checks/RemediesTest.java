package cradlewright.analysis.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.castor.CastorBrakeCheck;
import cradlewright.analysis.checks.castor.CastorLoadCheck;
import cradlewright.analysis.checks.castor.CastorRunAwayCheck;
import cradlewright.analysis.checks.castor.CastorStandingCheck;
import cradlewright.analysis.checks.castor.CastorStepCheck;
import cradlewright.analysis.checks.castor.CastorUnevenCheck;
import cradlewright.analysis.checks.dolly.MemberStrengthCheck;
import cradlewright.analysis.checks.dolly.SidewaysCheck;
import cradlewright.analysis.checks.lift.StillFastCheck;
import cradlewright.analysis.checks.stand.StandLoadCheck;
import cradlewright.analysis.checks.support.CutBracedCheck;
import cradlewright.analysis.checks.support.PadPressureCheck;
import cradlewright.analysis.checks.support.ShimShortCheck;
import cradlewright.analysis.checks.support.SupportHeldCheck;
import cradlewright.analysis.checks.support.SupportLightCheck;
import cradlewright.analysis.checks.support.SupportLoadCheck;
import cradlewright.analysis.checks.support.SupportSlideCheck;
import cradlewright.analysis.checks.tip.TipKerbCheck;
import cradlewright.analysis.checks.tip.TipOnFloorCheck;
import cradlewright.analysis.checks.tip.TipSlopeCheck;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.BraceFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.testshop.FrameShop;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The checks that search for what to do and try it. Asking in these shops does every remedy that is said to mend in the records themselves
 * and asks the check anew in a shop that starts with them, which must answer as was claimed; see the test shops. The numbers at which each
 * check stops are worked out in its own test.
 */
class RemediesTest {

    /** A check in a shop where it is not held, and how the words of what mends begin. */
    private record Search(Check check, Function<Check, List<Finding>> shop, String words) {
        @Override
        public String toString() {
            return check.info().id();
        }
    }

    static List<Search> searches() {
        List<Search> all = new ArrayList<>(rolling());
        all.addAll(supports());
        all.add(new Search(new MemberStrengthCheck(), frame(800)::ask, "Make all members of flat 60x10"));
        all.add(new Search(new SidewaysCheck(), frame(600)::ask, "Make all members of flat 60x10"));
        VisitShop straps = new VisitShop(CarrierKind.STRAPS).mount("1L", Vec3.ZERO, Condition.SOUND, Optional.of(true))
                .mount("1R", Vec3.UP, Condition.SOUND, Optional.of(false));
        all.add(new Search(new StillFastCheck(), straps::ask, "Lower until the straps are slack, free this mount"));
        VisitShop cut = new VisitShop(CarrierKind.DOLLY);
        cut.braces.add(new BraceFacts("brace", "cross bar", Optional.empty(), Optional.empty(), false));
        cut.cuts.add(new CutZoneFacts("sill", "sill", Optional.empty(), Optional.empty(), true, List.of("brace")));
        all.add(new Search(new CutBracedCheck(), cut::ask, "Fit cross bar"));
        return all;
    }

    private static List<Search> rolling() {
        return List.of(
                new Search(new CastorLoadCheck(), rolls(800).has(RollingShop.type("larger", 3000, 0.125))::ask,
                        "Fit castors of the type larger"),
                new Search(new CastorUnevenCheck(), rolls(400).has(RollingShop.type("larger", 1200, 0.125))::ask,
                        "Fit castors of the type larger"),
                new Search(new CastorStepCheck(), new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).at(place(PlaceFacts.Kind.BAY,
                        Optional.of(RollingShop.measured(0.020))))
                        .has(RollingShop.type("larger", 1000, 0.2))::ask, "Fit castors of the type larger"),
                new Search(new CastorBrakeCheck(), rolls(500).braked(2, 3).onFall(0.12)::ask, "Fit brakes to all castors"),
                new Search(new CastorRunAwayCheck(), rolls(500).onFall(0.02).feet(0.6, false)::ask, "Put the feet down"),
                new Search(new CastorStandingCheck(), rolls(500).at(place(PlaceFacts.Kind.RACK, Optional.empty())).feet(0.6, false)::ask,
                        "Put the feet down"),
                new Search(new TipSlopeCheck(), new RollingShop().weighs(760, 0).commonBalance(0.15, 0.05, 0.9).onFall(0.24).feet(0.6,
                        false)
                        ::ask, "Put the feet down"),
                new Search(new TipOnFloorCheck(), new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).work("roof",
                        WorkPointFacts.Kind.BAR, new Vec3(0, 0, 3), new Vec3(0, 1, 0))::ask, "Nobody pulls on a bar"),
                new Search(new TipKerbCheck(), new RollingShop().weighs(760, 0).commonBalance(0.15, 0, 3.4).fixed()::ask,
                        "Move it at half the walking pace"));
    }

    private static RollingShop rolls(double rated) {
        return new RollingShop().weighs(rated == 800 ? 1900 : 760, 0).commonBalance(0.15, 0.05, 0.8).stiffness(1e6)
                .rated(Optional.of(RollingShop.measured(rated)));
    }

    private static PlaceFacts place(PlaceFacts.Kind kind, Optional<Value> step) {
        return new PlaceFacts("place", "place", kind, Optional.empty(), false, Optional.empty(), Optional.empty(), step);
    }

    private static FrameShop frame(double kilograms) {
        return new FrameShop(FrameShop.flat("flat 60x10", 0.060, 0.010), 235e6, 360e6).weighs(kilograms);
    }

    private static List<Search> supports() {
        return List.of(new Search(new SupportLoadCheck(), fixture(5000, Hold.RESTS, 0)::ask, "Do not roll it over joints"),
                new Search(new SupportHeldCheck(), fixture(2700, Hold.BOLTED, -1.5)::ask, "Do not roll it over joints"),
                new Search(new SupportSlideCheck(), pushed()::ask, "Nobody pulls on a bar"),
                new Search(new SupportLightCheck(), low(CarrierKind.FLOOR, 0.0095)::ask, "Raise FL by 4 steps"),
                new Search(new ShimShortCheck(), low(CarrierKind.DOLLY, 0.0035).has(new StockFacts.Shim("shim", "shim",
                        Optional.of(SupportShop.measured(0.0005)), Optional.empty(), Optional.empty(), Optional.of(9)))::ask,
                                "Lay 5 of shim"),
                new Search(new PadPressureCheck(), padded()::ask, "Use the pad larger"),
                new Search(new StandLoadCheck(), stands()::ask, "Use strong here"));
    }

    private static SupportShop three(CarrierKind kind, double kilograms) {
        SupportShop shop = new SupportShop(kind).weighs(kilograms, 0);
        shop.support("A", -1, -0.5, 0.5);
        shop.support("B", -1, 0.5, 0.5);
        return shop;
    }

    private static SupportShop fixture(double takes, Hold hold, double balance) {
        SupportShop shop = three(CarrierKind.DOLLY, 800).balance(balance, 0, 1, 0);
        shop.support("C", 1, 0, 0.5).holds(hold).takes(takes, Basis.WORKING_LOAD_LIMIT);
        return shop;
    }

    private static SupportShop pushed() {
        SupportShop shop = three(CarrierKind.FLOOR, 265).balance(-1.0 / 3, 0, 1, 0).work("bar", WorkPointFacts.Kind.BAR,
                new Vec3(-1.0 / 3, 0, 0.5), new Vec3(0, 1, 0));
        shop.support("C", 1, 0, 0.5);
        return shop;
    }

    private static SupportShop low(CarrierKind kind, double low) {
        SupportShop shop = new SupportShop(kind).weighs(900, 0);
        shop.support("FL", -1, -0.5, 0.5).gives(1e-6).low(low);
        shop.support("FR", -1, 0.5, 0.5).gives(1e-6).low(0);
        shop.support("RR", 1, 0.5, 0.5).gives(1e-6).low(0);
        shop.support("RL", 1, -0.5, 0.5).gives(1e-6).low(0);
        return shop;
    }

    private static SupportShop padded() {
        SupportShop shop = three(CarrierKind.FLOOR, 400).has(pad("pad", 0.06)).has(pad("larger", 0.08));
        shop.support("C", 1, 0, 0.5).pad("pad");
        return shop;
    }

    private static StockFacts.Pad pad(String id, double side) {
        return new StockFacts.Pad(id, id, StockFacts.Material.OTHER, Optional.of(SupportShop.measured(side)),
                Optional.of(SupportShop.measured(side)), Optional.of(SupportShop.measured(0.006)), Optional.of(SupportShop.measured(17e6)),
                Optional.empty(), Optional.of(SupportShop.measured(0.4e6)), Optional.empty(), Optional.empty());
    }

    private static SupportShop stands() {
        SupportShop shop = three(CarrierKind.STANDS, 800).has(stand("C", 590)).has(stand("strong", 3000));
        shop.support("C", 1, 0, 1).on("C");
        return shop;
    }

    private static GearFacts.Stand stand(String id, double rated) {
        return new GearFacts.Stand(id, id, SupportShop.examined(), Optional.of(SupportShop.measured(rated)), Optional.of(false),
                Optional.empty(), Optional.empty(), OptionalInt.empty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("searches")
    void whatIsClaimedIsWhatTheChangedRecordsAnswer(Search search) {
        Finding worst = search.shop.apply(search.check).stream().filter(finding -> !finding.remedies().isEmpty())
                .max((a, b) -> a.verdict().compareTo(b.verdict())).orElseThrow();
        assertTrue(worst.verdict() == Verdict.STOP || worst.verdict() == Verdict.TIGHT, worst::toString);
        Remedy mends = worst.remedies().stream().filter(remedy -> remedy.proof() == Remedy.Proof.MENDS && remedy.words()
                .startsWith(search.words)).findFirst().orElseThrow(() -> new AssertionError(worst.remedies()));
        assertTrue(mends.after().orElseThrow().compareTo(worst.verdict()) < 0);
        assertEquals(1, searches().stream().filter(other -> other.toString().equals(search.toString())).count());
    }
}
