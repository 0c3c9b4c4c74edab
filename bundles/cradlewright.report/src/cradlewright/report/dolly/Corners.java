package cradlewright.report.dolly;

import cradlewright.analysis.facts.NodeFacts;
import cradlewright.report.Words;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;

/** Corners and crossings, where members end: small rings that can be pulled. */
final class Corners implements Drawn {

    private static final double RADIUS = 0.16;

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        for (NodeFacts node : sight.dolly().nodes()) {
            node.at().ifPresent(at -> {
                Shape.Point point = pen.at(at);
                pen.item(node.id(), Kind.NODE, node.name(), words.place(at)).draw(new Shape.Circle(Role.FIXTURE, point.x(), point.y(),
                        RADIUS * pen.text()));
            });
        }
    }
}
