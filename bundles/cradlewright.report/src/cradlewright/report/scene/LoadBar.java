package cradlewright.report.scene;

import cradlewright.analysis.check.Verdict;
import java.util.Optional;

/**
 * A bar as long as a load: filled when it is held, barred when tight, with a broken edge and a question mark when something is open, with
 * a cross when it stops, hollow with a dotted edge when nothing is carried.
 */
public final class LoadBar {

    /** Breadth of a bar in heights of the font. */
    public static final double BREADTH = 0.62;
    /** Below this force, in N, nothing is carried. */
    public static final double NOTHING = 1;
    /** Least length of a bar in heights of the font, so that its mark fits. */
    private static final double SHORTEST = 0.5;
    private static final double MARK = 0.32;

    private LoadBar() {
    }

    /** Returns how a load is painted; nothing known of it is an open question. */
    public static Role role(Optional<Double> force, Optional<Verdict> verdict) {
        if (force.isEmpty()) {
            return Role.LOAD_OPEN;
        }
        if (Math.abs(force.get()) <= NOTHING) {
            return Role.UNLOADED;
        }
        return role(verdict.orElse(Verdict.HOLDS));
    }

    /** Returns how an answer is painted. */
    public static Role role(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> Role.LOAD;
            case TIGHT -> Role.LOAD_TIGHT;
            case CANT_SAY -> Role.LOAD_OPEN;
            case STOP -> Role.LOAD_STOP;
        };
    }

    /**
     * Returns how long a bar is, mm.
     *
     * @param perNewton mm of the sheet for a newton
     * @param text height of the font, mm
     */
    public static double length(Optional<Double> force, double perNewton, double text) {
        return Math.max(SHORTEST * text, perNewton * Math.max(0, force.orElse(0.0)));
    }

    /** Returns a bar that hangs or stands on a point of the sheet. */
    public static Box upright(Shape.Point at, double length, boolean upward, double text) {
        double half = BREADTH * text / 2;
        return upward ? new Box(at.x() - half, at.y() - length, at.x() + half, at.y())
                : new Box(at.x() - half, at.y(), at.x() + half, at.y() + length);
    }

    /** Draws a bar with its mark. */
    public static void draw(Pen.ItemPen item, Role role, Box bar, double text) {
        item.drawClear(Shape.Polygon.of(role, bar));
        Shape.Point middle = new Shape.Point((bar.left() + bar.right()) / 2, (bar.top() + bar.bottom()) / 2);
        double h = BREADTH * text * MARK;
        if (role == Role.LOAD_STOP) {
            item.line(Role.MARK, middle.moved(-h, -h), middle.moved(h, h)).line(Role.MARK, middle.moved(-h, h), middle.moved(h, -h));
        } else if (role == Role.LOAD_OPEN) {
            QuestionMark.draw(item, Role.LOAD_OPEN, middle, h);
        } else if (role == Role.LOAD_TIGHT) {
            Hatch.lines(Shape.Polygon.of(role, bar).points(), 0.35 * text)
                    .forEach(line -> item.draw(new Shape.Line(Role.LOAD_TIGHT, line.get(0), line.get(1))));
        }
    }
}
