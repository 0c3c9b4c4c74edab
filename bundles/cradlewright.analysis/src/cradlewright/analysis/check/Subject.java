package cradlewright.analysis.check;

import java.util.Optional;

/**
 * What a finding is about.
 *
 * @param scope what sort of thing
 * @param ownerId car, dolly or gear by its id
 * @param visitId the visit, for the scope VISIT
 * @param label what people read
 */
public record Subject(Scope scope, String ownerId, Optional<String> visitId, String label) {
}
