package cradlewright.mechanics.castor;

import cradlewright.mechanics.formula.Require;

/**
 * Push of one person that a national health and safety authority (guidance L23, push and pull page) uses to sort out low-risk
 * tasks: hands between knuckle and shoulder, distance up to about 20 m. Filters, not safe limits: below them a task needs no
 * closer look, above them it does ({@link CastorFormulas#PUSH_GUIDANCE}).
 */
public enum PushGuidance {
    /** Men. */
    MEN(200, 100),
    /** Women. */
    WOMEN(150, 70);

    private final double start;
    private final double keep;

    PushGuidance(double start, double keep) {
        this.start = start;
        this.keep = keep;
    }

    /** Returns the push of one person for starting or stopping, N. */
    public double start() {
        return start;
    }

    /** Returns the push of one person for keeping the load in motion, N. */
    public double keep() {
        return keep;
    }

    /** Returns how many people bring starting and keeping in motion below the figures, at least one; forces in N. */
    public int people(double startForce, double keepForce) {
        double people = Math.max(Require.within(startForce, 0, 1e9, "force to start") / start,
                Require.within(keepForce, 0, 1e9, "force to keep in motion") / keep);
        return Math.max(1, (int) Math.ceil(people - 1e-9));
    }
}
