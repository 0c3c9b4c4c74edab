package cradlewright.analysis.checks.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words only: what is on and has no mass or no place. */
class MissingMassCheckTest {

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new MissingMassCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    private static VisitShop shop() {
        return new VisitShop(CarrierKind.STANDS).part("body", 300, 0, 0, 0);
    }

    @Test
    void holdsWhenAllHaveMassAndPlace() {
        VisitShop shop = shop();
        shop.shellParts.add(new PartFacts("door", "door", Optional.empty(), Optional.empty(), Optional.empty()));
        assertEquals(Verdict.HOLDS, only(shop).verdict(), "the door is off");
    }

    @Test
    void cantSayForEachPartWithoutMassOrPlace() {
        VisitShop shop = shop();
        shop.shellParts.add(new PartFacts("door", "door", Optional.empty(), Optional.of(new Spot(Vec3.ZERO, 0)), Optional.empty()));
        shop.shellParts.add(new PartFacts("lid", "lid", Optional.of(VisitShop.measured(20)), Optional.empty(), Optional.empty()));
        shop.partsOn.addAll(List.of("door", "lid"));
        assertEquals(Verdict.CANT_SAY, only(shop).verdict());
        assertEquals(List.of("door: mass", "lid: balance point"), only(shop).missing());
    }

    @Test
    void cantSayForIdsThatLeadNowhere() {
        VisitShop shop = shop();
        shop.partsOn.add("engine");
        shop.loadsOn.add("people");
        shop.carried.add("box");
        assertEquals(List.of("a piece that is carried but not in the file: box", "a part that is on but not in the file: engine",
                "a load that is on but not in the file: people"), only(shop).missing());
    }

    @Test
    void aPartOfAPieceThatIsNotCarriedIsNotMissing() {
        VisitShop shop = shop();
        shop.chassisParts.add(new PartFacts("axle", "axle", Optional.empty(), Optional.empty(), Optional.empty()));
        shop.partsOn.add("axle");
        assertEquals(Verdict.HOLDS, only(shop).verdict());
    }

    @Test
    void temporaryLoadsCountWhenTheyAreOn() {
        VisitShop shop = shop();
        shop.loads.add(new TemporaryLoadFacts("people", "people", TemporaryLoadFacts.Kind.PEOPLE, Optional.empty(), Optional.empty()));
        assertEquals(Verdict.HOLDS, only(shop).verdict());
        shop.loadsOn.add("people");
        assertEquals(List.of("people: mass"), only(shop).missing());
    }

    @Test
    void cantSayWhenNothingIsOnAndSilentWhenAway() {
        assertEquals(Verdict.CANT_SAY, only(new VisitShop(CarrierKind.STANDS)).verdict());
        assertEquals(List.of(), new VisitShop(CarrierKind.AWAY).ask(new MissingMassCheck()));
    }
}
