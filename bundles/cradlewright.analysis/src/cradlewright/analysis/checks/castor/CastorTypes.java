package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The castor types in stock: what they are rated by, and a search among them. */
final class CastorTypes {

    private CastorTypes() {
    }

    /** Returns what a rated load rests on, in words. */
    static String ratedBy(Value rated) {
        return "rated load of the castor, " + (rated.source().word().isEmpty() ? "source not stated" : rated.source().word());
    }

    private static List<CastorType> all(Reader reader) {
        return reader.read(new IdsKey<>(CastorType.class)).stream().flatMap(id -> reader.read(new FactKey<>(CastorType.class,
                id)).stream())
                .toList();
    }

    /**
     * Returns the smallest larger castor in stock that takes a load, else the largest that takes it only just.
     *
     * @param rated rated load of the present one, kg
     * @param load what it has to take, kg
     * @param margin share of the rating from which it is tight
     */
    static Optional<Remedy> larger(double rated, double load, double margin, Reader reader) {
        List<CastorType> larger = all(reader).stream().filter(type -> type.ratedLoad().filter(value -> value.low() > rated)
                .isPresent())
                .sorted(Comparator.comparingDouble(type -> type.ratedLoad().orElseThrow().low())).toList();
        return best(larger, type -> Verdict.of(load, type.ratedLoad().orElseThrow().low(), margin));
    }

    /** Returns the smallest castor in stock with a larger wheel of which the judgement is good, else tight. */
    static Optional<Remedy> largerWheel(double diameter, Function<Double, Verdict> judgement, Reader reader) {
        List<CastorType> larger = all(reader).stream()
                .filter(type -> type.wheelDiameter().filter(value -> value.si() > diameter).isPresent())
                .sorted(Comparator.comparingDouble(type -> type.wheelDiameter().orElseThrow().si())).toList();
        return best(larger, type -> judgement.apply(type.wheelDiameter().orElseThrow().si()));
    }

    private static Optional<Remedy> best(List<CastorType> rising, Function<CastorType, Verdict> judgement) {
        for (Verdict wanted : List.of(Verdict.HOLDS, Verdict.TIGHT)) {
            for (CastorType type : rising) {
                if (judgement.apply(type) == wanted) {
                    return Optional.of(Remedy.proven("Fit castors of the type " + type.name() + ".", wanted));
                }
            }
        }
        return Optional.empty();
    }
}
