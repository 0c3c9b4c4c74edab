package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.LoadedMember.Used;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.steel.SteelFormulas;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Is the steel of the dolly far stronger than it need be? Says nothing unless every steel member has its answers. */
public final class StrongerCheck extends FrameCheck {

    /** Largest use of any member below which a dolly counts as far stronger than it need be: common practice, no source. */
    private static final double FAR_BELOW = 1.0 / 3;
    private static final String[] TIMES = {"three", "four", "five", "six", "seven", "eight", "nine"};
    private static final int FIRST = 3;

    private final List<SteelMemberCheck> asked = List.of(new MemberStrengthCheck(), new MemberShearCheck(),
            new SidewaysCheck(), new StrutCheck());

    /** Creates the check. */
    public StrongerCheck() {
        super(new CheckInfo("dolly.stronger", "Is the steel of the dolly far stronger than it need be?", "common practice, no source",
                Cautions.STRUCTURE, List.of("section and steel of each member", "what stands on the dolly"),
                List.of(SteelFormulas.LINEAR_SUM, SteelFormulas.SHEAR,
                        SteelFormulas.LATERAL_TORSIONAL_BUCKLING, SteelFormulas.MEMBER_SUM)));
    }

    @Override
    protected List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader) {
        DollyFacts dolly = standing.dolly().orElseThrow();
        boolean known = members.size() == dolly.members().size()
                && members.stream().allMatch(member -> !member.timber() && member.shape().isPresent() && member.yield().isPresent());
        return known ? most(members).filter(used -> used.use().ratio() < FAR_BELOW).map(used -> List.of(say(used, dolly, subject)))
                .orElse(List.of())
                : List.of();
    }

    private Optional<Used> most(List<LoadedMember> members) {
        try {
            return members.stream().flatMap(this::uses).max(Comparator.comparingDouble(used -> used.use().ratio()));
        } catch (IllegalArgumentException | IllegalStateException e) {
            // A section that the rules do not cover has no use to compare; the checks of strength say so.
            return Optional.empty();
        }
    }

    private Stream<Used> uses(LoadedMember member) {
        return asked.stream().flatMap(check -> check.worst(member, member.shape().orElseThrow(), member.yield().orElseThrow()).stream());
    }

    private Finding say(Used used, DollyFacts dolly, Subject subject) {
        int times = used.use().ratio() > 0 ? (int) Math.floor(1 / used.use().ratio() * (1 + 1e-9)) : Integer.MAX_VALUE;
        String words = times < FIRST + TIMES.length ? "about " + TIMES[times - FIRST] + " times" : "more than nine times";
        FindingBuilder finding = finding(subject, dolly.id(), dolly.name()).situation(used.situation().words())
                .against(Amount.ratio(used.use().ratio()), Amount.ratio(1), "design resistance of the most used member, loads factored");
        return finding.say(Verdict.HOLDS, "The members of the dolly are " + words
                + " stronger than this load asks. Thinner sheet would do; sag and "
                + "rust are other reasons to keep it.");
    }
}
