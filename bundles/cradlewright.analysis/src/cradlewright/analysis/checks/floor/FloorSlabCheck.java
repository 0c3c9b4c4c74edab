package cradlewright.analysis.checks.floor;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.mechanics.slab.Concrete;
import cradlewright.mechanics.slab.SlabFormulas;
import cradlewright.mechanics.slab.Westergaard;
import java.util.List;
import java.util.Optional;

/** Does the slab take the castors without cracking? */
public final class FloorSlabCheck extends FloorCheck {

    private static final double POISSON = 0.2;
    private static final double WIDEST = 0.5;

    /** Creates the check. */
    public FloorSlabCheck() {
        super(new CheckInfo("floor.slab", "Does the slab take the castors without cracking?",
                "pavement design texts (coefficients from memory); strength EN 1992-1-1 Table 3.1; load factors TR34 4th ed.",
                        Cautions.FLOOR,
                List.of("thickness, concrete and soil of the slab", "contact area of each castor type",
                        "whether there is a room below"),
                List.of(SlabFormulas.WESTERGAARD_RADIUS, SlabFormulas.WESTERGAARD_INTERIOR, SlabFormulas.WESTERGAARD_EDGE,
                        SlabFormulas.WESTERGAARD_CORNER, SlabFormulas.CONCRETE, SlabFormulas.LOAD_FACTOR)));
    }

    /** A slab of which less is known is compared with the wheel that stands there daily instead. */
    @Override
    boolean arises(Optional<SlabFacts> slab) {
        return slab.filter(FloorCheck::known).isPresent();
    }

    @Override
    Finding judge(Optional<SlabFacts> found, List<FloorLoad> loads, FindingBuilder finding, Reader reader) {
        SlabFacts slab = found.orElseThrow();
        if (slab.suspended().isEmpty()) {
            return finding.cantSay("Whether the slab lies on soil is not known.", List.of("whether there is a room below "
                    + slab.name()));
        }
        if (slab.suspended().get()) {
            return finding.cantSay("This floor lies above a room: how it bends depends on what carries it.",
                    List.of("what the floor may carry, from a structural engineer"));
        }
        double thickness = thickness(slab).orElseThrow();
        double fck = strength(slab).orElseThrow();
        Westergaard elastic = new Westergaard(Concrete.meanModulus(fck), POISSON, thickness, subgrade(slab).orElseThrow());
        FloorLoad worst = loads.get(0);
        double radius = worst.area().orElseThrow().equalRadius();
        if (radius > WIDEST * elastic.radius()) {
            return finding.cantSay("The contact is too large for these formulas.",
                    List.of("a thicker slab, or a smaller plate under the castor"));
        }
        // Loads nearer than the radius of relative stiffness count as one: more than they do together.
        double force = worst.within(elastic.radius(), loads).stream().mapToDouble(FloorLoad::factored).sum();
        double strength = Concrete.designFlexure(fck, thickness);
        double inside = elastic.interior(force, radius).stress();
        double edge = Math.max(elastic.edge(force, radius).stress(), elastic.corner(force, radius).stress());
        double margin = settings(reader).tightMargin();
        finding.against(Amount.stress(inside), Amount.stress(strength), "design strength of the concrete in bending")
                .input("stress at an edge, joint or corner", Amount.stress(edge), "worked out")
                .input("force that counts", Amount.force(force),
                        "with load factor; castors nearer than the length below count as one")
                .input("length over which a load is felt", Amount.length(elastic.radius()), "worked out");
        Verdict verdict = Verdict.of(inside, strength, margin);
        Verdict atEdge = Verdict.of(edge, strength, margin);
        if (verdict == Verdict.STOP) {
            return finding.remedy(Remedy.advice("Take parts off, or lay beams across several castors.")).say(Verdict.STOP,
                    "The slab may crack under this castor.");
        }
        if (atEdge == Verdict.HOLDS) {
            return finding.say(verdict, "The slab takes it, also at its edges.");
        }
        return finding.remedy(Remedy.alone("Keep every castor farther from edges, joints and drains than a load is felt.",
                verdict))
                .say(Verdict.TIGHT, atEdge == Verdict.STOP
                        ? "The slab takes it well inside, and may crack at an edge, joint or corner."
                        : "The slab takes it, and only just at an edge, joint or corner.");
    }
}
