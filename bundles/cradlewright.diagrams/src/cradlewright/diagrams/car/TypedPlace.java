package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.osgi.util.NLS;

/** Numbers as people type them into the diagram: a place as three lengths, a height as one. */
final class TypedPlace {

    /** A stack of shims higher than this is a slip of the hand, mm. */
    private static final double MOST = 500;

    private TypedPlace() {
    }

    /** Returns a place as it is shown for typing: "620; -440; 424.5 mm". */
    static String text(Position at) {
        return String.format(Locale.ROOT, "%s; %s; %s mm", number(at.x()), number(at.y()), number(at.z()));
    }

    private static String number(double mm) {
        return mm == Math.rint(mm) ? String.format(Locale.ROOT, "%.0f", mm) : String.format(Locale.ROOT, "%.1f", mm);
    }

    /**
     * Reads a place: three lengths with a semicolon between them, each with its unit or that of the last one, else mm. How well it is
     * known stays as it was.
     *
     * @throws QuantityFormatException when it is anything else, with how to write it
     */
    static Position place(String text, Position before, Locale locale) {
        String[] parts = text.split(";");
        if (parts.length != 3) {
            throw new QuantityFormatException(NLS.bind(Messages.Place_found, text), Messages.Place_mend);
        }
        Unit last = Measured.parseTyped(parts[2].strip(), Dimension.LENGTH, Unit.MILLIMETRE, locale).unit();
        List<Double> mm = new ArrayList<>();
        for (String part : parts) {
            mm.add(Measured.parseTyped(part.strip(), Dimension.LENGTH, last, locale).in(Unit.MILLIMETRE));
        }
        return new Position(mm.get(0), mm.get(1), mm.get(2), before.uncertainty(), before.source());
    }

    /** Reads a height of shims in mm, not below zero. */
    static double height(String text, Locale locale) {
        double mm = Measured.parseTyped(text.strip(), Dimension.LENGTH, Unit.MILLIMETRE, locale).in(Unit.MILLIMETRE);
        if (mm < 0 || mm > MOST) {
            throw new QuantityFormatException(NLS.bind(Messages.Shims_found, text), Messages.Shims_mend);
        }
        return mm;
    }
}
