package cradlewright.report.dolly;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.List;

/** An end prop: whole lines in place, broken ones where it could stand. */
public final class PropPicture {

    private PropPicture() {
    }

    /**
     * Draws it into one view.
     *
     * @param load what it carries, in words
     */
    public static void draw(PropFacts prop, Vec3 at, DollyFacts dolly, String load, Pen pen) {
        Role role = prop.fitted() ? Role.PROP : Role.ABSENT;
        Pen.ItemPen item = pen.item(prop.id(), Kind.PROP, "end prop " + prop.name(), prop.fitted() ? "in place; carries " + load
                : "not in place");
        Shape.Point head = pen.at(at);
        double half = pen.text() / 2;
        if (pen.projection() == Projection.PLAN) {
            item.drawClear(Shape.Polygon.of(role, Box.of(head).grown(half)));
            item.line(role, head.moved(-half, -half), head.moved(half, half)).line(role, head.moved(-half, half), head.moved(half, -half));
            item.note(head, half, 0.8, Side.RIGHT, prop.name() + " " + (prop.fitted() ? load : "(not in place)"));
        } else {
            Vec3 foot = prop.nodeId().flatMap(dolly::node).flatMap(NodeFacts::at).orElse(new Vec3(at.x(), at.y(), 0));
            Shape.Point low = pen.at(foot);
            item.polygon(role, List.of(head.moved(-half / 2, 0), head.moved(half / 2, 0), low.moved(half / 2, 0), low.moved(-half / 2, 0)));
            item.line(role, head.moved(-half, 0), head.moved(half, 0)).line(role, low.moved(-half, 0), low.moved(half, 0));
        }
    }
}
