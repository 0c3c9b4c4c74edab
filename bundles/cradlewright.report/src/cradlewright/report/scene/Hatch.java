package cradlewright.report.scene;

import cradlewright.report.scene.Shape.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Slanting lines inside a polygon without dents. */
public final class Hatch {

    private Hatch() {
    }

    /**
     * Returns the lines, each as its two ends.
     *
     * @param corners of the polygon, in order
     * @param step distance of the lines along the sheet, above zero
     */
    public static List<List<Point>> lines(List<Point> corners, double step) {
        Box box = corners.stream().map(Box::of).reduce(Box.EMPTY, Box::union);
        List<List<Point>> lines = new ArrayList<>();
        double first = Math.floor((box.left() + box.top()) / step) * step;
        for (double sum = first; sum < box.right() + box.bottom(); sum += step) {
            List<Point> cuts = cuts(corners, sum);
            if (cuts.size() > 1) {
                Point low = cuts.stream().min(Comparator.comparingDouble(Point::x)).orElseThrow();
                Point high = cuts.stream().max(Comparator.comparingDouble(Point::x)).orElseThrow();
                if (high.x() > low.x()) {
                    lines.add(List.of(low, high));
                }
            }
        }
        return lines;
    }

    /** Where the line of points whose x and y add up to a number crosses the edges. */
    private static List<Point> cuts(List<Point> corners, double sum) {
        List<Point> cuts = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double from = a.x() + a.y() - sum;
            double to = b.x() + b.y() - sum;
            if (from != to && from * to <= 0) {
                double share = from / (from - to);
                cuts.add(new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
            }
        }
        return cuts;
    }
}
