package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.dolly.SectionKey;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.steel.CrossSectionCheck;
import cradlewright.mechanics.steel.SectionClass;
import cradlewright.mechanics.steel.SheetLimits;
import cradlewright.mechanics.steel.SteelFormulas;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Are the walls of the members thick enough to be worked out at all, and do any buckle before they yield? Only such members are named. */
public final class SlenderCheck extends DollyCheck {

    /** Creates the check. */
    public SlenderCheck() {
        super(new CheckInfo("dolly.slender", "Are the walls of the members thick enough for their width?",
                "EN 1993-1-1 Table 5.2, EN 1993-1-3 Table 5.1 (from memory)", Cautions.STRUCTURE,
                        List.of("section and steel of each member"),
                List.of(SteelFormulas.CLASS_LIMITS, SteelFormulas.SHEET_RANGE, SteelFormulas.EFFECTIVE_WIDTH)));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        return dolly.members().stream().flatMap(member -> examine(member, subject, reader).stream()).toList();
    }

    private Optional<Finding> examine(MemberFacts member, Subject subject, Reader reader) {
        Optional<SectionShape> shape = member.sectionId().flatMap(id -> reader.read(new SectionKey(id))).filter(s -> !s.timber());
        Optional<Double> yield = member.steelId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Steel.class, id)))
                .flatMap(StockFacts.Steel::fy)
                .map(Value::high).filter(fy -> fy > 0);
        if (shape.isEmpty()) {
            return Optional.empty();
        }
        FindingBuilder finding = finding(subject, member.id(), member.name());
        if (!SheetLimits.beyond(shape.get().properties()).isEmpty()) {
            return Optional.of(finding.remedy(Remedy.advice("Take thicker sheet, or fold a lip to the free edge."))
                    .remedy(Remedy.advice("Or test this member under load."))
                    .say(Verdict.CANT_SAY, "A wall is so wide for its thickness that its strength cannot be worked out."));
        }
        return yield.filter(fy -> slender(shape.get(), fy)).map(fy -> tube(shape.get())
                ? finding.remedy(Remedy.advice("Take a tube with a thicker wall.")).say(Verdict.CANT_SAY,
                        "The wall of this round tube is so thin that it dents before it yields: no rule used here covers it.")
                : finding.say(Verdict.HOLDS, "A wall of this member buckles before it yields (class four). Only what goes on "
                        + "carrying is counted, and dents weaken it more than a thick wall."));
    }

    /** Tells whether the section is of class four under push along it or bending over its height either way. */
    private static boolean slender(SectionShape shape, double yield) {
        CrossSectionCheck check = new CrossSectionCheck(shape.properties(), yield, 1);
        return Stream.of(check.compressionClass(), check.bendingClassY(1), check.bendingClassY(-1)).anyMatch(SectionClass.CLASS_4::equals);
    }

    private static boolean tube(SectionShape shape) {
        return shape.properties().plates().stream().anyMatch(plate -> plate.kind() == Plate.Kind.TUBE);
    }
}
