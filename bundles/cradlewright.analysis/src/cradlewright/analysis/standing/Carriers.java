package cradlewright.analysis.standing;

import cradlewright.analysis.facts.SetupFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.RigidTransform;

/** The rigid step from the axes of a car to those of what carries it. */
public final class Carriers {

    private Carriers() {
    }

    /** Returns a place of the car in the axes of the carrier. */
    public static Vec3 toCarrier(Vec3 onCar, SetupFacts setup) {
        return turn(onCar, setup).plus(setup.shift());
    }

    /** Returns mass and balance point of something on the car in the axes of the carrier. */
    public static EstimatedBalance toCarrier(EstimatedBalance onCar, SetupFacts setup) {
        double c = Math.cos(setup.heading());
        double s = Math.sin(setup.heading());
        return onCar.moved(new RigidTransform(new double[][] {{c, -s, 0}, {s, c, 0}, {0, 0, 1}}, setup.shift()));
    }

    /** Returns a direction on the car in the axes of the carrier. */
    public static Vec3 turn(Vec3 onCar, SetupFacts setup) {
        double c = Math.cos(setup.heading());
        double s = Math.sin(setup.heading());
        return new Vec3(c * onCar.x() - s * onCar.y(), s * onCar.x() + c * onCar.y(), onCar.z());
    }
}
