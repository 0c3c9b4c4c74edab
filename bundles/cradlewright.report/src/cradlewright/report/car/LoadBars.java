package cradlewright.report.car;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.LoadBar;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
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
    /** Stands after what is from before an edit. */
    private static final String OLD = " (old)";

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        double largest = sight.loads().found() ? sight.loads().supports().stream().mapToDouble(Carried::force).max().orElse(0) : 0;
        double middle = (extreme(sight.standing(), true) + extreme(sight.standing(), false)) / 2;
        double longest = longest(sight.standing(), pen.text());
        for (Support support : sight.standing().supports()) {
            draw(support, sight, longest / Math.max(largest, LoadBar.NOTHING), support.inCarrier().y() < middle, pen, words);
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
        Optional<Double> force = carried.map(Carried::force);
        double length = LoadBar.length(force, perNewton, pen.text());
        Shape.Point at = pen.at(support.inCarrier());
        Box bar = pen.projection() == Projection.PLAN ? LoadBar.upright(at, length, left, pen.text())
                : upward(at, length, left, pen.text());
        LoadBar.draw(item, LoadBar.role(force, verdict), bar, pen.text());
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

    private static Box upward(Shape.Point at, double length, boolean left, double text) {
        double broad = LoadBar.BREADTH * text;
        double gap = 0.1 * text;
        return left ? new Box(at.x() - gap - broad, at.y() - length, at.x() - gap, at.y())
                : new Box(at.x() + gap, at.y() - length, at.x() + gap + broad, at.y());
    }
}
