package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;

/**
 * Shims on top of each other, lowest first.
 *
 * @param shims the shims, lowest first
 */
public record ShimStackFacts(List<ShimFacts> shims) {

    /** Returns the height of the stack in m, or nothing when a thickness is missing. */
    public Optional<Double> height() {
        double sum = 0;
        for (ShimFacts shim : shims) {
            if (shim.thickness().isEmpty()) {
                return Optional.empty();
            }
            sum += shim.count() * shim.thickness().get().si();
        }
        return Optional.of(sum);
    }

    /** Returns the number of pieces. */
    public int pieces() {
        return shims.stream().mapToInt(ShimFacts::count).sum();
    }
}
