package cradlewright.analysis.checks.dolly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.dolly.SectionKey;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.load.MemberLoad;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.testshop.FrameShop;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.InternalForces;
import cradlewright.mechanics.frame.StationForces;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Box 60 x 40 x 2, S235: the rail carries V = 1.5 m g/4 from the foot to the first support, 3.6775 N per kg. EN 1993-1-1 6.2.6(3):
 * A = 60 x 40 - 56 x 36 = 384 mm2, A_v = A h/(b + h) = 384 x 60/100 = 230.4 mm2, V_Rd = 230.4 x 235/sqrt(3) = 31 260 N, reached at
 * 8500 kg; TIGHT from 7650 kg. The mechanics round the corners, which takes away up to 3 %.
 */
class MemberShearCheckTest {

    private static final double PER_KILOGRAM = 1.5 * 9.80665 / 4;
    private static final double RESISTANCE = 31_260;

    private static Finding first(FrameShop shop) {
        return shop.ask(new MemberShearCheck()).stream().filter(finding -> finding.objectId().equals("left-0")).findFirst().orElseThrow();
    }

    private static FrameShop shop(double kilograms) {
        return new FrameShop(FrameShop.box("box 60x40x2", 0.060, 0.040, 0.002), 235e6, 360e6).weighs(kilograms);
    }

    @Test
    void holdsWithTheUseOfABoxInShear() {
        Finding finding = first(shop(4000));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(4000 * PER_KILOGRAM / RESISTANCE, finding.use().orElseThrow(), 0.03);
        assertTrue(finding.words().contains("shear across its height"), finding.words());
    }

    @Test
    void isTightInTheLastTenth() {
        assertEquals(Verdict.TIGHT, first(shop(8000)).verdict());
    }

    @Test
    void stopsBeyond() {
        Finding finding = first(shop(8900));
        assertEquals(Verdict.STOP, finding.verdict());
        assertEquals(Verdict.HOLDS, finding.remedies().get(0).after().orElseThrow());
    }

    @Test
    void whatTwistingAddsIsShown() {
        // EN 10219-2 annex B (from memory), mean corner radius 3 mm: A_h = 58 x 38 - (4 - pi) x 9 = 2196.3 mm2, h = 192 - 2 x (4 - pi) x 3
        // = 186.85 mm, I_t = h t3/3 + 4 A_h2 t/h = 207 023 mm4, C_t = I_t/(t + 2 A_h/h) = 8116 mm3. EN 1993-1-1 6.2.7: 50 N*m give
        // 6.161 MPa of 235/sqrt(3) = 135.68 MPa, 0.0454 of it.
        SectionShape shape = shop(1).read(new SectionKey("box 60x40x2")).orElseThrow();
        MemberFacts facts = new MemberFacts("m", "m", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), EndRelease.FIXED, EndRelease.FIXED, Optional.empty(), Optional.empty(), Optional.empty());
        MemberLoad load = new MemberLoad("m", List.of(new StationForces(0, new InternalForces(0, 0, 1000, 50, 0, 0))), ForceMoment.ZERO,
                ForceMoment.ZERO, 0);
        LoadedMember member = new LoadedMember(facts, 1, false, Optional.of(shape), Optional.of(new StockFacts.Steel("steel", "S235",
                Optional.of(FrameShop.measured(235e6)), Optional.empty())), List.of(new LoadedMember.Taken(Situation.atRest(), load)));
        MemberShearCheck check = new MemberShearCheck();
        FindingBuilder builder = new FindingBuilder(check.info(), FrameShop.VISIT, "m", "m");
        check.inputs(builder, member, check.worst(member, shape, 235e6).orElseThrow());
        List<Input> shown = builder.say(Verdict.HOLDS, "It holds.").inputs().stream().filter(Input::shown).toList();
        assertEquals(2, shown.size());
        assertEquals(1000, shown.get(0).amount().si(), 1e-9);
        assertEquals(0.0454, shown.get(1).amount().si(), 1e-4);
        assertTrue(first(shop(4000)).inputs().stream().noneMatch(Input::shown), "without twist there is nothing to explain");
    }

    @Test
    void unknownSteelIsNoAnswer() {
        assertEquals(Verdict.CANT_SAY, first(shop(4000).steelUnknown()).verdict());
    }
}
