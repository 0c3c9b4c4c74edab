package cradlewright.report.car;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What each support carries at rest: a bar as long as the load, inward from the support seen from above, upward seen from the left (left
 * hand supports to the left). Filled when held, barred when tight, broken edge with a question mark when something is open, a cross when
 * it stops, hollow with a dotted edge when nothing is carried.
 */
final class LoadBars implements Drawn {

    /** Length of the bar of the most loaded support, in heights of the font. */
    private static final double LONGEST = 4;
    /** The same over the distance of the supports across the car. */
    private static final double SHARE = 0.25;
    private static final double BREADTH = 0.62;
    /** Least length of a bar, so that its mark fits. */
    private static final double SHORTEST = 0.5;
    /** Stands after what is from before an edit. */
    private static final String OLD = " (old)";
    /** Below this force, in N, nothing is carried. */
    private static final double NOTHING = 1;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        double largest = sight.loads().found() ? sight.loads().supports().stream().mapToDouble(Carried::force).max().orElse(0) : 0;
        double middle = (extreme(sight.standing(), true) + extreme(sight.standing(), false)) / 2;
        double longest = longest(sight.standing(), pen.text());
        for (Support support : sight.standing().supports()) {
            draw(support, sight, longest / Math.max(largest, NOTHING), support.inCarrier().y() < middle, pen, words);
        }
    }

    /** Bars of opposite supports leave room for numbers between them. */
    private static double longest(Standing standing, double text) {
        double across = 1000 * (extreme(standing, true) - extreme(standing, false));
        return across > 0 ? Math.min(LONGEST * text, SHARE * across) : LONGEST * text;
    }

    private static double extreme(Standing standing, boolean most) {
        DoubleStream across = standing.supports().stream().mapToDouble(support -> support.inCarrier().y());
        return (most ? across.max() : across.min()).orElse(0);
    }

    private static void draw(Support support, VisitSight sight, double perNewton, boolean left, Pen pen, Words words) {
        Optional<Carried> carried = sight.carried(support);
        Optional<Verdict> verdict = sight.verdict(support);
        String name = support.name() + verdict.map(v -> " " + v.word() + (sight.judgedBefore() ? OLD : "")).orElse("");
        String number = carried.map(c -> words.force(c.force())).orElse("load not known");
        String age = sight.outdated() || sight.judgedBefore() ? "being worked out again" : "";
        Pen.ItemPen item = pen.item(support.contactId(), Kind.LOAD, "load on " + support.name(),
                Words.join(verdict.map(Verdict::word).orElse(""), carried.map(c -> range(c, words)).orElse("load not known"), age));
        double force = carried.map(Carried::force).orElse(0.0);
        double length = Math.max(SHORTEST * pen.text(), perNewton * Math.max(0, force));
        Shape.Point at = pen.at(support.inCarrier());
        Box bar = pen.projection() == Projection.PLAN ? inward(at, length, left, pen.text()) : upward(at, length, left, pen.text());
        Role role = role(carried, force, verdict);
        item.drawClear(Shape.Polygon.of(role, bar));
        mark(item, role, bar, pen.text());
        Shape.Point end = pen.projection() == Projection.PLAN ? new Shape.Point(at.x(), left ? bar.top() : bar.bottom())
                : new Shape.Point((bar.left() + bar.right()) / 2, bar.top());
        List<String> lines = new ArrayList<>(List.of(sight.outdated() && carried.isPresent() ? number + OLD : number));
        if (pen.projection() == Projection.PLAN && support.condition() != Condition.SOUND) {
            lines.add(Words.condition(support.condition()));
        }
        item.text(end, 0, pen.projection() == Projection.PLAN ? 1 : 0.8, side(left, pen.projection()), name, lines);
    }

    private static Side side(boolean left, Projection projection) {
        if (projection == Projection.SIDE) {
            return left ? Side.LEFT_ABOVE : Side.RIGHT_ABOVE;
        }
        return left ? Side.ABOVE : Side.BELOW;
    }

    private static String range(Carried carried, Words words) {
        return "carries " + words.force(carried.force()) + " at rest, from " + words.force(carried.low()) + " to "
                + words.force(carried.high()) + " 19 times in 20";
    }

    private static Role role(Optional<Carried> carried, double force, Optional<Verdict> verdict) {
        if (carried.isPresent() && Math.abs(force) <= NOTHING) {
            return Role.UNLOADED;
        }
        if (carried.isEmpty()) {
            return Role.LOAD_OPEN;
        }
        return switch (verdict.orElse(Verdict.HOLDS)) {
            case HOLDS -> Role.LOAD;
            case TIGHT -> Role.LOAD_TIGHT;
            case CANT_SAY -> Role.LOAD_OPEN;
            case STOP -> Role.LOAD_STOP;
        };
    }

    private static Box inward(Shape.Point at, double length, boolean left, double text) {
        double half = BREADTH * text / 2;
        return left ? new Box(at.x() - half, at.y() - length, at.x() + half, at.y()) : new Box(at.x() - half, at.y(), at.x() + half,
                at.y() + length);
    }

    private static Box upward(Shape.Point at, double length, boolean left, double text) {
        double broad = BREADTH * text;
        double gap = 0.1 * text;
        return left ? new Box(at.x() - gap - broad, at.y() - length, at.x() - gap, at.y())
                : new Box(at.x() + gap, at.y() - length, at.x() + gap + broad, at.y());
    }

    private static void mark(Pen.ItemPen item, Role role, Box bar, double text) {
        Shape.Point middle = new Shape.Point((bar.left() + bar.right()) / 2, (bar.top() + bar.bottom()) / 2);
        double h = BREADTH * text * 0.32;
        if (role == Role.LOAD_STOP) {
            item.line(Role.MARK, middle.moved(-h, -h), middle.moved(h, h)).line(Role.MARK, middle.moved(-h, h), middle.moved(h, -h));
        } else if (role == Role.LOAD_OPEN) {
            Marks.question(item, Role.LOAD_OPEN, middle, h);
        } else if (role == Role.LOAD_TIGHT) {
            List<Shape.Point> corners = Shape.Polygon.of(role, bar).points();
            Hatch.lines(corners, 0.35 * text).forEach(line -> item.draw(new Shape.Line(Role.LOAD_TIGHT, line.get(0), line.get(1))));
        }
    }
}
