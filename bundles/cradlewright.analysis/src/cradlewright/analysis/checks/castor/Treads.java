package cradlewright.analysis.checks.castor;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.StockFacts.Tread;
import cradlewright.mechanics.castor.Range;
import cradlewright.mechanics.castor.Rolling;
import cradlewright.mechanics.castor.TreadOnFloor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How hard the wheels of a dolly roll on concrete. */
final class Treads {

    private Treads() {
    }

    /** Returns what is missing to tell how hard they roll. */
    static List<String> missing(DollyLoad load) {
        List<String> missing = new ArrayList<>();
        for (DollyLoad.Wheel wheel : load.wheels()) {
            String type = wheel.type().map(found -> "castor type " + found.name()).orElse("type of castor " + wheel.castor()
                    .name());
            if (wheel.type().flatMap(CastorType::wheelDiameter).isEmpty()) {
                missing.add("wheel diameter, " + type);
            }
            if (wheel.type().flatMap(CastorType::tread).isEmpty()) {
                missing.add("what the wheel runs on, " + type);
            } else if (onConcrete(wheel.type().get().tread().orElseThrow()).isEmpty()) {
                missing.add("how hard a steel wheel rolls on concrete, " + type + ": pull it with a spring scale");
            }
        }
        return missing.stream().distinct().toList();
    }

    /** Returns the span of rolling coefficients of all wheels; throws NoSuchElementException when something is missing. */
    static Range coefficient(DollyLoad load, boolean softOrUneven) {
        List<Range> all = load.wheels().stream().map(wheel -> coefficient(wheel.type().orElseThrow(), softOrUneven)).toList();
        return new Range(all.stream().mapToDouble(Range::low).min().orElseThrow(), all.stream().mapToDouble(Range::high).max()
                .orElseThrow());
    }

    private static Range coefficient(CastorType type, boolean softOrUneven) {
        TreadOnFloor tread = onConcrete(type.tread().orElseThrow()).orElseThrow();
        return Rolling.coefficient(tread, type.wheelDiameter().orElseThrow().low() / 2, softOrUneven);
    }

    /** No lever arm is known for steel on concrete. */
    private static Optional<TreadOnFloor> onConcrete(Tread tread) {
        return switch (tread) {
            case RUBBER_SOFT -> Optional.of(TreadOnFloor.MEDIUM_RUBBER_ON_CONCRETE);
            case RUBBER_HARD -> Optional.of(TreadOnFloor.HARD_RUBBER_ON_CONCRETE);
            case POLYURETHANE, POLYAMIDE -> Optional.of(TreadOnFloor.POLYMER_ON_CONCRETE);
            case STEEL -> Optional.empty();
        };
    }
}
