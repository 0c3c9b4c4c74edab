package cradlewright.report;

import cradlewright.analysis.check.Amount;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Unit;
import java.util.Locale;

/** In which units a reader wants to see numbers, and with how many digits. */
public enum UnitSystem {
    METRIC, INCH;

    /** Returns an amount in this system's unit, in words; infinity reads "no limit". */
    public String text(Amount amount) {
        if (Double.isNaN(amount.si())) {
            return "unknown";
        }
        if (Double.isInfinite(amount.si())) {
            return "no limit";
        }
        Unit unit = unit(amount.dimension());
        double value = unit.fromSi(amount.si());
        return Measured.of(value, unit).format(unit, decimals(amount.dimension(), value), Locale.ROOT);
    }

    /** Returns the unit in which this system shows a dimension. */
    public Unit unit(Dimension dimension) {
        boolean metric = this == METRIC;
        return switch (dimension) {
            case MASS -> metric ? Unit.KILOGRAM : Unit.POUND;
            case LENGTH -> metric ? Unit.MILLIMETRE : Unit.INCH;
            case FORCE -> metric ? Unit.NEWTON : Unit.POUND_FORCE;
            case MOMENT -> metric ? Unit.NEWTON_METRE : Unit.POUND_FORCE_FOOT;
            case STRESS -> metric ? Unit.MEGAPASCAL : Unit.PSI;
            case STIFFNESS -> metric ? Unit.NEWTON_PER_MILLIMETRE : Unit.POUND_FORCE_PER_INCH;
            case TORSIONAL_STIFFNESS -> metric ? Unit.NEWTON_METRE_PER_DEGREE : Unit.POUND_FORCE_FOOT_PER_DEGREE;
            case SPEED -> metric ? Unit.METRE_PER_SECOND : Unit.FOOT_PER_MINUTE;
            case AREA -> metric ? Unit.SQUARE_MILLIMETRE : Unit.SQUARE_INCH;
            case TEMPERATURE -> metric ? Unit.DEGREE_CELSIUS : Unit.DEGREE_FAHRENHEIT;
            default -> dimension.stored();
        };
    }

    private int decimals(Dimension dimension, double value) {
        return switch (dimension) {
            case RATIO -> value == Math.rint(value) ? 0 : 2;
            case SPEED -> 2;
            case LENGTH -> this == METRIC ? 1 : 3;
            case STRESS -> this == METRIC ? 1 : 0;
            case MASS -> Math.abs(value) < 100 ? 1 : 0;
            default -> Math.abs(value) < 10 && value != Math.rint(value) ? 2 : 0;
        };
    }
}
