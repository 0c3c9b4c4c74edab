package cradlewright.report.car;

import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.standing.Carriers;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;

/** Body mounts as rings with the sign of their condition; those that carry nothing here have their name beside them. */
final class Mounts implements Drawn {

    private static final double RADIUS = 0.32;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        for (MountFacts mount : sight.standing().car().mounts()) {
            mount.position().map(Spot::at).map(p -> Carriers.toCarrier(p, sight.standing().setup()))
                    .ifPresent(at -> draw(mount, at, sight, pen, words));
        }
    }

    private static void draw(MountFacts mount, Vec3 at, VisitSight sight, Pen pen, Words words) {
        String value = Words.join(Words.condition(mount.condition()), "sheet " + words.length(mount.sheet()),
                words.place(mount.position()), mount.fast().map(fast -> fast ? "still bolted to the chassis" : "free").orElse(""));
        Pen.ItemPen item = pen.item(mount.id(), Kind.MOUNT, "body mount " + mount.name(), value);
        Shape.Point point = pen.at(at);
        Role role = Marks.role(mount.condition());
        if (pen.projection() == Projection.SIDE) {
            double half = RADIUS * pen.text() / 2;
            item.line(role, point.moved(-half, 0), point.moved(half, 0)).line(role, point, point.moved(0, -half));
            return;
        }
        double radius = RADIUS * pen.text();
        item.drawClear(new Shape.Circle(role, point.x(), point.y(), radius));
        Marks.condition(item, mount.condition(), point, radius);
        boolean carries = sight.standing().supports().stream().anyMatch(support -> support.objectId().equals(mount.id()));
        if (!carries) {
            item.note(point, radius, 0.8, at.y() < 0 ? Side.BELOW : Side.ABOVE, Words.named(mount.name(), mount.condition()));
        }
    }
}
