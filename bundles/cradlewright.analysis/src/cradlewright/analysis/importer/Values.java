package cradlewright.analysis.importer;

import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.SourceDefaults;
import cradlewright.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The one place where stored values become numbers in SI units. What nobody said stays empty. A standard uncertainty that
 * nobody gave is the share of its source ({@link SourceDefaults}), else zero: a tape's error is for the shop to state. Ratings have a
 * rule of their own.
 */
final class Values {

    /** Standard uncertainty of each coordinate, m, of a place that was given without one: common practice, no source. */
    static final double POSITION_UNCERTAINTY = 0.005;
    /** The same of a place taken over from another car: common practice, no source. */
    static final double POSITION_OF_ANOTHER_CAR = 0.03;
    /** The same of a place that was only guessed: common practice, no source. */
    static final double POSITION_GUESSED = 0.1;

    /** Sources by which nobody answers for a rating. */
    private static final Set<Source> BORROWED = Set.of(Source.LIKE_ANOTHER_CAR, Source.GUESSED);
    private static final SourceDefaults DEFAULTS = SourceDefaults.COMMON_PRACTICE;

    private Values() {
    }

    /** Returns the value in the coherent SI unit of its dimension. */
    static Optional<Value> si(Measured measured) {
        return Optional.ofNullable(measured).map(m -> new Value(m.si(), m.uncertaintySi(DEFAULTS).orElse(0), m.source()));
    }

    /**
     * Returns what a maker, a plate, a standard or a test rates something for. A rating is a least value that somebody answers for, so
     * nothing is taken off it unasked; only one that was taken over from something like it, or guessed, has the give or take of its
     * source, and one with an uncertainty of its own keeps that.
     */
    static Optional<Value> rating(Measured measured) {
        return si(measured).map(value -> measured.uncertainty().isPresent() || BORROWED.contains(value.source()) ? value
                : new Value(value.si(), 0, value.source()));
    }

    /** Returns a temperature in degrees Celsius, in which the records keep it; a difference of 1 degC is one of 1 K. */
    static Optional<Value> celsius(Measured measured) {
        return Optional.ofNullable(measured)
                .map(m -> new Value(m.in(Unit.DEGREE_CELSIUS), m.uncertaintySi(DEFAULTS).orElse(0), m.source()));
    }

    /** Returns a plain number without its uncertainty. */
    static Optional<Double> number(Measured measured) {
        return Optional.ofNullable(measured).map(Measured::si);
    }

    /**
     * Returns the give per force, 1/k in m/N, with u(1/k) = u(k)/k2 (JCGM 100, 5.1.2; from memory). A stiffness of zero or
     * below is none and stays unknown; the reader of the files complains about it.
     */
    static Optional<Value> compliance(Measured stiffness) {
        return si(stiffness).filter(k -> k.si() > 0).map(k -> new Value(1 / k.si(), k.u() / (k.si() * k.si()), k.source()));
    }

    /** Returns a place with its uncertainty. */
    static Optional<Spot> spot(Position position) {
        return Optional.ofNullable(position).map(p -> new Spot(vector(p), p.uncertaintySi().orElse(bySource(p.source())),
                p.uncertaintySi().isPresent() || BORROWED.contains(p.source())));
    }

    /** Returns what a place is off by whose giver named only where it comes from; a share of its distance from zero would mean nothing. */
    private static double bySource(Source source) {
        return switch (source) {
            case GUESSED -> POSITION_GUESSED;
            case LIKE_ANOTHER_CAR -> POSITION_OF_ANOTHER_CAR;
            case WEIGHED, MAKERS_SHEET, MEASURED, DRAWING, DERIVED, PLATE, UNSTATED -> POSITION_UNCERTAINTY;
        };
    }

    /** Returns a place where uncertainty is of no use. */
    static Optional<Vec3> point(Position position) {
        return Optional.ofNullable(position).map(Values::vector);
    }

    /** Returns the corners of an outline. */
    static List<Vec3> points(List<Position> positions) {
        return positions.stream().map(Values::vector).toList();
    }

    /** Returns a direction, scaled to length one. */
    static Optional<Vec3> direction(Direction direction) {
        return Optional.ofNullable(direction).map(Direction::unit).map(Values::vector);
    }

    /** Returns a count, empty when nobody counted. */
    static OptionalInt count(Integer count) {
        return count == null ? OptionalInt.empty() : OptionalInt.of(count);
    }

    /** Returns a text without blanks around it, empty when nothing is left. */
    static Optional<String> text(String text) {
        return Optional.ofNullable(text).map(String::strip).filter(stripped -> !stripped.isEmpty());
    }

    /** Returns the source of a value worked out from two: theirs when they agree, a guess when one of them is one. */
    static Source common(Value a, Value b) {
        if (a.source() == b.source()) {
            return a.source();
        }
        return a.guessed() || b.guessed() ? Source.GUESSED : Source.DERIVED;
    }

    private static Vec3 vector(Position position) {
        return vector(position.si());
    }

    private static Vec3 vector(double[] xyz) {
        return new Vec3(xyz[0], xyz[1], xyz[2]);
    }
}
