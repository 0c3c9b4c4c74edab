package cradlewright.analysis.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.ApertureFacts;
import cradlewright.analysis.facts.BraceFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.mechanics.geometry.Vec3;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The fingerprint changes with every input of the visit and with nothing else. */
class VisitDigestKeyTest {

    private static final LocalDateTime NOON = WorkShop.NOON;
    private static final String AS_IT_WAS = digest(shop -> { });

    private static String digest(Consumer<VisitShop> change) {
        VisitShop shop = new VisitShop(CarrierKind.DOLLY).part("tub", 200, 1, 0, 0.5).part("door", 21, 1.2, -0.6, 0.6)
                .with(dolly(4, Optional.empty())).with(castor(160))
                .with(new PlaceFacts("corner", "corner", PlaceFacts.Kind.BAY, Optional.empty(), false, Optional.empty(), Optional.empty(),
                        Optional.empty()))
                .with(new PlacementFacts("placement", "placement", Optional.of("visit"), Optional.of("corner")));
        shop.dolly = Optional.of("dolly");
        shop.touch("1L").at(0, -0.5, 0).on("fixture").shims(stack(3, 5));
        shop.touch("1R").at(0, 0.5, 0).on("fixture");
        shop.loads.add(new TemporaryLoadFacts("box", "box", TemporaryLoadFacts.Kind.BOX, Optional.of(VisitShop.measured(25)),
                Optional.empty()));
        shop.loadsOn.add("box");
        shop.mount("m1", Vec3.ZERO, Condition.SOUND, Optional.of(false));
        shop.mount("m2", Vec3.UP, Condition.SOUND, Optional.of(false));
        shop.with(readings(reading("r1", NOON.minusDays(1), 1.000)));
        change.accept(shop);
        return shop.read(new VisitDigestKey("car", "visit", NOON)).orElseThrow();
    }

    private static DollyFacts dolly(int castors, Optional<LocalDate> due) {
        List<CastorFacts> all = IntStream.range(0, castors).mapToObj(i -> new CastorFacts("c" + i, "castor " + i, Optional.empty(),
                Optional.of("type"), true, CastorFacts.Brake.NONE)).toList();
        return new DollyFacts("dolly", "dolly 1", DollyFacts.Build.BOUGHT, Optional.of(VisitShop.measured(60)), Optional.empty(),
                Optional.empty(), new Examination(Optional.empty(), Optional.empty(), due), List.of(), List.of(), List.of(), all, List.of(),
                List.of(), List.of(), Optional.empty());
    }

