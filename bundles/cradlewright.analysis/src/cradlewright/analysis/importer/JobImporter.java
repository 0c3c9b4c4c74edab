package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.JobFacts;
import cradlewright.analysis.facts.OperationFacts;
import cradlewright.model.job.Job;
import cradlewright.model.job.Operation;
import java.util.Optional;

/** Reads jobs. */
final class JobImporter {

    private JobImporter() {
    }

    static JobFacts job(Job job) {
        return new JobFacts(id(job), name(job), Identity.reference(job.getCar()), Optional.ofNullable(job.getDue()),
                each(job.getOperations(), JobImporter::operation));
    }

    private static OperationFacts operation(Operation operation) {
        return new OperationFacts(id(operation), name(operation), Identity.references(operation.getTakesOff()),
                Identity.references(operation.getPutsOn()), Identity.reference(operation.getSetup()), operation.isDone());
    }
}
