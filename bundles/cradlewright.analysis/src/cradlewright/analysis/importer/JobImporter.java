package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.BookingFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.PersonFacts;
import cradlewright.analysis.facts.SignOffFacts;
import cradlewright.analysis.facts.WaitFacts;
import cradlewright.model.job.Booking;
import cradlewright.model.job.HoldPoint;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.Operation;
import cradlewright.model.job.OperationKind;
import cradlewright.model.job.Person;
import cradlewright.model.job.SignOff;
import cradlewright.model.job.Wait;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads jobs, people, bookings, hold points with their sign-offs, and waits. */
final class JobImporter {

    private JobImporter() {
    }

    static List<Fact> book(JobBook book) {
        return Stream.<List<? extends Fact>>of(each(book.getJobs(), JobImporter::job), each(book.getPeople(), JobImporter::person),
                each(book.getBookings(), JobImporter::booking), each(book.getHoldPoints(), JobImporter::holdPoint),
                each(book.getWaits(), JobImporter::waiting)).<Fact>flatMap(List::stream).toList();
    }

    private static JobFacts job(Job job) {
        return new JobFacts(id(job), name(job), Identity.reference(job.getCar()), Optional.ofNullable(job.getDue()),
                each(job.getOperations(), JobImporter::operation));
    }

    private static OperationFacts operation(Operation operation) {
        return new OperationFacts(id(operation), name(operation), kind(operation.getKind()), Identity.references(operation.getTakesOff()),
                Identity.references(operation.getPutsOn()), Identity.reference(operation.getSetup()),
                Optional.ofNullable(operation.getStarted()), operation.isDone(), Identity.references(operation.getAfter()));
    }

    private static Optional<OperationFacts.Kind> kind(OperationKind kind) {
        return Optional.ofNullable(kind).map(given -> switch (given) {
            case LIFT_OFF -> OperationFacts.Kind.LIFT_OFF;
            case DROP -> OperationFacts.Kind.DROP;
            case ROLL -> OperationFacts.Kind.ROLL;
            case TURN_OVER -> OperationFacts.Kind.TURN_OVER;
            case CUT -> OperationFacts.Kind.CUT;
            case OTHER -> OperationFacts.Kind.OTHER;
        });
    }

    private static PersonFacts person(Person person) {
        return new PersonFacts(id(person), name(person), List.copyOf(person.getSkills()));
    }

    /** Reads a booking; gear that the shop does not have keeps its id, so that a check can say so. */
    private static BookingFacts booking(Booking booking) {
        return new BookingFacts(id(booking), name(booking), Identity.reference(booking.getOperation()),
                Identity.reference(booking.getPerson()), Identity.reference(booking.getPlace()),
                Identity.wantedReference(booking.getGear()), Optional.ofNullable(booking.getFrom()), Optional.ofNullable(booking.getTo()));
    }

    private static HoldPointFacts holdPoint(HoldPoint point) {
        return new HoldPointFacts(id(point), name(point), Identity.reference(point.getOperation()), Values.text(point.getText()),
                each(point.getSignOffs(), JobImporter::signOff));
    }

    private static SignOffFacts signOff(SignOff signOff) {
        return new SignOffFacts(id(signOff), Values.text(signOff.getBy()), Optional.ofNullable(signOff.getAt()),
                Values.text(signOff.getDigest()), Identity.reference(signOff.getVisit()));
    }

    private static WaitFacts waiting(Wait wait) {
        return new WaitFacts(id(wait), name(wait), Identity.reference(wait.getOperation()), Values.text(wait.getReason()),
                Optional.ofNullable(wait.getSince()), Optional.ofNullable(wait.getUntil()), Optional.ofNullable(wait.getEnded()));
    }
}
