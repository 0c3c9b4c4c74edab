package cradlewright.analysis.checks.job;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.ScopedCheck;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.job.CarWork;
import cradlewright.analysis.job.CarWorkKey;
import java.time.LocalDate;
import java.util.List;

/** A check of the work on a car on the day of the answers. */
abstract class CarWorkCheck extends ScopedCheck {

    /** Creates a check that says this about itself. */
    CarWorkCheck(CheckInfo info) {
        super(info, Scope.CAR);
    }

    @Override
    public final List<Finding> examine(Subject subject, Reader reader) {
        return examine(reader.read(new CarWorkKey(subject.ownerId())), reader.read(new TodayKey()), subject, reader);
    }

    /** Answers the question for the work on a car. */
    abstract List<Finding> examine(CarWork work, LocalDate today, Subject subject, Reader reader);

    /** Starts a finding about an object. */
    final FindingBuilder finding(Subject subject, Fact object) {
        return finding(subject, object.id(), object.name());
    }
}
