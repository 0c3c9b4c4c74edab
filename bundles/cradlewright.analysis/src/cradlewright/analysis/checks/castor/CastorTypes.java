package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A search among the castor types in stock for one that goes under every corner of a dolly: one odd castor is nobody's repair. */
final class CastorTypes {

    /** Wheels of which the diameters differ less than this leave the dolly at its height, m: common practice, no source. */
    private static final double SAME_HEIGHT = 0.0005;

    /** Types that are tried. */
    private static final int TRIED = 3;

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
     * Returns the types in stock that take the load of the castor that carries most, and so of each, smallest first. Wheels of the present
     * size come before others, since the dolly then stays at its height.
     *
     * @param load what the castor that carries most has to take, whatever the give of the new castors, kg
     */
    static List<Remedy> stronger(Standing standing, double load, double margin, Reader reader) {
        return trials(standing, rising(reader, CastorType::ratedLoad), type -> Verdict.of(load, rated(type), margin), reader);
    }

    /** Returns the types in stock with a larger wheel that are rated as high as any now, smallest first. */
    static List<Remedy> largerWheel(Standing standing, DollyLoad load, double diameter, Function<Double, Verdict> judgement,
            Reader reader) {
        double present = load.wheels().stream().flatMap(wheel -> wheel.type().stream()).mapToDouble(CastorTypes::rated).max().orElse(0);
        List<CastorType> larger = rising(reader, CastorType::wheelDiameter).stream()
                .filter(type -> type.wheelDiameter().orElseThrow().low() > diameter && rated(type) >= present).toList();
        return trials(standing, larger, type -> judgement.apply(type.wheelDiameter().orElseThrow().low()), reader);
    }

    private static List<Remedy> trials(Standing standing, List<CastorType> rising, Function<CastorType, Verdict> judgement, Reader reader) {
        DollyFacts dolly = standing.dolly().orElseThrow();
        return rising.stream().filter(type -> judgement.apply(type).compareTo(Verdict.CANT_SAY) < 0)
                .sorted(Comparator.comparing(type -> !keepsHeight(dolly, type, reader))).limit(TRIED)
                .map(type -> Remedy.trial("Fit castors of the type " + type.name() + " all round."
                        + (keepsHeight(dolly, type, reader) ? ""
                                : " Their wheels are of another size: the dolly then stands at another height."),
                        "castor type", trial(standing, dolly, type, reader)))
                .toList();
    }

    /** A dolly on larger wheels stands higher by as much as they are larger, and what it carries with it: common practice, no source. */
    private static Trial trial(Standing standing, DollyFacts dolly, CastorType type, Reader reader) {
        DollyFacts changed = dolly.withCastors(dolly.castors().stream().map(castor -> castor.withType(type.id())).toList());
        double higher = dolly.castors().stream().flatMap(castor -> diameter(castor, reader).stream()).findFirst()
                .flatMap(now -> type.wheelDiameter().map(then -> then.si() - now)).orElse(0.0);
        return Math.abs(higher) < SAME_HEIGHT ? Trial.records(Change.of(changed))
                : Trial.records(Change.of(changed.raised(higher), standing.car().with(standing.setup().moved(Vec3.UP.times(higher)))));
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
