package cradlewright.analysis.checks;

import cradlewright.analysis.load.TipAnswer;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A line over which something would tip, seen from above.
 *
 * @param question what would tip: the load off its supports, or dolly and load on the floor
 * @param from its beginning, in the axes of the carrier, m; its height is that of what tips there
 * @param to its end
 */
public record TippingLine(TipAnswer.Question question, Vec3 from, Vec3 to) {
}
