package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.job.CarWork;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Are there two people all the time when a shell is lifted off, dropped, rolled through a door or turned over? Asked of work that is
 * booked and not done. How many are booked is counted at each moment, since two who come one after the other are alone.
 */
public final class TwoPeopleCheck extends CarWorkCheck {

    /** One lifts, rolls or turns, the other watches and stops it: common practice, no source. */
    private static final int LEAST = 2;

    /** Creates the check. */
    public TwoPeopleCheck() {
        super(new CheckInfo("job.two-people", "Are two people booked where nobody should be alone?", "common practice, no source",
                Cautions.WORK, List.of("what sort of work each operation is", "who is booked for it from when to when"), List.of()));
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (OperationFacts operation : work.operations()) {
            List<BookingFacts> bookings = work.bookings(operation);
            boolean alone = operation.kind().map(kind -> !kind.takesTwo()).orElse(false);
            if (!operation.done() && !bookings.isEmpty() && !alone) {
                judge(operation, bookings, finding(subject, operation)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> judge(OperationFacts operation, List<BookingFacts> bookings, FindingBuilder finding) {
        List<String> missing = new ArrayList<>();
        bookings.stream().filter(booking -> booking.personId().isEmpty())
                .forEach(booking -> missing.add("who does " + booking.name() + ": name a person"));
        bookings.stream().filter(booking -> booking.from().isEmpty() || booking.to().isEmpty())
                .forEach(booking -> missing.add("when " + booking.name() + " begins and ends: enter days and times"));
        if (!missing.isEmpty()) {
            return Optional.of(finding.cantSay("How many people are there at a time is not known.", missing));
        }
        boolean two = fewest(bookings) >= LEAST;
        if (operation.kind().isEmpty()) {
            return two ? Optional.empty() : Optional.of(finding.cantSay("One person is booked, and nobody said whether the work takes two.",
                    List.of("what sort of work it is: lift off, drop, roll, turn over, cut or other")));
        }
        return Optional.of(two ? finding.say(Verdict.HOLDS, "Two people or more are booked all the time.")
                : finding.remedy(Remedy.advice("Book a second person for the whole of it.")).say(Verdict.STOP,
                        "At times one person alone is booked for work that takes two."));
    }

    /** Returns the least number of different people at any moment for which somebody is booked. */
    private static long fewest(List<BookingFacts> bookings) {
        return bookings.stream().flatMap(booking -> Stream.of(booking.from(), booking.to())).map(Optional::get)
                .filter(moment -> bookings.stream().anyMatch(booking -> covers(booking, moment)))
                .mapToLong(moment -> bookings.stream().filter(booking -> covers(booking, moment)).map(BookingFacts::personId)
                        .distinct().count())
                .min().orElse(0);
    }

    /** Tells whether a booking goes on after that moment: its beginning belongs to it, its end does not. */
    private static boolean covers(BookingFacts booking, LocalDateTime moment) {
        return !booking.from().orElseThrow().isAfter(moment) && booking.to().orElseThrow().isAfter(moment);
    }
}
