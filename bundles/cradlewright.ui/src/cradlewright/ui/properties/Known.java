package cradlewright.ui.properties;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.SourceDefaults;
import java.util.OptionalDouble;

/**
 * A value together with how well it is known: a quantity or a position. The give or take holds 19 times in 20: twice the standard
 * uncertainty.
 */
sealed interface Known permits Known.Amount, Known.Place {

    /** Width of the give or take in standard uncertainties. */
    double TWICE = 2;

    /** Wraps a value of a thing. */
    static Known of(Object raw) {
        return raw instanceof Position position ? new Place(position) : new Amount((Measured) raw);
    }

    Object raw();

    Dimension dimension();

    OptionalDouble uncertainty();

    Source source();

    /** Returns the same value, otherwise known. */
    Known with(OptionalDouble uncertainty, Source source);

    /** Returns the value as a person types it, without how it is known. */
    String show(Habits habits);

    /** Returns the give or take that stands in when none was given, in the unit that files hold. */
    OptionalDouble usual();

    /** Returns the give or take in the unit that files hold. */
    default OptionalDouble giveOrTake() {
        return uncertainty().isPresent() ? OptionalDouble.of(TWICE * uncertainty().getAsDouble()) : uncertainty();
    }

    /** A quantity in the unit that files hold. */
    record Amount(Measured raw) implements Known {

        @Override
        public Dimension dimension() {
            return raw.dimension();
        }

        @Override
        public OptionalDouble uncertainty() {
            return raw.uncertainty();
        }

        @Override
        public Source source() {
            return raw.source();
        }

        @Override
        public Known with(OptionalDouble uncertainty, Source source) {
            return new Amount(new Measured(raw.value(), raw.unit(), uncertainty, source));
        }

        @Override
        public String show(Habits habits) {
            return habits.show(raw);
        }

        @Override
        public OptionalDouble usual() {
            OptionalDouble share = raw.relativeDefault(SourceDefaults.COMMON_PRACTICE);
            return share.isPresent() ? OptionalDouble.of(TWICE * share.getAsDouble() * Math.abs(raw.value())) : share;
        }
    }

    /** A position. */
    record Place(Position raw) implements Known {

        @Override
        public Dimension dimension() {
            return Dimension.LENGTH;
        }

        @Override
        public OptionalDouble uncertainty() {
            return raw.uncertainty();
        }

        @Override
        public Source source() {
            return raw.source();
        }

        @Override
        public Known with(OptionalDouble uncertainty, Source source) {
            return new Place(new Position(raw.x(), raw.y(), raw.z(), uncertainty, source));
        }

        @Override
        public String show(Habits habits) {
            return habits.number(raw.x()) + " " + habits.number(raw.y()) + " " + habits.number(raw.z()) + " "
                    + habits.unit(Dimension.LENGTH).label();
        }

        @Override
        public OptionalDouble usual() {
            return OptionalDouble.empty();
        }
    }
}
