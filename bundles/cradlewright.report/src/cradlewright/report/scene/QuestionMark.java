package cradlewright.report.scene;

import java.util.List;

/** A question mark of straight lines: something is not known. */
public final class QuestionMark {

    private QuestionMark() {
    }

    /** Draws it about a point, so high above and below it. */
    public static void draw(Pen.ItemPen item, Role role, Shape.Point at, double h) {
        List<Shape.Point> line = List.of(at.moved(-h * 0.6, -h * 0.6), at.moved(-h * 0.2, -h), at.moved(h * 0.4, -h),
                at.moved(h * 0.6, -h * 0.5), at.moved(0, h * 0.1), at.moved(0, h * 0.4));
        for (int i = 1; i < line.size(); i++) {
            item.line(role, line.get(i - 1), line.get(i));
        }
        item.line(role, at.moved(0, h * 0.8), at.moved(0, h));
    }
}
