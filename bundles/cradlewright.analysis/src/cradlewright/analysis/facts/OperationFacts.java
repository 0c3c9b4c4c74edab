package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;

/**
 * One step of a job.
 *
 * @param takesOffPartIds parts that come off
 * @param putsOnPartIds parts that go on
 * @param setupId the setup in which it is done
 * @param done whether it is done
 */
public record OperationFacts(String id, String name, List<String> takesOffPartIds, List<String> putsOnPartIds,
        Optional<String> setupId, boolean done) implements Fact {
}
