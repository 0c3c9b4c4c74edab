package cradlewright.analysis.checks.gear;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A car at a visit, seen as what has gear in use for some days. It keeps no more of the car than that, so that a change of a part of one
 * car leaves the answers of the others as they are.
 *
 * @param carId the car
 * @param carName what people call it
 * @param visit the visit
 * @param pieces what it carries
 * @param movesOn the day on which the next visit of the car begins that carries all of them
 * @param today the day on which it is asked
 */
record GearUse(String carId, String carName, VisitFacts visit, List<String> pieces, Optional<LocalDate> movesOn, LocalDate today) {

    /** Returns a visit of a car as it is seen on a day. */
    static GearUse of(CarFacts car, VisitFacts visit, LocalDate today) {
        List<String> pieces = carried(car, visit);
        Optional<LocalDate> begun = first(visit, today);
        Optional<LocalDate> next = car.visits().stream().filter(other -> carried(car, other).containsAll(pieces))
                .flatMap(other -> other.from().stream()).filter(day -> begun.filter(day::isAfter).isPresent())
                .min(Comparator.naturalOrder());
        return new GearUse(car.id(), car.name(), visit, pieces, next, today);
    }

    private static List<String> carried(CarFacts car, VisitFacts visit) {
        return visit.setupId().flatMap(car::setup).map(SetupFacts::pieceIds).orElse(List.of());
    }

    /** Returns the first day on which it is sure to be in use. */
    private static Optional<LocalDate> first(VisitFacts visit, LocalDate today) {
        return visit.from().or(() -> visit.on(today) ? Optional.of(today) : Optional.empty());
    }

    /** How two uses of one piece of gear lie to each other. */
    enum Meeting {
        /** They share no day. */
        NEVER,
        /** One ends on the day on which the other begins. */
        HANDED_OVER,
        /** They may share days: of the earlier one nobody wrote down when it ends, or of one when it begins. */
        PERHAPS,
        /** They share days. */
        MEET
    }

    /** Returns how this use lies to another one of the same piece of gear. */
    Meeting meeting(GearUse other) {
        if (sameThing(other)) {
            return Meeting.NEVER;
        }
        Optional<LocalDate> from = first().flatMap(own -> other.first().map(theirs -> later(own, theirs)));
        Optional<LocalDate> to = last().flatMap(own -> other.last().map(theirs -> earlier(own, theirs)));
        if (from.isPresent() && to.isPresent() && !from.get().isAfter(to.get())) {
            boolean oneDay = from.get().equals(to.get());
            boolean bothNow = visit.current().orElse(false) && other.visit.current().orElse(false);
            return oneDay && !bothNow && (handsOver(other) || other.handsOver(this)) ? Meeting.HANDED_OVER : Meeting.MEET;
        }
        boolean apart = endsBefore(other) || other.endsBefore(this);
        return apart ? Meeting.NEVER : Meeting.PERHAPS;
    }

    /** Tells whether both are the same pieces of one car, which move on from one visit to the next. */
    private boolean sameThing(GearUse other) {
        return carId.equals(other.carId) && (visit.id().equals(other.visit.id()) || pieces.isEmpty() || other.pieces.isEmpty()
                || !Collections.disjoint(pieces, other.pieces));
    }

    private boolean handsOver(GearUse other) {
        return visit.to().isPresent() && visit.to().equals(other.visit.from());
    }

    private Optional<LocalDate> first() {
        return first(visit, today);
    }

    /** Returns the last day on which it is sure to be in use: where nobody wrote it down, today or a first day still to come. */
    private Optional<LocalDate> last() {
        return visit.to().map(day -> visit.on(today) ? later(day, today) : day)
                .or(() -> first().map(day -> visit.on(today) ? later(day, today) : day));
    }

    /** Tells whether it is sure to be over when the other one begins, or on that day. */
    private boolean endsBefore(GearUse other) {
        Optional<LocalDate> end = visit.to().isPresent() ? last() : movesOn;
        return end.isPresent() && other.first().isPresent() && !end.get().isAfter(other.first().get());
    }

    /** Returns what nobody wrote down and would tell whether it meets another use. */
    String missing(GearUse other) {
        if (first().isEmpty()) {
            return "first day of " + words();
        }
        boolean earlier = other.first().isEmpty() || !first().get().isAfter(other.first().get());
        return earlier && other.first().isPresent() ? "last day of " + words() : other.missing(this);
    }

    /** Returns car, visit and days. */
    String words() {
        return carName + ", " + visit.name() + " (" + visit.days() + ")";
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
