package cradlewright.analysis.facts;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Somebody's word that it was right as it stood.
 *
 * @param by who signed
 * @param at when
 * @param digest of what was signed for
 * @param visitId the visit that was signed for
 */
public record SignOffFacts(String id, Optional<String> by, Optional<LocalDateTime> at, Optional<String> digest, Optional<String> visitId) {
}
