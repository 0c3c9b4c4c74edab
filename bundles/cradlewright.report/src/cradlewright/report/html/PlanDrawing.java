package cradlewright.report.html;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.dolly.DollyOutline;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.report.UnitSystem;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Scene;
import cradlewright.report.scene.Shape;
import cradlewright.report.scene.Shape.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A car on its supports from above, front to the left: supports as discs whose area grows with the load and a number beside each,
 * hollow when unloaded; castors as squares; the balance point as a cross in a ring that covers its give or take.
 */
final class PlanDrawing {

    /** Sheet width over text height: about nine points on a page. */
    private static final double TEXTS_ACROSS = 48;
    /** Radius of the most loaded support, in text heights. */
    private static final double LARGEST_DISC = 1.4;
    /** Radius of a support without load and of the balance point, in text heights. */
    private static final double SMALLEST_DISC = 0.4;
    /** Half the side of a castor, in text heights. */
    private static final double CASTOR = 0.6;
    /** Below this force, in N, a support is drawn hollow. */
    private static final double UNLOADED = 1;

    private final List<Shape> shapes = new ArrayList<>();
    private final UnitSystem units;
    private double text;
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    PlanDrawing(UnitSystem units) {
        this.units = units;
    }

    /** Draws a standing with what its supports carry at rest. */
    Scene draw(Standing standing, Weight weight, Loads loads) {
        measure(standing);
        outline(standing);
        standing.dolly().ifPresent(this::dolly);
        double largest = loads.supports().stream().mapToDouble(Carried::force).max().orElse(1);
        for (Support support : standing.supports()) {
            support(support, loads.support(support.contactId()), largest);
        }
        for (Carried castor : loads.castors()) {
            standing.dolly().flatMap(dolly -> DollyOutline.castor(dolly, castor.id())).ifPresent(at -> castor(at, castor));
        }
        weight.estimate().ifPresent(estimate -> {
            Vec3 at = Carriers.toCarrier(estimate.balance().point(), standing.setup());
            double give = Math.max(estimate.expanded(EstimatedBalance.Quantity.X),
                    estimate.expanded(EstimatedBalance.Quantity.Y));
            balance(at, give, units.text(Amount.mass(estimate.balance().mass())));
        });
        front();
        return new Scene("Plan of " + standing.car().name() + ", " + standing.visit().name() + ", with what each support carries at rest",
                left - 4 * text, top - 4 * text, right - left + 8 * text, bottom - top + 10 * text, shapes);
    }

    /** Finds the extent of everything first, since sizes of texts and discs follow it. */
    private void measure(Standing standing) {
        standing.supports().forEach(support -> reach(support.inCarrier()));
        outlines(standing).forEach(points -> points.forEach(this::reach));
        standing.dolly().ifPresent(dolly -> DollyOutline.edges(dolly).forEach(edge -> {
            reach(edge.from());
            reach(edge.to());
        }));
        text = Math.max(right - left, 2 * (bottom - top)) / TEXTS_ACROSS;
    }

    private static List<List<Vec3>> outlines(Standing standing) {
        return standing.car().pieces().stream().filter(piece -> standing.setup().pieceIds().contains(piece.id()))
                .filter(piece -> piece.outline().size() > 2)
                .map(piece -> piece.outline().stream().map(p -> Carriers.toCarrier(p, standing.setup())).toList()).toList();
    }

    private void outline(Standing standing) {
        for (List<Vec3> points : outlines(standing)) {
            shapes.add(new Shape.Polygon(Role.OUTLINE, points.stream().map(p -> new Shape.Point(mm(p.x()), mm(p.y()))).toList()));
        }
    }

    private void dolly(DollyFacts dolly) {
        for (DollyOutline.Edge edge : DollyOutline.edges(dolly)) {
            shapes.add(new Shape.Line(Role.STRUCTURE, mm(edge.from().x()), mm(edge.from().y()), mm(edge.to().x()), mm(edge.to().y())));
        }
    }

    private void support(Support support, Optional<Carried> carried, double largest) {
        Vec3 at = support.inCarrier();
        double force = carried.map(Carried::force).orElse(0.0);
        double radius = text * Math.max(SMALLEST_DISC, LARGEST_DISC * Math.sqrt(Math.max(0, force) / Math.max(largest, 1)));
        Role role = carried.isPresent() && force > UNLOADED ? Role.SUPPORT : Role.SUPPORT_UNLOADED;
        shapes.add(new Shape.Circle(role, mm(at.x()), mm(at.y()), radius));
        // Names and numbers of supports stand towards the middle of the car, those of castors outside, so that they keep clear of each
        // other.
        double y = mm(at.y()) + (upper(at) ? radius + text : -radius - 1.4 * text);
        shapes.add(new Shape.Label(Role.TEXT_STRONG, mm(at.x()), y, text, Anchor.MIDDLE, support.name()));
        String number = carried.map(c -> units.text(Amount.force(c.force()))).orElse("not known");
        shapes.add(new Shape.Label(Role.TEXT, mm(at.x()), y + 1.1 * text, text, Anchor.MIDDLE, number));
    }

    private void castor(Vec3 at, Carried castor) {
        double x = mm(at.x());
        double y = mm(at.y());
        double half = CASTOR * text;
        shapes.add(new Shape.Polygon(Role.CASTOR, List.of(new Shape.Point(x - half, y - half), new Shape.Point(x + half, y - half),
                new Shape.Point(x + half, y + half), new Shape.Point(x - half, y + half))));
        double label = upper(at) ? y - half - 1.2 * text : y + half + 0.9 * text;
        shapes.add(new Shape.Label(Role.TEXT, x, label, 0.8 * text, Anchor.MIDDLE, castor.name()));
        shapes.add(new Shape.Label(Role.TEXT, x, label + 0.9 * text, 0.8 * text, Anchor.MIDDLE, units.text(Amount.force(castor.force()))));
    }

    private boolean upper(Vec3 at) {
        return mm(at.y()) < (top + bottom) / 2;
    }

    private void balance(Vec3 at, double give, String mass) {
        double x = mm(at.x());
        double y = mm(at.y());
        double arm = 2 * SMALLEST_DISC * text;
        double r = Math.max(mm(give), arm / 2);
        shapes.add(new Shape.Circle(Role.BALANCE, x, y, r));
        shapes.add(new Shape.Line(Role.BALANCE, x - arm, y, x + arm, y));
        shapes.add(new Shape.Line(Role.BALANCE, x, y - arm, x, y + arm));
        shapes.add(new Shape.Label(Role.TEXT_STRONG, x + r + text / 3, y - text / 4, text, Anchor.START, "balance point, " + mass));
    }

    private void front() {
        double y = bottom + 5 * text;
        shapes.add(new Shape.Line(Role.DIMENSION, left + 6 * text, y, left, y));
        shapes.add(new Shape.Line(Role.DIMENSION, left, y, left + text / 2, y - text / 3));
        shapes.add(new Shape.Line(Role.DIMENSION, left, y, left + text / 2, y + text / 3));
        shapes.add(new Shape.Label(Role.TEXT_STRONG, left + 6.5 * text, y + text / 3, text, Anchor.START, "FRONT"));
    }

    private void reach(Vec3 at) {
        left = Math.min(left, mm(at.x()));
        right = Math.max(right, mm(at.x()));
        top = Math.min(top, mm(at.y()));
        bottom = Math.max(bottom, mm(at.y()));
    }

    private static double mm(double metres) {
        return 1000 * metres;
    }
}
