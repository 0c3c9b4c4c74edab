package cradlewright.mechanics.mass;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;

/** What several rigid parts weigh together and where they balance; each part must be counted once. */
public final class Composition {

    private Composition() {
    }

    /**
     * Returns total mass and balance point, m = sum m_i, c = sum m_i c_i / m; see {@link MassFormulas#BALANCE}.
     *
     * @throws IllegalArgumentException for an empty list or a total mass of zero
     */
    public static Balance of(List<MassPoint> parts) {
        double mass = 0;
        Vec3 moment = Vec3.ZERO;
        for (MassPoint p : parts) {
            mass += p.mass();
            moment = moment.plus(p.position().times(p.mass()));
        }
        if (mass <= 0) {
            throw new IllegalArgumentException("a balance point needs parts with a mass above zero, found " + parts.size()
                    + " parts of " + mass + " kg");
        }
        return new Balance(mass, moment.times(1 / mass));
    }

    /**
     * Returns the second moments about the common balance point by the parallel-axis theorem, kg m2; see
     * {@link MassFormulas#SECOND_MOMENTS}.
     *
     * @param parts the parts
     * @param own second moments of each part about its own balance point, in the order of the parts
     * @throws IllegalArgumentException when the lists differ in length or the total mass is zero
     */
    public static SecondMoments secondMoments(List<MassPoint> parts, List<SecondMoments> own) {
        if (parts.size() != own.size()) {
            throw new IllegalArgumentException("each part needs its own second moments: " + parts.size() + " parts, " + own.size()
                    + " second moments");
        }
        Vec3 c = of(parts).point();
        SecondMoments sum = SecondMoments.ZERO;
        for (int i = 0; i < parts.size(); i++) {
            MassPoint p = parts.get(i);
            sum = sum.plus(own.get(i)).plus(SecondMoments.ofPoint(p.mass(), p.position().minus(c)));
        }
        return sum;
    }

    /** Returns the second moments about the common balance point of parts taken as points; too small for parts of some extent. */
    public static SecondMoments secondMoments(List<MassPoint> parts) {
        return secondMoments(parts, parts.stream().map(p -> SecondMoments.ZERO).toList());
    }
}
