package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * One place where a carried piece touches what carries it.
 *
 * @param mountId the body mount that rests there, if it is one
 * @param liftPointId the lift point that rests there, if it is one
 * @param point the place in car axes if it is neither
 * @param carrierId id of the fixture, stand, trestle, arm, strap or chassis mount that carries here; also kept when the shop
 *     has nothing of that id, so that a check can say so
 * @param holeId where on the hoist the strap hangs
 * @param normal direction of the push on the piece, of length one; upward unless stated
 * @param hold how it holds; the fixture's own when empty
 * @param padId pad type in stock
 * @param shims the shims in between
 * @param gap measured open gap in m
 * @param compliance in m/N
 * @param pinStep which pin step a stand is set to, from the lowest = 0
 * @param height of the top of the stand or arm above the floor, below pad and shims, in m
 */
public record ContactFacts(String id, String name, Optional<String> mountId, Optional<String> liftPointId, Optional<Vec3> point,
        Optional<String> carrierId, Optional<String> holeId, Vec3 normal, Optional<Hold> hold, Optional<String> padId,
                Optional<ShimStackFacts> shims,
        Optional<Value> gap, Optional<Value> compliance, Optional<Integer> pinStep, Optional<Value> height)
        implements Fact {

    /** Returns this contact on something else. */
    public ContactFacts withCarrier(String other) {
        return new ContactFacts(id, name, mountId, liftPointId, point, Optional.of(other), holeId, normal, hold,
                padId, shims, gap, compliance, pinStep, height);
    }

    /** Returns this contact held in another way. */
    public ContactFacts withHold(Hold other) {
        return new ContactFacts(id, name, mountId, liftPointId, point, carrierId, holeId, normal, Optional.of(other),
                padId, shims, gap, compliance, pinStep, height);
    }

    /** Returns this contact on another pad in stock. */
    public ContactFacts withPad(String stockId) {
        return new ContactFacts(id, name, mountId, liftPointId, point, carrierId, holeId, normal, hold,
                Optional.of(stockId), shims, gap, compliance, pinStep, height);
    }

    /** Returns this contact on another stack. */
    public ContactFacts withShims(ShimStackFacts stack) {
        return new ContactFacts(id, name, mountId, liftPointId, point, carrierId, holeId, normal, hold,
                padId, Optional.of(stack), gap, compliance, pinStep, height);
    }

    /** Returns this contact with another open gap, m. */
    public ContactFacts withGap(Value open) {
        return new ContactFacts(id, name, mountId, liftPointId, point, carrierId, holeId, normal, hold,
                padId, shims, Optional.of(open), compliance, pinStep, height);
    }

    /** Returns this contact at a place on the car that is no lift point of the files. */
    public ContactFacts at(Vec3 place) {
        return new ContactFacts(id, name, Optional.empty(), Optional.empty(), Optional.of(place), carrierId, holeId, normal, hold, padId,
                shims, gap, compliance, pinStep, height);
    }
}
