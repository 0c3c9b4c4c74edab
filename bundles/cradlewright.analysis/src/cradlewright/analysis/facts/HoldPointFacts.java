package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;

/**
 * Where work stops until somebody signs.
 *
 * @param operationId the operation that must not begin before
 * @param text what has to be right
 * @param signOffs who signed, in the order in which they did
 */
public record HoldPointFacts(String id, String name, Optional<String> operationId, Optional<String> text, List<SignOffFacts> signOffs)
        implements Fact {
}
