package cradlewright.report.scene;

/** An upright rectangle on the sheet, mm of the real thing, y down. */
public record Box(double left, double top, double right, double bottom) {

    /** Holds nothing; the union with any other is that other. */
    public static final Box EMPTY = new Box(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY);

    /** Returns the smallest box with that point in it. */
    public static Box of(Shape.Point point) {
        return new Box(point.x(), point.y(), point.x(), point.y());
    }

    /** Returns the width; negative when it is empty. */
    public double width() {
        return right - left;
    }

    /** Returns the height; negative when it is empty. */
    public double height() {
        return bottom - top;
    }

    /** Tells whether it holds nothing. */
    public boolean isEmpty() {
        return left > right || top > bottom;
    }

    /** Tells whether the insides of both have something in common; edges may touch. */
    public boolean intersects(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Returns the smallest box that holds both. */
    public Box union(Box other) {
        return new Box(Math.min(left, other.left), Math.min(top, other.top), Math.max(right, other.right), Math.max(bottom, other.bottom));
    }

    /** Returns a box that is larger by that much on every side. */
    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    /** Returns the box moved. */
    public Box moved(double dx, double dy) {
        return new Box(left + dx, top + dy, right + dx, bottom + dy);
    }
}
