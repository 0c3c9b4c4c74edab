package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * Equal shims in a stack.
 *
 * @param stockId the shim type in stock, if it is one
 * @param thickness of one shim, in m
 * @param count how many
 */
public record ShimFacts(Optional<String> stockId, Optional<Value> thickness, int count) {
}
