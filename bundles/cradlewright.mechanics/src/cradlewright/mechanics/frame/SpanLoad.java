package cradlewright.mechanics.frame;

import cradlewright.mechanics.geometry.Vec3;

/**
 * A load on a member in member axes that begins at {@code start} and grows with the power {@code order} of the distance
 * from there: order 0 is a load at the point, order 1 a uniform load from there to the far end. A uniform load that stops
 * earlier is the difference of two of order 1.
 *
 * @param start distance from the near end, m
 * @param order 0 or 1
 * @param force N or N/m
 * @param moment N*m or N*m/m
 */
record SpanLoad(double start, int order, Vec3 force, Vec3 moment) {

    SpanLoad times(double factor) {
        return new SpanLoad(start, order, force.times(factor), moment.times(factor));
    }
}
