package cradlewright.mechanics.coupled;

import java.util.List;
import java.util.Objects;

import cradlewright.mechanics.contact.ContactProblem;
import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A place where one body stands on another or on the ground.
 *
 * @param id its name, unique in the problem
 * @param above id of the body that is pushed along the normal
 * @param below id of the body that is pushed the other way, or {@link #GROUND}
 * @param point where they touch, m
 * @param normal unit vector from below to above
 * @param hold how it holds
 * @param compliance how far it gives along the normal, m/N, at or above {@link ContactProblem#LEAST_COMPLIANCE}
 * @param gap open gap g0 before anything is loaded, m: above zero for a short shim or a low floor
 * @param pullCapacity of a bolted contact, N, may be infinite; zero otherwise
 * @param shear unit vectors along which a pinned or bolted contact holds sideways; none where it only rests
 * @param shearCompliance how far it gives sideways, m/N; read only with shear
 */
public record Contact(String id, String above, String below, Vec3 point, Vec3 normal, Hold hold, double compliance, double gap,
        double pullCapacity, List<Vec3> shear, double shearCompliance) {

    /** The floor, or anything else that neither moves nor gives. */
    public static final String GROUND = "";

    private static final double UNIT_TOLERANCE = 1e-9;

    /** Refuses what does not fit together. */
    public Contact {
        Objects.requireNonNull(below, "below");
        Objects.requireNonNull(hold, "hold");
        if (id.isBlank() || above.isBlank() || above.equals(below)) {
            throw new IllegalArgumentException("contact '" + id + "' needs an id and two bodies, found '" + above + "' on '"
                    + below + "'");
        }
        requireFinite(point, id + " point");
        requireUnit(normal, id + " normal");
        requireCompliance(compliance, id + " compliance");
        Require.finite(gap, id + " gap");
        if (!(pullCapacity >= 0) || hold != Hold.BOLTED && pullCapacity != 0) {
            throw new IllegalArgumentException(id + " pull capacity must not be below zero, and zero unless bolted, found "
                    + pullCapacity);
        }
        shear = List.copyOf(shear);
        if (hold == Hold.RESTS && !shear.isEmpty()) {
            throw new IllegalArgumentException(id + " only rests, so it cannot hold sideways");
        }
        for (Vec3 t : shear) {
            requireUnit(t, id + " shear direction");
            if (Math.abs(t.dot(normal)) > UNIT_TOLERANCE) {
                throw new IllegalArgumentException(id + " shear direction must be square to the normal, found " + t);
            }
        }
        if (!shear.isEmpty()) {
            requireCompliance(shearCompliance, id + " shear compliance");
        }
    }

    private static void requireFinite(Vec3 v, String name) {
        Require.finite(v.x(), name);
        Require.finite(v.y(), name);
        Require.finite(v.z(), name);
    }

    private static void requireUnit(Vec3 v, String name) {
        requireFinite(v, name);
        if (Math.abs(v.norm() - 1) > UNIT_TOLERANCE) {
            throw new IllegalArgumentException(name + " must have length one, found " + v);
        }
    }

    private static void requireCompliance(double value, String name) {
        if (!(Require.finite(value, name) >= ContactProblem.LEAST_COMPLIANCE)) {
            throw new IllegalArgumentException(name + " must be at least " + ContactProblem.LEAST_COMPLIANCE + " m/N, found "
                    + value);
        }
    }

    /** Returns a contact with an upward normal, without gap, that only rests. */
    public static Contact rests(String id, String above, String below, Vec3 point, double compliance) {
        return new Contact(id, above, below, point, Vec3.UP, Hold.RESTS, compliance, 0, 0, List.of(), 0);
    }

    /** Returns this contact with an open gap (m). */
    public Contact withGap(double open) {
        return new Contact(id, above, below, point, normal, hold, compliance, open, pullCapacity, shear, shearCompliance);
    }

    /** Returns this contact pinned: it takes shear in every direction square to its normal. */
    public Contact pinned(double givingSideways) {
        return new Contact(id, above, below, point, normal, Hold.PINNED, compliance, gap, 0, across(), givingSideways);
    }

    /** Returns this contact holding sideways along one direction only, like a wheel brake without a swivel lock. */
    public Contact braked(Vec3 along, double givingSideways) {
        return new Contact(id, above, below, point, normal, Hold.PINNED, compliance, gap, 0, List.of(along), givingSideways);
    }

    /** Returns this contact bolted, with the pull (N) that bolt, captive nut and sheet can take. */
    public Contact bolted(double capacity, double givingSideways) {
        return new Contact(id, above, below, point, normal, Hold.BOLTED, compliance, gap, capacity, across(), givingSideways);
    }

    /** Whether the compliance is the least that is allowed, and so assumed rather than known. */
    public boolean isComplianceAssumed() {
        return compliance == ContactProblem.LEAST_COMPLIANCE;
    }

    private List<Vec3> across() {
        Vec3 reference = Math.abs(normal.x()) < 0.9 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        Vec3 first = reference.minus(normal.times(normal.dot(reference))).unit();
        return List.of(first, normal.cross(first).unit());
    }
}
