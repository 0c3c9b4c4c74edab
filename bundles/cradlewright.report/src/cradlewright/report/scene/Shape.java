package cradlewright.report.scene;

import java.util.List;

/** Something to draw; x to the right and y down on the sheet, in mm of the real thing. */
public sealed interface Shape {

    /** Returns what it stands for. */
    Role role();

    /** A straight line. */
    record Line(Role role, double x1, double y1, double x2, double y2) implements Shape {
    }

    /** A closed polygon. */
    record Polygon(Role role, List<Point> points) implements Shape {

        /** Copies the list. */
        public Polygon {
            points = List.copyOf(points);
        }
    }

    /** A corner of a polygon. */
    record Point(double x, double y) {
    }

    /** A circle. */
    record Circle(Role role, double x, double y, double radius) implements Shape {
    }

    /**
     * A text.
     *
     * @param anchor where on the text the point lies
     */
    record Label(Role role, double x, double y, double height, Anchor anchor, String text) implements Shape {
    }

    /** Where on a text its point lies. */
    enum Anchor {
        START, MIDDLE, END
    }
}
