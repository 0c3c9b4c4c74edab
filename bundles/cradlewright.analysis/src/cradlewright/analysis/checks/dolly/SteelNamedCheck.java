package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.mechanics.steel.SteelFormulas;
import java.util.List;

/** Is it known what steel each member is made of? Only members that lack it, or their section, are named. */
public final class SteelNamedCheck extends DollyCheck {

    /** Creates the check. */
    public SteelNamedCheck() {
        super(new CheckInfo("dolly.steel", "Is it known what steel each member is made of?", "EN 1993-1-1 3.2, EN 10025-2, EN 10149-2",
                Cautions.STRUCTURE, List.of("steel of each member, with its yield strength"), List.of(SteelFormulas.GRADE)));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        List<MemberFacts> steel = dolly.members().stream().filter(member -> !timber(member, reader)).toList();
        if (steel.isEmpty()) {
            return List.of();
        }
        List<Finding> open = steel.stream().filter(member -> !known(member, reader))
                .map(member -> finding(subject, member.id(), member.name())
                .cantSay("Nobody said what steel this member is made of.",
                        List.of("steel of " + member.name() + ", with its yield strength: read it off the delivery note"))).toList();
        return open.isEmpty() ? List.of(finding(subject, dolly.id(), dolly.name())
                .say(Verdict.HOLDS, "The steel of every member is known."))
                : open;
    }

    private static boolean timber(MemberFacts member, Reader reader) {
        return member.sectionId().flatMap(id -> reader.read(new FactKey<>(StockFacts.TimberRail.class, id))).isPresent();
    }

    private static boolean known(MemberFacts member, Reader reader) {
        return member.steelId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Steel.class, id))).flatMap(StockFacts.Steel::fy)
                .filter(fy -> fy.low() > 0).isPresent();
    }
}
