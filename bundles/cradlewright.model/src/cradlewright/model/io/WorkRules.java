package cradlewright.model.io;

import cradlewright.model.base.Named;
import cradlewright.model.job.Booking;
import cradlewright.model.job.HoldPoint;
import cradlewright.model.job.Job;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.Operation;
import cradlewright.model.job.Wait;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;

/**
 * Finds hold points, waits and bookings that belong to no car. Answers are given car by car, so none would ever speak of them, however
 * wrong they are: an unsigned hold point of a job without a car stops nobody.
 */
final class WorkRules {

    private static final String NEVER = ", so no answer ever speaks of it";

    private final ShopFile file;
    private final List<ReadProblem> problems = new ArrayList<>();

    private WorkRules(ShopFile file) {
        this.file = file;
    }

    /** Judges one file as it is now. */
    static List<ReadProblem> check(ShopFile file) {
        WorkRules rules = new WorkRules(file);
        file.root().filter(JobBook.class::isInstance).map(JobBook.class::cast).ifPresent(rules::judge);
        return List.copyOf(rules.problems);
    }

    private void judge(JobBook book) {
        for (Job job : book.getJobs()) {
            if (job.getCar() == null) {
                add(job, "car", "no car is named", "refer to the car that is worked on");
            }
        }
        for (HoldPoint point : book.getHoldPoints()) {
            judge(point, point.getOperation());
        }
        for (Wait wait : book.getWaits()) {
            judge(wait, wait.getOperation());
        }
        for (Booking booking : book.getBookings()) {
            judge(booking, booking.getOperation());
        }
    }

    private void judge(Named object, Operation operation) {
        if (operation == null) {
            add(object, "operation", "no operation is named", "refer to the operation that it belongs to");
        } else if (!operation.eIsProxy() && operation.eContainer() instanceof Job job && job.getCar() == null) {
            add(object, "operation", "the " + Words.name(operation) + " is of the " + Words.name(job) + ", which names no car",
                    "refer to the car in that job (id " + job.getId() + ")");
        }
    }

    private void add(EObject object, String feature, String what, String mend) {
        problems.add(file.problem(object, feature, what + NEVER, mend, Severity.WARNING));
    }
}
