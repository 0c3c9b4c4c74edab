package cradlewright.report.scene;

import java.util.List;

/** Something to draw; x to the right and y down on the sheet, in mm of the real thing. */
public sealed interface Shape {

    /** Returns what it stands for. */
    Role role();

    /** Returns the room it takes; for a text an estimate with wide letters, see {@link TextSize}. */
    Box box();

    /** Returns the same elsewhere. */
    Shape moved(double dx, double dy);

    /** A straight line. */
    record Line(Role role, double x1, double y1, double x2, double y2) implements Shape {

        /** Joins two points. */
        public Line(Role role, Point from, Point to) {
            this(role, from.x, from.y, to.x, to.y);
        }

        @Override
        public Box box() {
            return Box.of(new Point(x1, y1)).union(Box.of(new Point(x2, y2)));
        }

        @Override
        public Line moved(double dx, double dy) {
            return new Line(role, x1 + dx, y1 + dy, x2 + dx, y2 + dy);
        }
    }

    /** A closed polygon. */
    record Polygon(Role role, List<Point> points) implements Shape {

        /** Copies the list. */
        public Polygon {
            points = List.copyOf(points);
        }

        /** Returns an upright rectangle. */
        public static Polygon of(Role role, Box box) {
            return new Polygon(role, List.of(new Point(box.left(), box.top()), new Point(box.right(), box.top()),
                    new Point(box.right(), box.bottom()), new Point(box.left(), box.bottom())));
        }

        @Override
        public Box box() {
            return points.stream().map(Box::of).reduce(Box.EMPTY, Box::union);
        }

        @Override
        public Polygon moved(double dx, double dy) {
            return new Polygon(role, points.stream().map(point -> point.moved(dx, dy)).toList());
        }
    }

    /** A point of the sheet. */
    record Point(double x, double y) {

        /** Returns the point elsewhere. */
        public Point moved(double dx, double dy) {
            return new Point(x + dx, y + dy);
        }
    }

    /** A circle. */
    record Circle(Role role, double x, double y, double radius) implements Shape {

        @Override
        public Box box() {
            return Box.of(new Point(x, y)).grown(radius);
        }

        @Override
        public Circle moved(double dx, double dy) {
            return new Circle(role, x + dx, y + dy, radius);
        }
    }

    /**
     * A text.
     *
     * @param x where its anchor lies
     * @param y of the line that the letters stand on
     * @param height of the font
     * @param anchor where on the text the point lies
     */
    record Label(Role role, double x, double y, double height, Anchor anchor, String text) implements Shape {

        @Override
        public Box box() {
            double width = TextSize.width(text, height, role == Role.TEXT_STRONG);
            double left = switch (anchor) {
                case START -> x;
                case MIDDLE -> x - width / 2;
                case END -> x - width;
            };
            return new Box(left, y - TextSize.ASCENT * height, left + width, y + TextSize.DESCENT * height);
        }

        @Override
        public Label moved(double dx, double dy) {
            return new Label(role, x + dx, y + dy, height, anchor, text);
        }
    }

    /** Where on a text its point lies. */
    enum Anchor {
        START, MIDDLE, END
    }
}
