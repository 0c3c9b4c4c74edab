package cradlewright.report.car;

import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.standing.Carriers;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;

/** Where people lean, pull on a bar or stand: an arrow the way of the force whose point is the place. */
final class WorkPoints implements Drawn {

    /** Length of an arrow in heights of the font. */
    private static final double LENGTH = 1.8;
    private static final double HEAD = 0.45;
    /** Below this share of its length an arrow points at or away from whoever looks. */
    private static final double END_ON = 0.2;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        for (WorkPointFacts point : sight.standing().car().workPoints()) {
            point.position().map(Spot::at).map(p -> Carriers.toCarrier(p, sight.standing().setup()))
                    .ifPresent(at -> draw(point, at, sight, pen, words));
        }
    }

    private static void draw(WorkPointFacts point, Vec3 at, VisitSight sight, Pen pen, Words words) {
        String does = point.kind().map(WorkPoints::does).orElse("nobody said what is done there");
        Pen.ItemPen item = pen.item(point.id(), Kind.WORK_POINT, "where you lean: " + point.name(),
                Words.join(does, words.place(point.position())));
        Shape.Point tip = pen.at(at);
        Shape.Point way = point.direction().map(d -> Carriers.turn(d, sight.standing().setup())).map(pen.projection()::at)
                .orElse(new Shape.Point(0, 0));
        double length = Math.hypot(way.x(), way.y()) / 1000;
        double radius = HEAD * pen.text();
        if (length < END_ON) {
            item.drawClear(new Shape.Circle(Role.WORK, tip.x(), tip.y(), radius));
            item.line(Role.WORK, tip.moved(-radius / 3, 0), tip.moved(radius / 3, 0)).line(Role.WORK, tip.moved(0, -radius / 3),
                    tip.moved(0, radius / 3));
        } else {
            arrow(item, tip, way.x() / length / 1000, way.y() / length / 1000, pen.text());
        }
        if (pen.projection() == Projection.PLAN) {
            item.note(tip, radius, 0.8, at.y() < 0 ? Side.BELOW : Side.ABOVE, point.name() + " (" + does + ")");
        }
    }

    private static void arrow(Pen.ItemPen item, Shape.Point tip, double x, double y, double text) {
        double l = LENGTH * text;
        double h = HEAD * text;
        Shape.Point tail = tip.moved(-l * x, -l * y);
        item.drawClear(new Shape.Line(Role.WORK, tail, tip));
        item.line(Role.WORK, tip, tip.moved(-h * x - h * 0.6 * y, -h * y + h * 0.6 * x));
        item.line(Role.WORK, tip, tip.moved(-h * x + h * 0.6 * y, -h * y - h * 0.6 * x));
    }

    private static String does(WorkPointFacts.Kind kind) {
        return switch (kind) {
            case LEAN -> "lean";
            case BAR -> "bar";
            case STAND_ON -> "stand on";
        };
    }
}
