package cradlewright.report.dolly;

import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.List;
import java.util.Optional;

/** Places of fixtures: from above as large as their pad, with a bar inward for what stands there; from the left up to their height. */
final class Fixtures implements Drawn {

    private static final double MM = 1000;
    /** Half of a pad that nobody measured, in heights of the font. */
    private static final double UNKNOWN = 0.4;
    private static final double POST = 0.25;

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        Bars bars = new Bars(sight, pen, words);
        for (FixtureFacts fixture : sight.dolly().fixtures()) {
            sight.dolly().base(fixture).ifPresent(base -> draw(fixture, base, sight, pen, bars));
        }
    }

    private static void draw(FixtureFacts fixture, Vec3 base, DollySight sight, Pen pen, Bars bars) {
        Optional<StockFacts.Pad> pad = sight.stock(StockFacts.Pad.class, fixture.padId());
        Vec3 head = base.plus(fixture.offset()).plus(Vec3.UP.times(fixture.height().map(Value::si).orElse(0.0)));
        Pen.ItemPen item = pen.item(fixture.id(), Kind.FIXTURE, "fixture " + fixture.name(), Words.join(Words.hold(fixture.hold()),
                pad.map(StockFacts::name).orElse("no pad named"), bars.sentence(fixture)));
        Shape.Point top = pen.at(head);
        double half = half(pad.flatMap(StockFacts.Pad::length), pen);
        if (pen.projection() == Projection.PLAN) {
            double across = half(pad.flatMap(StockFacts.Pad::width), pen);
            item.drawClear(Shape.Polygon.of(Role.PAD, new Box(top.x() - half, top.y() - across, top.x() + half, top.y() + across)));
            if (sight.worked().isPresent()) {
                bars.inward(item, fixture, top, across);
            } else {
                item.note(top, half, 0.8, top.y() < 0 ? Side.BELOW : Side.ABOVE, fixture.name());
            }
        } else {
            Shape.Point foot = pen.at(base);
            double post = POST * pen.text();
            item.polygon(Role.FIXTURE, List.of(foot.moved(-post, 0), foot.moved(post, 0), top.moved(post, 0), top.moved(-post, 0)));
            double thick = pad.flatMap(StockFacts.Pad::thickness).map(value -> MM * value.si()).orElse(0.0);
            if (thick > 0) {
                item.box(Role.PAD, new Box(top.x() - half, top.y() - thick, top.x() + half, top.y()));
            } else {
                item.line(Role.FIXTURE, top.moved(-half, 0), top.moved(half, 0));
            }
        }
    }

    private static double half(Optional<Value> size, Pen pen) {
        return size.map(value -> MM * value.si() / 2).orElse(UNKNOWN * pen.text());
    }
}
