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
import cradlewright.mechanics.slab.LoadedArea;
import cradlewright.mechanics.slab.Punching;
import cradlewright.mechanics.slab.Punching.Position;
import cradlewright.mechanics.slab.SlabFormulas;
import java.util.List;
import java.util.Optional;

/** Does a castor, a screw foot or an end prop on the floor punch through the slab? */
public final class FloorPunchingCheck extends FloorCheck {

    /** Effective depth over thickness when nobody knows where the mesh lies: common practice, no source. */
    private static final double DEPTH = 0.75;
    /** Side of the plate that is tried, m. */
    private static final double PLATE = 0.20;

    /** Creates the check. */
    public FloorPunchingCheck() {
        super(new CheckInfo("floor.punching", "Does a castor, foot or end prop punch through the slab?",
                "EN 1992-1-1 6.4; load factors TR34 4th ed.",
                Cautions.FLOOR, List.of("thickness and concrete of the slab, steel in a floor above a room",
                        "contact area of each castor type"),
                List.of(SlabFormulas.PUNCHING, SlabFormulas.LOAD_FACTOR)));
    }

    @Override
    boolean arises(Optional<SlabFacts> slab) {
        return slab.filter(found -> thickness(found).isPresent() && strength(found).isPresent()).isPresent();
    }

    @Override
    Finding judge(Optional<SlabFacts> found, List<FloorLoad> loads, FindingBuilder finding, Reader reader) {
        SlabFacts slab = found.orElseThrow();
        if (slab.suspended().orElse(true) && slab.meshArea().isEmpty()) {
            return finding.cantSay("The steel in a floor that may lie above a room is not known.",
                    List.of("steel area of the mesh in " + slab.name() + ", or that there is no room below"));
        }
        double depth = DEPTH * thickness(slab).orElseThrow();
        double steel = slab.meshArea().map(area -> Math.max(0, area.low())).orElse(0.0);
        Punching punching = new Punching(strength(slab).orElseThrow(), depth, Math.min(1, steel / depth));
        FloorLoad worst = loads.get(0);
        LoadedArea area = worst.area().orElseThrow();
        double margin = settings(reader).tightMargin();
        // The perimeters of castors that are nearer than this would overlap, so their forces count as one.
        double overlap = 4 * depth + 2 * area.equalRadius();
        double force = worst.within(overlap, loads).stream().mapToDouble(FloorLoad::factored).sum();
        double inside = capacity(punching, area, Position.INSIDE);
        double edge = Math.min(capacity(punching, area, Position.EDGE), capacity(punching, area, Position.CORNER));
        finding.against(Amount.force(force), Amount.force(inside), "design resistance of the concrete against punching")
                .input("design resistance at an edge or corner", Amount.force(edge), "worked out")
                .input("effective depth", Amount.length(depth),
                        "three quarters of the thickness, common practice, no source");
        Verdict verdict = Verdict.of(force, inside, margin);
        Verdict atEdge = Verdict.of(force, edge, margin);
        if (verdict != Verdict.HOLDS) {
            Verdict plated = Verdict.of(force, capacity(punching, LoadedArea.rectangle(PLATE, PLATE), Position.INSIDE), margin);
            if (plated.compareTo(verdict) < 0) {
                finding.input("side of a square plate under each castor or foot", Amount.length(PLATE), "tried for the remedy")
                        .remedy(Remedy.alone("Stand each castor or foot on a stiff square plate of the side given below.", plated));
            }
        }
        if (verdict == Verdict.HOLDS && atEdge != Verdict.HOLDS) {
            return finding.remedy(Remedy.alone("Keep every castor and foot off edges, joints and drains.", verdict)).say(Verdict.TIGHT,
                    "It does not punch through well inside the slab, but edges and corners are weaker.");
        }
        return finding.say(verdict, verdict == Verdict.STOP ? name(worst) + " may punch through the slab."
                : name(worst) + " does not punch through.");
    }

    private static String name(FloorLoad load) {
        return load.foot() ? "What stands there on a foot" : "The castor";
    }

    private static double capacity(Punching punching, LoadedArea area, Position position) {
        return punching.capacity(area, position, position.beta());
    }
}
