package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.CarWorkKey;
import java.time.LocalDate;
import java.util.List;

/** A check of the work on a car on the day of the answers. */
abstract class CarWorkCheck implements Check {

    private final CheckInfo info;

    /** Creates a check that says this about itself. */
    CarWorkCheck(CheckInfo info) {
        this.info = info;
    }

    @Override
    public final CheckInfo info() {
        return info;
    }

    @Override
    public final Scope scope() {
        return Scope.CAR;
    }

    @Override
    public final List<Finding> examine(Subject subject, Reader reader) {
        return examine(reader.read(new CarWorkKey(subject.ownerId())), reader.read(new TodayKey()), subject, reader);
    }

    /** Answers the question for the work on a car. */
    abstract List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader);

    /** Starts a finding about an object. */
    final FindingBuilder finding(Subject subject, Fact object) {
        return new FindingBuilder(info, subject, object.id(), object.name());
    }
}
