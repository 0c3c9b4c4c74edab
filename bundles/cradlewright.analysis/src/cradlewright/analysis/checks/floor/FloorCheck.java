package cradlewright.analysis.checks.floor;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import java.util.List;
import java.util.Optional;

/** A check of the floor under the castors or screw feet of a dolly and its end props on the floor. */
abstract class FloorCheck extends LoadedVisitCheck {

    /** Cylinder strengths for which the expressions of EN 1992-1-1 are made here, Pa. */
    private static final double WEAKEST = 12e6;
    private static final double STRONGEST = 50e6;

    FloorCheck(CheckInfo info) {
        super(info);
    }

    /** Tells whether the question arises on such a slab; nothing when none is named for the place. */
    abstract boolean arises(Optional<SlabFacts> slab);

    /** Answers it; the worst load comes first and its contact is known. */
    abstract Finding judge(Optional<SlabFacts> slab, List<FloorLoad> loads, FindingBuilder finding, Reader reader);

    @Override
    protected final boolean arises(Standing standing) {
        return standing.dolly().isPresent() && standing.place().filter(place -> place.kind() != PlaceFacts.Kind.AWAY).isPresent()
                && arises(standing.slab());
    }

    @Override
    protected final List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<FloorLoad> all = FloorLoad.all(standing.dolly().orElseThrow(), loads, reader);
        if (all.isEmpty()) {
            return List.of();
        }
        FloorLoad worst = all.get(0);
        PlaceFacts place = standing.place().orElseThrow();
        String id = standing.slab().map(SlabFacts::id).orElse(place.id());
        FindingBuilder finding = finding(subject, id, standing.slab().map(SlabFacts::name).orElse(place.name()))
                .situation("under " + worst.name() + ", " + worst.situation().words())
                .input("largest force on the floor", Amount.force(worst.force()), "19 times in 20, any stiffness the shell may have");
        // A wheel that carries less than another may still stand on less of the floor.
        Optional<FloorLoad> unprinted = all.stream().filter(load -> load.area().isEmpty()).findFirst();
        if (unprinted.isPresent()) {
            return List.of(finding.cantSay("How large the contact of the wheel is, is not known.",
                    List.of("contact area of castor "
                    + unprinted.get().name() + ": ink the tread, set it down loaded on paper and measure the print")));
        }
        finding.input("radius of its contact", Amount.length(worst.area().get().equalRadius()), worst.foot()
                ? "taken for a screw foot or the foot of a prop, common practice, no source" : "from the contact area of the castor type");
        return List.of(judge(standing.slab(), all, finding, reader));
    }

    /** Returns the cylinder strength at its low end, Pa, if it is stated and within range. */
    static Optional<Double> strength(SlabFacts slab) {
        return slab.concrete().map(Value::low).filter(fck -> fck >= WEAKEST && fck <= STRONGEST);
    }

    /** Returns the thickness at its low end, m, if it is stated. */
    static Optional<Double> thickness(SlabFacts slab) {
        return slab.thickness().map(Value::low).filter(h -> h > 0);
    }

    /** Returns the modulus of subgrade reaction at its low end, N/m3, if it is stated. */
    static Optional<Double> subgrade(SlabFacts slab) {
        return slab.subgrade().map(Value::low).filter(k -> k > 0);
    }

    /** Tells whether enough is known to work out bending on soil. */
    static boolean known(SlabFacts slab) {
        return strength(slab).isPresent() && thickness(slab).isPresent() && subgrade(slab).isPresent();
    }
}
