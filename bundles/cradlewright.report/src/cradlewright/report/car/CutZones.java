package cradlewright.report.car;

import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.standing.Carriers;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Hatch;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.List;

/** What is to be cut out: broken edges, hatched when the cut is planned. */
final class CutZones implements Drawn {

    /** Distance of hatch lines over the height of the font. */
    private static final double HATCH = 0.7;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        for (CutZoneFacts zone : sight.standing().car().cutZones()) {
            if (zone.low().isPresent() && zone.high().isPresent()) {
                draw(zone, corners(zone.low().get(), zone.high().get(), sight, pen), pen);
            }
        }
    }

    private static void draw(CutZoneFacts zone, List<Shape.Point> corners, Pen pen) {
        Pen.ItemPen item = pen.item(zone.id(), Kind.CUT_ZONE, "cut zone " + zone.name(),
                zone.planned() ? "cut is planned" : "no cut planned").polygon(Role.CUT, corners);
        Box box = corners.stream().map(Box::of).reduce(Box.EMPTY, Box::union);
        if (zone.planned()) {
            Hatch.lines(corners, HATCH * pen.text()).forEach(line -> item.draw(new Shape.Line(Role.CUT, line.get(0), line.get(1))));
        }
        if (pen.projection() == Projection.PLAN) {
            item.note(new Shape.Point((box.left() + box.right()) / 2, (box.top() + box.bottom()) / 2), box.height() / 2, 0.8, Side.BELOW,
                    "cut: " + zone.name());
        }
    }

    private static List<Shape.Point> corners(Vec3 low, Vec3 high, VisitSight sight, Pen pen) {
        List<Vec3> corners = new ArrayList<>();
        if (pen.projection() == Projection.PLAN) {
            corners.addAll(List.of(low, new Vec3(high.x(), low.y(), low.z()), high, new Vec3(low.x(), high.y(), high.z())));
        } else {
            corners.addAll(List.of(low, new Vec3(high.x(), low.y(), low.z()), high, new Vec3(low.x(), low.y(), high.z())));
        }
        return corners.stream().map(p -> Carriers.toCarrier(p, sight.standing().setup())).map(pen::at).toList();
    }
}
