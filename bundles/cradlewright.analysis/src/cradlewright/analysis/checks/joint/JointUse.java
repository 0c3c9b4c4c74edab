package cradlewright.analysis.checks.joint;

import cradlewright.analysis.load.Situation;
import cradlewright.quantity.Dimension;

/**
 * How far something of a joint is used.
 *
 * @param what in shop words
 * @param demand not below zero
 * @param capacity in the same unit
 * @param dimension of both
 * @param clause where the rule stands
 * @param situation when
 */
record JointUse(String what, double demand, double capacity, Dimension dimension, String clause, Situation situation) {

    /** Returns demand over capacity, without end when there is no capacity. */
    double ratio() {
        return demand == 0 ? 0 : demand / capacity;
    }
}
