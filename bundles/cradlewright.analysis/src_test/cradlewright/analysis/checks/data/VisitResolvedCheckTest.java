package cradlewright.analysis.checks.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Words only: no formula is behind this check. */
class VisitResolvedCheckTest {

    private static Finding only(VisitShop shop) {
        List<Finding> findings = shop.ask(new VisitResolvedCheck());
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    private static void cantSay(VisitShop shop, String missing) {
        Finding finding = only(shop);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().contains(missing), finding.missing()::toString);
    }

    @Test
    void holdsWhenEverythingIsNamedAndFound() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS).with(new GearFacts.Trestle("trestle", "trestle",
                new Examination(Optional.empty(), Optional.empty(), Optional.empty()), Optional.empty()));
        shop.touch("A").at(0, 0, 0).on("trestle");
        assertEquals(Verdict.HOLDS, only(shop).verdict());
        VisitShop floor = new VisitShop(CarrierKind.FLOOR);
        floor.touch("A").at(0, 0, 0);
        assertEquals(Verdict.HOLDS, only(floor).verdict());
    }

    @Test
    void cantSayWithoutStageOrVisit() {
        VisitShop shop = new VisitShop(CarrierKind.STANDS);
        shop.stage = Optional.empty();
        cantSay(shop, "stage and setup of this visit: choose both in the car's file");
        Subject gone = new Subject(Scope.VISIT, "car", Optional.of("gone"), "Car, gone");
        assertEquals(Verdict.CANT_SAY, shop.ask(new VisitResolvedCheck(), gone).get(0).verdict());
    }

    @Test
    void cantSayWithoutThatWhichCarries() {
        cantSay(new VisitShop(CarrierKind.DOLLY), "setup: which dolly it stands on");
        cantSay(new VisitShop(CarrierKind.LIFT), "setup: which lift it is on");
        cantSay(new VisitShop(CarrierKind.STRAPS), "setup: which lift or hoist its straps hang from");
        VisitShop gone = new VisitShop(CarrierKind.DOLLY);
        gone.dolly = Optional.of("sold");
        cantSay(gone, "the dolly of setup (the file names one that is not in the shop)");
    }

    @Test
    void cantSayWithoutPlaceOrWithAHolderThatIsGone() {
        VisitShop nowhere = new VisitShop(CarrierKind.STANDS);
        nowhere.touch("A");
        cantSay(nowhere, "A: where on the car it holds (measure the mount or lift point from the marks)");
        VisitShop gone = new VisitShop(CarrierKind.STANDS);
        gone.touch("A").at(0, 0, 0).on("lent-out");
        cantSay(gone, "A: what it rests on (the file names something that is not in the shop)");
        VisitShop unsaid = new VisitShop(CarrierKind.STANDS);
        unsaid.touch("A").at(0, 0, 0);
        cantSay(unsaid, "A: what it rests on (choose it in the car's file)");
    }
}
