package cradlewright.analysis.writeback;

import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.SourceDefaults;
import cradlewright.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;

/** Numbers of records as the files hold them; the way back of what the importer does. */
final class StoredValue {

    /** Digits that are kept: what conversion to and fro leaves behind is no number that anybody measured. */
    private static final MathContext DIGITS = new MathContext(12);
    private static final double SAME_SHARE = 1e-9;

    private StoredValue() {
    }

    /**
     * Returns a length in the unit of the one it replaces, else in mm. A standard uncertainty that its source implies is not written down,
     * nor is one of zero.
     *
     * @param value the {@link Value} in m, or nothing
     * @param old what it replaces, may be null
     */
    static Measured length(Optional<?> value, Measured old) {
        return value.map(v -> length((Value) v, old == null ? Unit.MILLIMETRE : old.unit())).orElse(null);
    }

    private static Measured length(Value value, Unit unit) {
        double implied = SourceDefaults.COMMON_PRACTICE.share(value.source()).orElse(0) * Math.abs(value.si());
        boolean unsaid = Math.abs(value.u() - implied) <= SAME_SHARE * Math.max(Math.abs(value.si()), value.u());
        OptionalDouble uncertainty = unsaid ? OptionalDouble.empty()
                : OptionalDouble.of(round(Unit.METRE.convertDifference(value.u(), unit)));
        return new Measured(round(unit.fromSi(value.si())), unit, uncertainty, value.source());
    }

    /** Returns a place, given in m, with the uncertainty and the source of the one it replaces, which may be null. */
    static Position at(Vec3 place, Position old) {
        OptionalDouble uncertainty = old == null ? OptionalDouble.empty() : old.uncertainty();
        Source source = old == null ? Source.UNSTATED : old.source();
        return new Position(millimetres(place.x()), millimetres(place.y()), millimetres(place.z()), uncertainty, source);
    }

    private static double millimetres(double metres) {
        return round(Unit.MILLIMETRE.fromSi(metres));
    }

    private static double round(double number) {
        return new BigDecimal(number).round(DIGITS).doubleValue();
    }
}
