package cradlewright.ui.properties;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.osgi.util.NLS;

/** Reads values with give or take and source as they are typed. */
final class QuantityTyping {

    private static final Pattern UNIT_AT_END = Pattern.compile("(.*[0-9.,])\\s*([^0-9.,\\s]+)");
    private static final int AXES = 3;

    private final Habits habits;
    private final Dimension dimension;
    private final boolean place;

    private QuantityTyping(Habits habits, Dimension dimension, boolean place) {
        this.habits = habits;
        this.dimension = dimension;
        this.place = place;
    }

    static QuantityTyping amount(Habits habits, Dimension dimension) {
        return new QuantityTyping(habits, dimension, false);
    }

    static QuantityTyping place(Habits habits) {
        return new QuantityTyping(habits, Dimension.LENGTH, true);
    }

    /**
     * Reads a value; how well it is known is empty where nothing is said about it.
     *
     * @throws QuantityFormatException when the words cannot be understood in one way
     */
    Known read(Phrase phrase) {
        Known bare = place ? new Known.Place(position(phrase.value())) : new Known.Amount(habits.read(phrase.value(), dimension));
        OptionalDouble uncertainty = phrase.giveOrTake().map(size -> OptionalDouble.of(giveOrTake(size) / Known.TWICE))
                .orElse(bare.uncertainty());
        return bare.with(uncertainty, phrase.source().orElse(bare.source()));
    }

    /** Reads a give or take and returns it in the unit that files hold. */
    double giveOrTake(String text) {
        String bare = text.strip().replaceFirst("^(\\+/?-|±)\\s*", "");
        double size = habits.readDifference(bare, dimension);
        if (size < 0) {
            throw new QuantityFormatException(NLS.bind(Messages.Give_what, text.strip()), Messages.Give_writeAbove);
        }
        return size;
    }

    private Position position(String text) {
        Matcher parts = UNIT_AT_END.matcher(text.strip());
        String unit = parts.matches() ? parts.group(2) : habits.unit(Dimension.LENGTH).symbol();
        String numbers = parts.matches() ? parts.group(1) : text.strip();
        List<String> three = List.of(numbers.strip().split("[,;]?\\s+|;"));
        if (three.size() != AXES) {
            throw new QuantityFormatException(NLS.bind(Messages.Place_what, "\"" + text.strip() + "\""),
                    NLS.bind(Messages.Place_how, new Known.Place(Position.of(1250, -450, 300)).show(habits)));
        }
        double[] found = three.stream().mapToDouble(each -> habits.read(each + " " + unit, Dimension.LENGTH).in(Unit.MILLIMETRE)).toArray();
        return Position.of(found[0], found[1], found[2]);
    }

    /** Returns the new value, but what reads the same as before stays exactly what it was, however it is rounded for reading. */
    Known keepingWhatReadsTheSame(Known old, Known fresh) {
        if (fresh instanceof Known.Place now && old instanceof Known.Place was) {
            Position position = new Position(keep(was.raw().x(), now.raw().x()), keep(was.raw().y(), now.raw().y()),
                    keep(was.raw().z(), now.raw().z()), now.uncertainty(), now.source());
            return new Known.Place(position);
        }
        if (fresh instanceof Known.Amount now && old instanceof Known.Amount was && now.show(habits).equals(was.show(habits))) {
            Measured kept = was.raw();
            return new Known.Amount(new Measured(kept.value(), kept.unit(), now.uncertainty(), now.source()));
        }
        return fresh;
    }

    private double keep(double old, double fresh) {
        return habits.number(old).equals(habits.number(fresh)) ? old : fresh;
    }
}
