package cradlewright.analysis.checks.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.testshop.FrameShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The dolly has four corners at which a rail meets a member across, and rails of three pieces that run on in line. */
class MissingJointCheckTest {

    private static FrameShop shop() {
        JointFacts.Welded weld = new JointFacts.Welded("weld", "weld", Optional.empty(), Optional.empty(), Optional.empty(), 2,
                Optional.empty());
        return new FrameShop(FrameShop.flat("flat", 0.06, 0.01), 235e6, 360e6).weighs(100).joint(weld);
    }

    private static MemberFacts across(MemberFacts m, Optional<String> from, Optional<String> to) {
        return m.id().equals("front") || m.id().equals("rear") ? FrameShop.joined(m, from, to) : m;
    }

    private static Finding only(FrameShop shop) {
        List<Finding> findings = shop.ask(new MissingJointCheck());
        assertEquals(1, findings.size(), findings.toString());
        return findings.get(0);
    }

    @Test
    void membersAcrossWithJointsAtBothEndsHold() {
        assertEquals(Verdict.HOLDS, only(shop().members(m -> across(m, Optional.of("weld"), Optional.of("weld")))).verdict());
    }

    @Test
    void withoutJointsBothEndsAtEachCornerAreNamed() {
        Finding finding = only(shop());
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        assertEquals(8, finding.missing().size(), finding.missing().toString());
    }

    @Test
    void aJointThatIsNotThereCountsAsNone() {
        Finding finding = only(shop().members(m -> across(m, Optional.of("weld"), Optional.of("gone"))));
        assertEquals(4, finding.missing().size(), finding.missing().toString());
    }

    @Test
    void aMemberThatEndsAtARunningRailNeedsItsOwnJoint() {
        MemberFacts brace = new MemberFacts("brace", "brace", Optional.of("left1"), Optional.of("right1"), Optional.of("flat"),
                Optional.of("steel"),
                Optional.empty(), EndRelease.FIXED, EndRelease.FIXED, Optional.of("weld"), Optional.empty(), Optional.empty());
        Finding finding = only(shop().members(m -> across(m, Optional.of("weld"), Optional.of("weld"))).member(brace));
        assertEquals(List.of("joint of brace at right1"), finding.missing());
    }

    @Test
    void aBoughtDollyIsNotAskedAbout() {
        assertEquals(List.of(), shop().built(DollyFacts.Build.BOUGHT).ask(new MissingJointCheck()));
    }
}
