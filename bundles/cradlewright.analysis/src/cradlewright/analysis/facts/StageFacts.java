package cradlewright.analysis.facts;

import java.util.List;

/**
 * Which parts are on.
 *
 * @param partIds parts that are on
 * @param loadIds temporary loads that are there
 */
public record StageFacts(String id, String name, List<String> partIds, List<String> loadIds) implements Fact {
}
