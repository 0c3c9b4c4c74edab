package cradlewright.diagrams.car;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.fixture.Setup;
import cradlewright.quantity.Position;

/**
 * The step from the axes of what carries a car, in which the diagram is drawn, back to those of the car, in which its file holds places.
 *
 * @param shift from the axes of the car to those of the carrier, m
 * @param heading turn about the upright axis, rad
 */
record Axes(Vec3 shift, double heading) {

    static Axes of(Setup setup) {
        Position shift = setup.getShift();
        Vec3 by = shift == null ? Vec3.ZERO : new Vec3(shift.si()[0], shift.si()[1], shift.si()[2]);
        return new Axes(by, setup.getHeading() == null ? 0 : setup.getHeading().si());
    }

    /** Returns a way in the axes of the carrier as one on the car. */
    Vec3 way(Vec3 inCarrier) {
        double c = Math.cos(heading);
        double s = Math.sin(heading);
        return new Vec3(c * inCarrier.x() + s * inCarrier.y(), -s * inCarrier.x() + c * inCarrier.y(), inCarrier.z());
    }

    /** Returns a place in the axes of the carrier as one on the car, m. */
    Vec3 onCar(Vec3 inCarrier) {
        return way(inCarrier.minus(shift));
    }

    /** Returns a place on the car in the axes of the carrier, m. */
    Vec3 inCarrier(Vec3 onCar) {
        double c = Math.cos(heading);
        double s = Math.sin(heading);
        return new Vec3(c * onCar.x() - s * onCar.y(), s * onCar.x() + c * onCar.y(), onCar.z()).plus(shift);
    }
}
