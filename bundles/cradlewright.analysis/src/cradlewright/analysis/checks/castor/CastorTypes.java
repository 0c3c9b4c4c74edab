package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A search among the castor types in stock for one that goes under every corner of a dolly: one odd castor is nobody's repair. */
final class CastorTypes {

    /** Wheels of which the diameters differ less than this leave the dolly at its height, m: common practice, no source. */
    private static final double SAME_HEIGHT = 0.0005;

    private CastorTypes() {
    }

    private static List<CastorType> rising(Reader reader, Function<CastorType, Optional<Value>> by) {
        return reader.read(new IdsKey<>(CastorType.class)).stream().flatMap(id -> type(id, reader).stream())
                .filter(type -> by.apply(type).filter(value -> value.low() > 0).isPresent())
                .sorted(Comparator.comparingDouble(type -> by.apply(type).orElseThrow().low())).toList();
    }

    private static Optional<CastorType> type(String id, Reader reader) {
        return reader.read(new FactKey<>(CastorType.class, id));
    }

    /**
     * Returns the smallest type in stock that takes the load of the castor that carries most, and so of each. A wheel of the present size
     * is preferred, since the dolly then stays at its height.
     *
     * @param load what the castor that carries most has to take, whatever the give of the new castors, kg
     * @param margin share of the rating from which it is tight
     * @param now the verdict to improve
     */
    static Optional<Remedy> stronger(DollyFacts dolly, double load, double margin, Verdict now, Reader reader) {
        List<CastorType> rising = rising(reader, CastorType::ratedLoad);
        List<CastorType> level = rising.stream().filter(type -> keepsHeight(dolly, type, reader)).toList();
        return best(List.of(level, rising), type -> Verdict.of(load, rated(type), margin), now, dolly, reader);
    }

    /** Returns the type in stock with the smallest larger wheel of which the judgement is better, and which is rated as high as any now. */
    static Optional<Remedy> largerWheel(DollyLoad load, double diameter, Function<Double, Verdict> judgement, Verdict now, Reader reader) {
        double present = load.wheels().stream().flatMap(wheel -> wheel.type().stream()).mapToDouble(CastorTypes::rated).max().orElse(0);
        List<CastorType> larger = rising(reader, CastorType::wheelDiameter).stream()
                .filter(type -> type.wheelDiameter().orElseThrow().low() > diameter && rated(type) >= present).toList();
        return best(List.of(larger), type -> judgement.apply(type.wheelDiameter().orElseThrow().low()), now, load.dolly(), reader);
    }

    private static Optional<Remedy> best(List<List<CastorType>> lists, Function<CastorType, Verdict> judgement, Verdict now,
            DollyFacts dolly, Reader reader) {
        for (Verdict wanted : List.of(Verdict.HOLDS, Verdict.TIGHT)) {
            Optional<CastorType> found = lists.stream().flatMap(List::stream).filter(type -> judgement.apply(type) == wanted).findFirst();
            if (found.isPresent() && wanted.compareTo(now) < 0) {
                return Optional.of(Remedy.proven("Fit castors of the type " + found.get().name() + " all round."
                        + (keepsHeight(dolly, found.get(), reader) ? ""
                                : " Their wheels are of another size: the dolly then stands at another height."), wanted));
            }
        }
        return Optional.empty();
    }

    private static double rated(CastorType type) {
        return type.ratedLoad().map(load -> Stated.mass(load).low()).orElse(0.0);
    }

    private static boolean keepsHeight(DollyFacts dolly, CastorType other, Reader reader) {
        return dolly.castors().stream().allMatch(castor -> diameter(castor, reader)
                .flatMap(d -> other.wheelDiameter().map(o -> Math.abs(o.si() - d) < SAME_HEIGHT)).orElse(false));
    }

    private static Optional<Double> diameter(CastorFacts castor, Reader reader) {
        return castor.typeId().flatMap(id -> type(id, reader)).flatMap(CastorType::wheelDiameter).map(Value::si);
    }
}
