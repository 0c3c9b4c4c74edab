package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How the dolly is made: whether it holds together, of what steel, how stiff, and whether it is far too strong. */
class DollyMakeTest {

    private static FrameShop shop(double kilograms) {
        return new FrameShop(FrameShop.flat("flat 60x10", 0.060, 0.010), 235e6, 360e6).weighs(kilograms);
    }

    private static MemberFacts hinged(MemberFacts m) {
        return new MemberFacts(m.id(), m.name(), m.fromId(), m.toId(), m.sectionId(), m.steelId(), m.up(), EndRelease.HINGED,
                EndRelease.HINGED, m.jointFromId(),
                m.jointToId(),
                m.unbraced());
    }

    private static Finding only(List<Finding> findings) {
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    @Test
    void aDollyThatHoldsTogetherHolds() {
        assertEquals(Verdict.HOLDS, only(shop(100).ask(new LooseCheck())).verdict());
    }

    @Test
    void piecesOfARailHingedToEachOtherHangLoose() {
        Finding finding = only(shop(100).members(m -> m.id().startsWith("left") ? hinged(m) : m).ask(new LooseCheck()));
        assertEquals(Verdict.STOP, finding.verdict());
        assertTrue(finding.words().contains("left-"), finding.words());
    }

    @Test
    void aSectionWithoutItsMeasuresIsNoAnswer() {
        StockFacts.Flat flat = new StockFacts.Flat("flat", "flat", Optional.of(FrameShop.measured(0.06)), Optional.empty());
        Finding finding = only(new FrameShop(flat, 235e6, 360e6).weighs(100).ask(new LooseCheck()));
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertTrue(finding.missing().get(0).contains("section"), finding.missing().toString());
    }

    @Test
    void knownSteelHoldsUnknownSteelIsNamedForEachMember() {
        assertEquals(Verdict.HOLDS, only(shop(100).ask(new SteelNamedCheck())).verdict());
        List<Finding> findings = shop(100).steelUnknown().ask(new SteelNamedCheck());
        assertEquals(8, findings.size());
        assertTrue(findings.stream().allMatch(finding -> finding.verdict() == Verdict.CANT_SAY));
    }

    @Test
    void saysHowManyTimesStrongerTheDollyIs() {
        // sideways: 943 N*m at 1.838747 N*m per kg, 512.8 kg; a quarter of that with the weight of the dolly besides is 4.0
        // times, so 120 kg
        Finding finding = only(shop(120).ask(new StrongerCheck()));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertTrue(finding.words().contains("four times"), finding.words());
    }

    @Test
    void saysNothingOfADollyThatIsWellUsedOrNotFullyKnown() {
        assertEquals(List.of(), shop(200).ask(new StrongerCheck()));
        assertEquals(List.of(), shop(120).steelUnknown().ask(new StrongerCheck()));
    }

    @Test
    void theMiddleOfTheRailSagsLikeABeamUnderAnEvenMoment() {
        // between the supports the moment is even: sag = M L^2/(8 E I), I = 10 x 60^3/12 = 180 000 mm4, L = 1 m, M = 1.838747 N*m per kg
        double perKilogram = 1.5 * 9.80665 / 4 * FrameShop.ARM / (8 * 210e9 * 180_000e-12);
        Finding finding = only(shop(200).ask(new TwistCheck()));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(200 * perKilogram, finding.demand().orElseThrow().si(), 0.02 * 200 * perKilogram);
        assertEquals(0.002, finding.capacity().orElseThrow().si());
    }

    @Test
    void sagBeyondTheShimsStops() {
        // 2 mm at 329 kg, TIGHT from 296 kg
        assertEquals(Verdict.TIGHT, only(shop(315).ask(new TwistCheck())).verdict());
        assertEquals(Verdict.STOP, only(shop(340).ask(new TwistCheck())).verdict());
    }

    @Test
    void withoutAMassThereIsNoAnswerAboutSag() {
        FrameShop shop = new FrameShop(FrameShop.flat("flat 60x10", 0.060, 0.010), 235e6, 360e6);
        assertEquals(Verdict.CANT_SAY, only(shop.ask(new TwistCheck())).verdict());
    }
}
