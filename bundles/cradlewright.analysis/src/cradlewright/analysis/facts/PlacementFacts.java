package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * Where a visit stands.
 *
 * @param visitId which visit
 * @param placeId at which place
 */
public record PlacementFacts(String id, String name, Optional<String> visitId, Optional<String> placeId) implements Fact {
}
