package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.job.CarWork;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Will the gear that is booked still be in date when the work ends? Bookings that are over are history. */
public final class GearBookedOverdueCheck extends CarWorkCheck {

    /** Work that ends so few days before the examination is due may run over it: common practice, no source. */
    private static final int SPARE_DAYS = 7;

    /** Creates the check. */
    public GearBookedOverdueCheck() {
        super(new CheckInfo("job.gear-booked-overdue", "Is the gear that is booked in date until the work ends?",
                "thorough examination as the local law asks, in most places every six or twelve months", Cautions.LIFTING,
                List.of("when each booking ends", "due date of the examination of the gear it uses"), List.of()));
    }

    private record Tagged(String name, Examination examination) {
    }

    @Override
    List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (BookingFacts booking : work.bookings()) {
            boolean over = booking.to().map(LocalDateTime::toLocalDate).filter(day -> day.isBefore(today)).isPresent();
            booking.gearId().filter(gear -> !over).ifPresent(gear -> findings.add(judge(booking, find(gear, reader), subject)));
        }
        return findings;
    }

    private static Optional<Tagged> find(String id, Reader reader) {
        return reader.read(new FactKey<>(GearFacts.class, id)).map(gear -> new Tagged(gear.name(), gear.examination()))
                .or(() -> reader.read(new FactKey<>(DollyFacts.class, id)).map(dolly -> new Tagged(dolly.name(), dolly.examination())));
    }

    private Finding judge(BookingFacts booking, Optional<Tagged> gear, Subject subject) {
        FindingBuilder finding = finding(subject, booking);
        Optional<LocalDate> due = gear.flatMap(found -> found.examination().due());
        List<String> missing = new ArrayList<>();
        if (gear.isEmpty()) {
            missing.add("the gear that is booked: name something that the shop has");
        } else if (due.isEmpty()) {
            missing.add("due date of the examination of " + gear.get().name() + ": read it off the tag or the last report");
        }
        if (booking.to().isEmpty()) {
            missing.add("when the booking ends: enter day and time");
        }
        if (!missing.isEmpty()) {
            return finding.cantSay("Whether what is booked will be in date is not known.", missing);
        }
        return judge(gear.get().name(), due.get(), booking.to().get().toLocalDate(), finding);
    }

    private static Finding judge(String gear, LocalDate due, LocalDate end, FindingBuilder finding) {
        if (due.isBefore(end)) {
            return finding.remedy(Remedy.advice("Have " + gear + " examined before, or book other gear."))
                    .say(Verdict.STOP, "The examination of " + gear + " is due on " + due + ", before the work ends on " + end + ".");
        }
        if (due.isBefore(end.plusDays(SPARE_DAYS))) {
            return finding.remedy(Remedy.advice("Have " + gear + " examined before."))
                    .say(Verdict.TIGHT, "The examination of " + gear + " is due on " + due
                            + ": when the work runs over, it is out of date.");
        }
        return finding.say(Verdict.HOLDS, "In date until " + due + ", after the work ends.");
    }
}
