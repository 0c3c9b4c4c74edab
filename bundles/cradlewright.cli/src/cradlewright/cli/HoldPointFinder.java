package cradlewright.cli;

import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.CarWorkKey;
import cradlewright.analysis.job.VisitToSignKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds the one hold point, and the one visit, that somebody means. */
final class HoldPointFinder {

    /** A hold point with the operation behind it and its car. */
    record Found(CarFacts car, OperationFacts operation, HoldPointFacts point) {

        String words() {
            return point.name() + " (" + car.name() + ", before " + operation.name() + ", id " + point.id() + ")";
        }
    }

    private final Engine engine;

    HoldPointFinder(Engine engine) {
        this.engine = engine;
    }

    /** Finds a hold point by its id, its whole name or a piece of it, in that order; throws BadInputException unless exactly one fits. */
    Found point(String wanted) {
        List<Found> all = all();
        if (all.isEmpty()) {
            throw new BadInputException("this shop has no hold points yet: enter them in the file of jobs, each before an operation");
        }
        List<Found> found = fitting(all, wanted);
        if (found.size() != 1) {
            String there = "there are " + (found.isEmpty() ? all : found).stream().map(Found::words).collect(Collectors.joining("; "));
            throw new BadInputException(found.isEmpty()
                    ? "no hold point is called " + wanted + Near.hint(wanted, all.stream().map(f -> f.point.name()).toList(), there)
                    : "several hold points fit " + wanted + ": " + there);
        }
        return found.get(0);
    }

    /** Returns the visits that a hold point is about; several where nothing tells which. */
    List<VisitFacts> about(Found found) {
        return engine.read(new VisitToSignKey(found.car().id(), found.point().id()), Progress.NONE);
    }

    /**
     * Finds the visit that is signed for: the one that the hold point is about or, of all that are not over, the one that is wanted.
     *
     * @param wanted id or piece of the name; null when nobody said
     */
    VisitFacts visit(Found found, String wanted) {
        List<VisitFacts> all = wanted == null ? about(found)
                : found.car().visits().stream().filter(visit -> !found.car().over(visit, engine.snapshot().today())).toList();
        if (all.isEmpty()) {
            throw new BadInputException("what " + found.words() + " is signed for cannot be told: no visit is planned in the setup "
                    + "in which " + found.operation().name() + " is done; enter one for " + found.car().name()
                    + ", or say with --visit which of its visits was looked at");
        }
        List<VisitFacts> visits = wanted == null ? all
                : all.stream().filter(visit -> visit.id().equals(wanted) || contains(visit, wanted)).toList();
        if (visits.size() != 1) {
            throw new BadInputException((visits.isEmpty() ? "no visit that may be signed for is called " + wanted
                    : "several visits may be signed for, choose one with --visit") + ": there are "
                    + (visits.isEmpty() ? all : visits).stream().map(visit -> visit.name() + " (id " + visit.id() + ")")
                            .collect(Collectors.joining("; ")));
        }
        return visits.get(0);
    }

    private static List<Found> fitting(List<Found> all, String wanted) {
        List<Found> found = all.stream().filter(f -> f.point.id().equals(wanted)).toList();
        if (found.isEmpty()) {
            found = all.stream().filter(f -> f.point.name().equalsIgnoreCase(wanted.strip())).toList();
        }
        return found.isEmpty() ? all.stream().filter(f -> contains(f.point, wanted)).toList() : found;
    }

    private List<Found> all() {
        List<Found> all = new ArrayList<>();
        for (CarFacts car : engine.snapshot().all(CarFacts.class)) {
            CarWork work = engine.read(new CarWorkKey(car.id()), Progress.NONE);
            work.holdPoints().forEach(point -> all.add(new Found(car, work.held(point), point)));
        }
        return all;
    }

    private static boolean contains(Fact fact, String text) {
        return fact.name().toLowerCase(Locale.ROOT).contains(text.strip().toLowerCase(Locale.ROOT));
    }
}
