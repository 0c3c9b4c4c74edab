package cradlewright.analysis.facts;

import java.util.List;

/**
 * Somebody who works in the shop.
 *
 * @param skills what they can do, in their own words
 */
public record PersonFacts(String id, String name, List<String> skills) implements Fact {
}
