package cradlewright.analysis.facts;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Equal shims in a stack.
 *
 * @param stockId the shim type in stock, if it is one
 * @param thickness of one shim, in m
 * @param count how many; nothing when nobody counted
 */
public record ShimFacts(Optional<String> stockId, Optional<Value> thickness, OptionalInt count) {
}
