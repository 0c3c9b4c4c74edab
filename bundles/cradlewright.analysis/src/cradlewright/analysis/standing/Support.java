package cradlewright.analysis.standing;

import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * One place where the carried piece is held, with everything that is known of it resolved.
 *
 * @param contactId the contact of the setup
 * @param name for example 2L
 * @param onCar the place in the axes of the marks
 * @param inCarrier the same place in the axes of the carrier
 * @param normal direction of the push on the piece, of length one, in the axes of the carrier
 * @param hold how it holds
 * @param mount the body mount that rests there
 * @param liftPoint the lift point that rests there
 * @param holder what is below or above
 * @param pad the soft pad in between
 * @param compliance along the push, in m/N
 * @param complianceAssumed whether the compliance is only assumed
 * @param gap by how much the support is low along its push before anything settles, in m; only differences between supports count
 * @param gapU standard uncertainty of the gap by itself, in m; zero when nobody stated any
 * @param gapFrom where the gap comes from
 * @param shims the shims in between
 */
public record Support(String contactId, String name, Vec3 onCar, Vec3 inCarrier, Vec3 normal, Hold hold, Optional<MountFacts> mount,
        Optional<LiftPointFacts> liftPoint, Holder holder, Optional<StockFacts.Pad> pad, double compliance, boolean complianceAssumed,
        double gap, double gapU, GapFrom gapFrom, Optional<ShimStackFacts> shims) {

    /** Rise of the push below which a support is a stop at the side and holds nothing up: it leans by more than 60 degrees. */
    private static final double STOP_AT_THE_SIDE = 0.5;

    /** Returns this support with a gap that is known, m. */
    Support withGap(Height known, GapFrom from) {
        return new Support(contactId, name, onCar, inCarrier, normal, hold, mount, liftPoint, holder, pad, compliance, complianceAssumed,
                known.si(), known.u(), from, shims);
    }

    /** Tells whether the gap was measured or follows from heights that are all known, of every support. */
    public boolean gapKnown() {
        return gapFrom != GapFrom.NOTHING;
    }

    /** Returns how hard it may be pulled, N; nothing when nobody said, or it is not on a fixture. */
    public Optional<Value> pull() {
        return fixture().flatMap(FixtureFacts::capacity);
    }

    /** Returns the fixture of a dolly that it is on. */
    public Optional<FixtureFacts> fixture() {
        return holder instanceof Holder.OnFixture on ? Optional.of(on.fixture()) : Optional.empty();
    }

    /** Returns the standard uncertainty of each coordinate of its place, m; none for a place that is written down without a name. */
    public double placeUncertainty() {
        return mount.flatMap(MountFacts::position).or(() -> liftPoint.flatMap(LiftPointFacts::position)).map(Spot::u).orElse(0.0);
    }

    /** Tells whether it pushes straight up; of a car that is turned by more than a quarter a part of the push may be minus zero. */
    public boolean upright() {
        return normal.x() == 0 && normal.y() == 0 && normal.z() > 0;
    }

    /** Tells whether it carries, even if its push leans; a stop at the side or a clamp above does not. */
    public boolean holdsUp() {
        return normal.z() > STOP_AT_THE_SIDE;
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
