package cradlewright.analysis.checks.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.SignOffFacts;
import cradlewright.analysis.testshop.WorkShop;
import cradlewright.analysis.testshop.WorkShop.Progress;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A signature lapses when what it was given for changes, and a new one counts again. */
class SignOffLapsedCheckTest {

    private static final SignOffLapsedCheck CHECK = new SignOffLapsedCheck();

    private static WorkShop shop(Progress progress) {
        return new WorkShop().operation("cut", null, progress);
    }

    @Test
    void holdsWhileNothingChanges() {
        WorkShop shop = shop(Progress.OPEN);
        shop.hold("point", "cut", shop.signed("Hanna", WorkShop.NOON));
        assertEquals(List.of(Verdict.HOLDS), shop.verdicts(CHECK));
    }

    @Test
    void stopsWhenAPartIsAddedAndHoldsWhenItIsSignedAgain() {
        WorkShop shop = shop(Progress.RUNNING);
        SignOffFacts first = shop.signed("Hanna", WorkShop.NOON);
        shop.hold("point", "cut", first).shop.part("box", 10, 0, 0, 0);
        Finding finding = shop.ask(CHECK).get(0);
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals("Lapsed: what it was signed for by Hanna on 2025-03-14 has changed since.", finding.words());
        shop.hold("point", "cut", first, shop.signed("Bram", WorkShop.NOON));
        assertEquals(List.of(Verdict.HOLDS), shop.verdicts(CHECK));
    }

    @Test
    void stopsWhenTheVisitIsGone() {
        WorkShop shop = shop(Progress.OPEN);
        SignOffFacts signed = shop.signed("Hanna", WorkShop.NOON);
        shop.hold("point", "cut", new SignOffFacts("s", signed.by(), signed.at(), signed.digest(), Optional.of("no visit")));
        assertEquals(List.of(Verdict.STOP), shop.verdicts(CHECK));
    }

    @Test
    void cannotSayWhenTheSignatureIsIncomplete() {
        WorkShop shop = shop(Progress.OPEN);
        SignOffFacts full = shop.signed("Hanna", WorkShop.NOON);
        for (SignOffFacts part : List.of(new SignOffFacts("s", Optional.empty(), full.at(), full.digest(), full.visitId()),
                new SignOffFacts("s", full.by(), Optional.empty(), full.digest(), full.visitId()),
                new SignOffFacts("s", full.by(), full.at(), Optional.empty(), full.visitId()),
                new SignOffFacts("s", full.by(), full.at(), full.digest(), Optional.empty()),
                new SignOffFacts("s", full.by(), full.at(), Optional.of("0:of another form"), full.visitId()))) {
            shop.hold("point", "cut", part);
            assertEquals(List.of(Verdict.CANT_SAY), shop.verdicts(CHECK), part.toString());
            assertTrue(shop.ask(CHECK).get(0).missing().get(0).endsWith("sign again"), part.toString());
        }
    }

    @Test
    void isSilentWhenTheWorkIsDoneOrNobodySigned() {
        WorkShop done = shop(Progress.DONE);
        SignOffFacts signed = done.signed("Hanna", WorkShop.NOON);
        done.hold("point", "cut", signed).shop.part("box", 10, 0, 0, 0);
        assertEquals(List.of(), done.verdicts(CHECK));
        assertEquals(List.of(), shop(Progress.OPEN).hold("point", "cut").verdicts(CHECK));
    }
}
