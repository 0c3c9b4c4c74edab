package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;

/**
 * Shims on top of each other, lowest first.
 *
 * @param shims the shims, lowest first
 */
public record ShimStackFacts(List<ShimFacts> shims) {

    /** Returns the height of the stack in m, or nothing when a thickness or a count is missing. */
    public Optional<Double> height() {
        double sum = 0;
        for (ShimFacts shim : shims) {
            if (shim.thickness().isEmpty() || shim.count().isEmpty()) {
                return Optional.empty();
            }
            sum += shim.count().getAsInt() * shim.thickness().get().si();
        }
        return Optional.of(sum);
    }

    /**
     * Returns the squared standard uncertainty of the height in m2; shims that nobody measured or counted add none. The pieces differ
     * one by one, so n of them are off by the root of n times what one is (JCGM 100, 5.1.2; from memory).
     */
    public double heightVariance() {
        return shims.stream().mapToDouble(shim -> shim.count().orElse(0) * shim.thickness().map(t -> t.u() * t.u()).orElse(0.0)).sum();
    }

    /** Returns the number of pieces, taking one where nobody counted: the least it can be. */
    public int pieces() {
        return shims.stream().mapToInt(shim -> shim.count().orElse(1)).sum();
    }
}
