package cradlewright.mechanics.joint;

import java.util.stream.DoubleStream;

/**
 * How far a bolt is used: demand over design resistance, 1 = fully used.
 *
 * @param shear shear of the bolt
 * @param bearing bearing on the hole
 * @param tension tension of the bolt
 * @param punching head or nut pulled through
 * @param combined shear and tension together
 */
public record BoltUse(double shear, double bearing, double tension, double punching, double combined) {

    /** Returns the largest of the five. */
    public double governing() {
        return DoubleStream.of(shear, bearing, tension, punching, combined).max().getAsDouble();
    }
}
