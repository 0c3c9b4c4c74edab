package cradlewright.analysis.standing;

import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * One place where the carried piece is held, with everything that is known of it resolved.
 *
 * @param contactId the contact of the setup
 * @param name for example 2L
 * @param onCar the place in the axes of the marks
 * @param inCarrier the same place in the axes of the carrier
 * @param normal direction of the push on the piece, of length one
 * @param hold how it holds
 * @param mount the body mount that rests there
 * @param liftPoint the lift point that rests there
 * @param holder what is below or above
 * @param pad the soft pad in between
 * @param compliance in m/N
 * @param complianceAssumed whether the compliance is only assumed
 * @param gap by how much the support is low before anything settles, in m; only differences between supports count
 * @param gapKnown whether the gap was measured or follows from heights that are all known, of every support
 * @param shims the shims in between
 */
public record Support(String contactId, String name, Vec3 onCar, Vec3 inCarrier, Vec3 normal, Hold hold, Optional<MountFacts> mount,
        Optional<LiftPointFacts> liftPoint, Holder holder, Optional<StockFacts.Pad> pad, double compliance, boolean complianceAssumed,
        double gap, boolean gapKnown, Optional<ShimStackFacts> shims) {

    /** Returns this support with a gap that is known, m. */
    Support withGap(double known) {
        return new Support(contactId, name, onCar, inCarrier, normal, hold, mount, liftPoint, holder, pad, compliance, complianceAssumed,
                known, true, shims);
    }

    /** Returns the condition of the place on the car; not looked at when nothing is named there. */
    public Condition condition() {
        return mount.map(MountFacts::condition).or(() -> liftPoint.map(LiftPointFacts::condition)).orElse(Condition.NOT_LOOKED_AT);
    }

    /** Returns the id of what people would point at: mount or lift point, else the contact. */
    public String objectId() {
        return mount.map(MountFacts::id).or(() -> liftPoint.map(LiftPointFacts::id)).orElse(contactId);
    }
}
