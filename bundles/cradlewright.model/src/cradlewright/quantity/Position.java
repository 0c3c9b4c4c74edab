package cradlewright.quantity;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A point in millimetres: x rearward, y to the right, z up (ISO 4130), with one standard uncertainty that holds for each
 * axis. A position has no uncertainty by source: the distance from the origin says nothing about how well it was measured.
 *
 * <p>Text in files: {@code 1250 -450 300 mm}, {@code 1250 -450 300 mm u 5 measured}.
 *
 * @param x rearward, mm
 * @param y to the right, mm
 * @param z up, mm
 * @param uncertainty standard uncertainty (k = 1) of each coordinate, mm, not below zero, or empty
 * @param source where the position comes from
 */
public record Position(double x, double y, double z, OptionalDouble uncertainty, Source source) {

    /** Refuses coordinates that are not finite and uncertainties that are not finite or below zero. */
    public Position {
        Objects.requireNonNull(uncertainty, "uncertainty");
        Objects.requireNonNull(source, "source");
        x = Checked.finite(x, "x");
        y = Checked.finite(y, "y");
        z = Checked.finite(z, "z");
        uncertainty = Checked.uncertainty(uncertainty);
    }

    /** Returns a position without uncertainty and source. */
    public static Position of(double x, double y, double z) {
        return new Position(x, y, z, OptionalDouble.empty(), Source.UNSTATED);
    }

    /**
     * Reads the form of the files: three numbers, {@code mm}, optionally {@code u} with the uncertainty, optionally the
     * source.
     *
     * @throws QuantityFormatException when the text is anything else
     */
    public static Position parse(String text) {
        FileText words = new FileText(text, "1250 -450 300 mm");
        double x = words.number();
        double y = words.number();
        double z = words.number();
        Unit unit = words.unit(Dimension.LENGTH);
        if (unit != Unit.MILLIMETRE) {
            throw new QuantityFormatException("a position in " + unit.symbol() + " was found, files hold positions in mm",
                    "convert the three numbers and write mm");
        }
        OptionalDouble uncertainty = words.uncertainty();
        return new Position(x, y, z, uncertainty, words.source());
    }

    /** Returns the one text for files. */
    public String text() {
        return Numbers.text(x) + " " + Numbers.text(y) + " " + Numbers.text(z) + " " + Unit.MILLIMETRE.symbol()
                + FileText.tail(uncertainty, source);
    }

    /** Returns x, y, z in metres. */
    public double[] si() {
        return new double[] {Unit.MILLIMETRE.toSi(x), Unit.MILLIMETRE.toSi(y), Unit.MILLIMETRE.toSi(z)};
    }

    /** Returns the standard uncertainty of each coordinate in metres, empty when none was given. */
    public OptionalDouble uncertaintySi() {
        return uncertainty.isPresent() ? OptionalDouble.of(Unit.MILLIMETRE.differenceToSi(uncertainty.getAsDouble()))
                : uncertainty;
    }

    /** Returns {@link #text()}. */
    @Override
    public String toString() {
        return text();
    }
}
