package cradlewright.analysis.checks.gear;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.GearFacts;
import java.util.List;

/** Can the piece of gear be told from its twins? */
public final class TagCheck implements Check {

    private static final CheckInfo INFO = new CheckInfo("gear.tag", "Does it have a number on a tag?",
            "common practice, no source", Cautions.LIFTING,
            List.of("number on the tag"), List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public Scope scope() {
        return Scope.GEAR;
    }

    @Override
    public List<Finding> examine(Subject subject, Reader reader) {
        return reader.read(new FactKey<>(GearFacts.class, subject.ownerId())).map(gear -> List.of(examine(gear, subject)))
                .orElse(List.of());
    }

    private static Finding examine(GearFacts gear, Subject subject) {
        FindingBuilder finding = new FindingBuilder(INFO, subject, gear.id(), gear.name());
        if (gear.examination().tag().filter(tag -> !tag.isBlank()).isEmpty()) {
            return finding.remedy(Remedy.advice("Read the number off the tag and enter it; a strap whose tag is gone is taken out of use."))
                    .say(Verdict.TIGHT, "No number of a tag is in the files, so nobody can tell which piece was examined.");
        }
        return finding.say(Verdict.HOLDS, "Tag number " + gear.examination().tag().get() + ".");
    }
}
