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
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.slab.LoadedArea;
import cradlewright.mechanics.slab.SlabFormulas;
import cradlewright.mechanics.slab.WheelComparison;
import cradlewright.mechanics.slab.WheelComparison.Footprint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Is it no worse for an unknown slab than the car wheel that stands there daily? */
public final class FloorCompareCheck extends FloorCheck {

    /** Distance of the wheels of a car across, at the upper end of what is common, m: common practice, no source. */
    private static final double TRACK = 1.5;
    /** Plates that are tried under the castors: step and largest side, m. */
    private static final double PLATE_STEP = 0.05;
    private static final int PLATE_STEPS = 6;

    /** Creates the check. */
    public FloorCompareCheck() {
        super(new CheckInfo("floor.compare", "Is it no worse for the floor than the car wheel that stands there daily?",
                "own derivation, checked on random slabs", Cautions.FLOOR,
                List.of("mass and contact area of the car wheel that stands there daily", "contact area of each castor type",
                        "that there is no room below"),
                List.of(SlabFormulas.WHEEL_COMPARISON)));
    }

    @Override
    boolean arises(Optional<SlabFacts> slab) {
        return slab.filter(FloorCheck::known).isEmpty();
    }

    @Override
    Finding judge(Optional<SlabFacts> found, List<FloorLoad> loads, FindingBuilder finding, Reader reader) {
        Optional<Footprint> daily = found.flatMap(FloorCompareCheck::daily);
        List<String> missing = missing(found, daily.isPresent());
        if (!missing.isEmpty()) {
            return finding.cantSay("Nothing tells what this floor takes.", missing);
        }
        FloorLoad worst = loads.get(0);
        // Castors nearer to each other than the wheels of a car count as one.
        double force = worst.within(TRACK, loads).stream().mapToDouble(FloorLoad::force).sum();
        Footprint wheel = daily.orElseThrow();
        WheelComparison.Result result = WheelComparison.of(new Footprint(force, worst.area().orElseThrow(), TRACK), wheel);
        finding.input("castors that count as one", Amount.force(force), "those nearer than the wheels of a car are to each other")
                .input("wheels of a car across", Amount.length(TRACK), "common practice, no source")
                .input("car wheel that stands there daily", Amount.force(wheel.force()),
                        "from the file of the slab, at its low end");
        if (result.answer() == WheelComparison.Answer.NO_WORSE) {
            return finding.against(Amount.force(force), Amount.force(wheel.force()), "car wheel that stands there daily")
                    .say(Verdict.HOLDS, "It is no worse than the car wheel that stands there daily.");
        }
        plate(force, wheel).ifPresent(side -> finding.shown("side of a square plate that would do", Amount.length(side),
                "worked out")
                .remedy(Remedy.alone("Stand each castor on a stiff square plate of the side shown.", Verdict.HOLDS)));
        String worse = result.comparisons().stream().filter(comparison -> !comparison.noWorse()).map(c -> words(c.measure()))
                .collect(Collectors.joining(", "));
        return finding.cantSay("It is worse than the car wheel that stands there daily in its " + worse + ".",
                List.of("thickness, concrete and soil of the slab: drill a core, or ask who laid it"));
    }

    private static List<String> missing(Optional<SlabFacts> slab, boolean daily) {
        List<String> missing = new ArrayList<>();
        if (slab.isEmpty()) {
            missing.add("which slab the place lies on");
            return missing;
        }
        if (!daily) {
            missing.add("thickness, concrete and soil of " + slab.get().name()
                    + ", or mass and contact area of the car wheel that stands there daily");
        }
        if (slab.get().suspended().isEmpty()) {
            missing.add("whether there is a room below " + slab.get().name());
        } else if (slab.get().suspended().get()) {
            missing.add("what the floor above a room may carry, from a structural engineer");
        }
        return missing;
    }

    private static Optional<Footprint> daily(SlabFacts slab) {
        Optional<Double> mass = slab.dailyWheel().map(Value::low).filter(m -> m > 0);
        // The larger the contact of the car wheel, the less it proves.
        Optional<Double> area = slab.dailyWheelContact().map(Value::high).filter(a -> a > 0);
        return mass.flatMap(m -> area.map(a -> new Footprint(m * Constants.GRAVITY, LoadedArea.circle(Math.sqrt(a / Math.PI)),
                TRACK)));
    }

    private static Optional<Double> plate(double force, Footprint wheel) {
        for (int i = 1; i <= PLATE_STEPS; i++) {
            double side = i * PLATE_STEP;
            Footprint plated = new Footprint(force, LoadedArea.rectangle(side, side), TRACK);
            if (WheelComparison.of(plated, wheel).answer() == WheelComparison.Answer.NO_WORSE) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    private static String words(WheelComparison.Measure measure) {
        return switch (measure) {
            case FORCE -> "force";
            case PRESSURE -> "pressure";
            case EDGE_SHEAR -> "force along the edge of the contact";
            case SPACING -> "distance to the next wheel";
        };
    }
}
