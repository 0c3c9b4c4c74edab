package cradlewright.report.scene;

import cradlewright.mechanics.geometry.Vec3;

/**
 * From which side things are seen. Both have the front at the left, so one below the other they share x. Seen from above the right hand
 * side of the car is up on the sheet, and below it the car is seen from its left.
 */
public enum Projection {
    /** From above. */
    PLAN,
    /** From the left. */
    SIDE;

    private static final double MM = 1000;

    /** Returns where a place in m lies on the sheet, in mm. */
    public Shape.Point at(Vec3 place) {
        return new Shape.Point(MM * place.x(), -MM * (this == PLAN ? place.y() : place.z()));
    }

    /** Returns the place that a point of the sheet stands for, as far from the sheet as another place; m. */
    public Vec3 place(Shape.Point point, Vec3 asFar) {
        double across = -point.y() / MM;
        return this == PLAN ? new Vec3(point.x() / MM, across, asFar.z()) : new Vec3(point.x() / MM, asFar.y(), across);
    }

    /** Returns the way in m that a way on the sheet in mm stands for. */
    public Vec3 way(double right, double down) {
        return place(new Shape.Point(right, down), Vec3.ZERO);
    }
}
