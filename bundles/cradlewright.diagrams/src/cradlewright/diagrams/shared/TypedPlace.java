package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.osgi.util.NLS;

/** Numbers as people type them into a diagram: a place as three lengths, a thickness or height as one. */
public final class TypedPlace {

    /** Digits after the point that are shown for typing: a tenth of a mm, and less than that in inches. */
    private static final int MM_DIGITS = 1;
    private static final int INCH_DIGITS = 3;

    private TypedPlace() {
    }

    /** Returns a place as it is shown for typing: "620; -440; 424.5 mm". */
    public static String text(Position at, UnitSystem units) {
        return number(at.x(), units) + "; " + number(at.y(), units) + "; " + number(at.z(), units) + ' ' + unit(units).symbol();
    }

    /** Returns a length in mm as it is shown for typing: "6 mm". */
    public static String length(double mm, UnitSystem units) {
        return number(mm, units) + ' ' + unit(units).symbol();
    }

    /** Returns a number of mm in the unit of the reader, without zeros at its end. */
    static String number(double mm, UnitSystem units) {
        double value = Measured.of(mm, Unit.MILLIMETRE).in(unit(units));
        BigDecimal shown = BigDecimal.valueOf(value).setScale(units == UnitSystem.METRIC ? MM_DIGITS : INCH_DIGITS, RoundingMode.HALF_UP);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    private static Unit unit(UnitSystem units) {
        return units.unit(Dimension.LENGTH);
    }

    /**
     * Reads a place: three lengths with a semicolon between them, each with its unit or that of the last one, else that of the reader.
     * How well it is known stays as it was.
     *
     * @throws QuantityFormatException when it is anything else, with how to write it
     */
    public static Position place(String text, Position before, UnitSystem units, Locale locale) {
        String[] parts = text.split(";");
        if (parts.length != 3) {
            throw new QuantityFormatException(NLS.bind(Messages.Place_found, text), Messages.Place_mend);
        }
        Unit last = Measured.parseTyped(parts[2].strip(), Dimension.LENGTH, unit(units), locale).unit();
        List<Double> mm = new ArrayList<>();
        for (String part : parts) {
            mm.add(Measured.parseTyped(part.strip(), Dimension.LENGTH, last, locale).in(Unit.MILLIMETRE));
        }
        return new Position(mm.get(0), mm.get(1), mm.get(2), before.uncertainty(), before.source());
    }

    /**
     * Reads a length in mm, in the unit of the reader when none is written.
     *
     * @param most above this it is a slip of the hand, mm
     * @param wrong says what is wrong with a length below zero or above the most, with a place for what was typed
     * @param mend says how to write it
     */
    public static double length(String text, double most, String wrong, String mend, UnitSystem units, Locale locale) {
        double mm = Measured.parseTyped(text.strip(), Dimension.LENGTH, unit(units), locale).in(Unit.MILLIMETRE);
        if (mm < 0 || mm > most) {
            throw new QuantityFormatException(NLS.bind(wrong, text), mend);
        }
        return mm;
    }
}
