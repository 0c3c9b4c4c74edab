package cradlewright.report.car;

import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Support;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where the load is held: fixtures with pad and shims to scale, stands, arms of a lift, straps. */
final class Supports implements Drawn {

    private static final double MM = 1000;
    /** Breadth of a fixture of which nobody wrote down how large its pad is, mm. */
    private static final double UNKNOWN_BREADTH = 60;
    /** Breadth of the body of a fixture over that of its pad, for the drawing only. */
    private static final double BODY = 0.7;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        List<Support> farFirst = new ArrayList<>(sight.standing().supports());
        farFirst.sort(Comparator.comparingDouble((Support support) -> -support.inCarrier().y()));
        for (Support support : pen.projection() == Projection.SIDE ? farFirst : sight.standing().supports()) {
            Pen.ItemPen item = pen.item(support.contactId(), Kind.SUPPORT, "support " + support.name(), value(support, sight, words));
            if (pen.projection() == Projection.PLAN) {
                plan(support, item, pen);
            } else {
                side(support, Stack.under(support, sight), item, pen);
            }
        }
    }

    private static String value(Support support, VisitSight sight, Words words) {
        return Words.join(Words.hold(support.hold()) + " on " + support.holder().name(),
                support.pad().map(pad -> "pad " + pad.name()).orElse(""), Stack.shims(support, words, sight.standing()));
    }

    private static double breadth(Support support) {
        return support.pad().flatMap(StockFacts.Pad::length).map(length -> MM * length.si()).orElse(UNKNOWN_BREADTH);
    }

    private static void plan(Support support, Pen.ItemPen item, Pen pen) {
        Shape.Point at = pen.at(support.inCarrier());
        double half = breadth(support) / 2;
        double across = support.pad().flatMap(StockFacts.Pad::width).map(width -> MM * width.si() / 2).orElse(half);
        if (support.holder() instanceof Holder.OnArm on) {
            on.arm().pivot().ifPresent(pivot -> item.line(Role.FIXTURE, pen.at(pivot), at));
        }
        Role role = support.pad().isPresent() ? Role.PAD : Role.FIXTURE;
        item.drawClear(Shape.Polygon.of(role, new Box(at.x() - half, at.y() - across, at.x() + half, at.y() + across)));
    }

    private static void side(Support support, Stack stack, Pen.ItemPen item, Pen pen) {
        Shape.Point at = pen.at(support.inCarrier());
        double half = breadth(support) / 2;
        if (!stack.layers().isEmpty()) {
            layers(stack, at.x(), half, item);
        } else if (stack.foot().isPresent()) {
            item.box(Role.ABSENT, new Box(at.x() - BODY * half, at.y(), at.x() + BODY * half, -MM * stack.foot().get()));
        } else if (support.holder() instanceof Holder.OnArm on) {
            // The pivot goes up with the pad, so the arm stays level.
            double under = at.y() + pen.text() / 2;
            on.arm().pivot().ifPresent(pivot -> item.line(Role.FIXTURE, new Shape.Point(pen.at(pivot).x(), under),
                    new Shape.Point(at.x(), under)));
            item.box(Role.FIXTURE, new Box(at.x() - half, at.y(), at.x() + half, under));
        } else if (support.holder() instanceof Holder.InStrap in) {
            strap(in.strap(), at, item, pen);
        } else {
            below(support.holder(), at, half, item, pen);
        }
    }

    private static void layers(Stack stack, double x, double half, Pen.ItemPen item) {
        for (Stack.Layer layer : stack.layers()) {
            double wide = switch (layer.sort()) {
                case FIXTURE -> BODY * half;
                case PAD, SHIM -> layer.width().map(width -> MM * width / 2).orElse(half);
            };
            Role role = switch (layer.sort()) {
                case FIXTURE -> Role.FIXTURE;
                case PAD -> Role.PAD;
                case SHIM -> Role.SHIM;
            };
            item.box(role, new Box(x - wide, -MM * layer.top(), x + wide, -MM * layer.bottom()));
        }
    }

    /** A strap goes up; its upper end is cut off where the files do not say where it hangs. */
    private static void strap(GearFacts.Strap strap, Shape.Point at, Pen.ItemPen item, Pen pen) {
        double up = Math.min(strap.length().map(length -> MM * length.si()).orElse(0.0), 12 * pen.text());
        double shown = up > 0 ? up : 6 * pen.text();
        item.line(up > 0 ? Role.FIXTURE : Role.ABSENT, at, at.moved(0, -shown));
    }

    private static void below(Holder holder, Shape.Point at, double half, Pen.ItemPen item, Pen pen) {
        Role role = holder instanceof Holder.Unknown ? Role.ABSENT : Role.FIXTURE;
        double tall = stand(holder).map(height -> MM * height).orElse(2 * pen.text());
        item.polygon(role, List.of(at.moved(-half / 2, 0), at.moved(half / 2, 0), at.moved(half * 1.5, tall), at.moved(-half * 1.5, tall)));
    }

    /** Returns how tall a stand is at its lowest, m: enough for a drawing that shows no floor. */
    private static Optional<Double> stand(Holder holder) {
        return holder instanceof Holder.OnStand on && on.stand() instanceof GearFacts.Stand stand
                ? stand.lowest().map(lowest -> lowest.si()) : Optional.empty();
    }
}