    private static StockFacts.CastorType castor(double rated) {
        return new StockFacts.CastorType("type", "castor", Optional.of(VisitShop.measured(rated)), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static ShimStackFacts stack(int... millimetres) {
        return new ShimStackFacts(Arrays.stream(millimetres).mapToObj(mm -> new ShimFacts(Optional.empty(),
                Optional.of(VisitShop.measured(mm / 1000.0)), OptionalInt.of(1))).toList());
    }

    private static ApertureFacts readings(ApertureFacts.Reading... all) {
        return new ApertureFacts(ApertureFacts.idFor("car"), "Car", "car", List.of(all));
    }

    private static ApertureFacts.Reading reading(String id, LocalDateTime at, double diagonal) {
        return new ApertureFacts.Reading(id, Optional.of("left door"), Optional.of(at), Optional.of("Hanna"),
                List.of(VisitShop.measured(diagonal)), List.of());
    }

    @Test
    void isTheNumberOfTheFormAndASha256() {
        assertTrue(AS_IT_WAS.matches("2:[0-9a-f]{64}"), AS_IT_WAS);
    }

    @Test
    void changesWithPartsAndLoads() {
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.partsOn.remove("door")));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.partsOn.add("lost part")));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.shellParts.set(1, door(22, -0.6, "door"))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.shellParts.set(1, door(21, -0.7, "door"))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.loadsOn.clear()));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.torsion = Optional.of(VisitShop.measured(20_000))));
    }

    @Test
    void changesWithSetupShimsAndMounts() {
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.shift = Vec3.UP));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.touches.remove(1)));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.touches.get(1).low(0.001)));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.touches.get(0).shims(stack(3, 6))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.kind = CarrierKind.FLOOR));
        assertNotEquals(AS_IT_WAS, digest(shop -> {
            shop.mounts.remove(1);
            shop.mount("m2", Vec3.UP, Condition.SOUND, Optional.of(true));
        }));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.braces.add(new BraceFacts("brace", "brace", Optional.empty(), Optional.empty(),
                true))));
    }

    @Test
    void changesWithDollyStockPlaceAndSettings() {
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.with(dolly(3, Optional.empty()))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.with(castor(120))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.with(new PlaceFacts("corner", "corner", PlaceFacts.Kind.BAY, Optional.empty(), false,
                Optional.of(VisitShop.measured(0.02)), Optional.empty(), Optional.empty()))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.with(new PlacementFacts("placement", "placement", Optional.of("visit"),
                Optional.of("elsewhere")))));
        SettingsFacts usual = SettingsFacts.commonPractice();
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.settings = new SettingsFacts(80, usual.leanForce(), usual.barForce(),
                usual.requiredRatio(), usual.tightMargin(), usual.jointFactor(), usual.step(), usual.unevenness(), usual.slope(),
                usual.walkingSpeed(), usual.shimTolerance(), usual.friction())));
    }

    @Test
    void changesWithReadingsThatWereThereButNotWithLaterOnes() {
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.with(readings(reading("r1", NOON.minusDays(1), 1.001)))));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.others.remove(ApertureFacts.idFor("car"))));
        assertEquals(AS_IT_WAS, digest(shop -> shop.with(readings(reading("r1", NOON.minusDays(1), 1.000),
                reading("r2", NOON.plusMinutes(1), 1.002)))));
    }

    @Test
    void doesNotChangeWithNamesExaminationsOrWhatIsElsewhere() {
        assertEquals(AS_IT_WAS, digest(shop -> shop.shellParts.set(1, door(21, -0.6, "left door"))));
        assertEquals(AS_IT_WAS, digest(shop -> shop.with(dolly(4, Optional.of(VisitShop.TODAY)))));
        assertEquals(AS_IT_WAS, digest(shop -> shop.with(new GearFacts.Trestle("other", "other", new Examination(Optional.empty(),
                Optional.empty(), Optional.empty()), Optional.empty()))));
        assertEquals(AS_IT_WAS, digest(shop -> shop.shellParts.add(new PartFacts("bonnet", "bonnet", Optional.empty(), Optional.empty(),
                Optional.empty()))));
    }

    @Test
    void orderCountsOnlyWhereItIsAFact() {
        assertEquals(AS_IT_WAS, digest(shop -> {
            Collections.reverse(shop.shellParts);
            Collections.reverse(shop.partsOn);
            Collections.reverse(shop.mounts);
            Collections.reverse(shop.touches);
        }));
        assertNotEquals(AS_IT_WAS, digest(shop -> shop.touches.get(0).shims(stack(5, 3))));
    }

    /** Worked out by hand as lines in the order of their characters, and with sha256sum of the GNU core utilities. */
    @Test
    void staysTheSameForTheSameWords() {
        VisitShop bare = new VisitShop(CarrierKind.FLOOR);
        assertEquals(Optional.of("2:dfc0379c499ce470eb8fe470a277eff6776ae11faf36224c5e04a800d83afe06"),
                bare.read(new VisitDigestKey("car", "visit", NOON)));
    }

    @Test
    void isMissingWithoutVisitStageOrSetup() {
        VisitShop shop = new VisitShop(CarrierKind.FLOOR);
        assertEquals(Optional.empty(), shop.read(new VisitDigestKey("car", "no visit", NOON)));
        assertEquals(Optional.empty(), shop.read(new VisitDigestKey("no car", "visit", NOON)));
        shop.stage = Optional.empty();
        assertEquals(Optional.empty(), shop.read(new VisitDigestKey("car", "visit", NOON)));
    }

    private static PartFacts door(double mass, double y, String name) {
        return new PartFacts("door", name, Optional.of(VisitShop.measured(mass)), Optional.of(new Spot(new Vec3(1.2, y, 0.6), 0)),
                Optional.empty());
    }
}
