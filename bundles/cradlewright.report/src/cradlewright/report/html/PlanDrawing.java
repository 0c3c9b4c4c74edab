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

    private static final double MARGIN = 420;
    private static final double TEXT = 90;
    private static final double LARGEST_DISC = 130;
    private static final double SMALLEST_DISC = 35;
    private static final double CASTOR = 60;
    /** Below this force, in N, a support is drawn hollow. */
    private static final double UNLOADED = 1;

    private final List<Shape> shapes = new ArrayList<>();
    private final UnitSystem units;
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    PlanDrawing(UnitSystem units) {
        this.units = units;
    }

    /** Draws a standing with what its supports carry at rest. */
    Scene draw(Standing standing, Weight weight, Loads loads) {
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
                left - MARGIN, top - MARGIN, right - left + 2 * MARGIN, bottom - top + 2 * MARGIN, shapes);
    }

    private void dolly(DollyFacts dolly) {
        for (DollyOutline.Edge edge : DollyOutline.edges(dolly)) {
            shapes.add(new Shape.Line(Role.STRUCTURE, mm(edge.from().x()), mm(edge.from().y()), mm(edge.to().x()), mm(edge.to().y())));
            reach(edge.from());
            reach(edge.to());
        }
    }

    private void support(Support support, Optional<Carried> carried, double largest) {
        Vec3 at = support.inCarrier();
        reach(at);
        double force = carried.map(Carried::force).orElse(0.0);
        double radius = Math.max(SMALLEST_DISC, LARGEST_DISC * Math.sqrt(Math.max(0, force) / Math.max(largest, 1)));
        Role role = carried.isPresent() && force > UNLOADED ? Role.SUPPORT : Role.SUPPORT_UNLOADED;
        shapes.add(new Shape.Circle(role, mm(at.x()), mm(at.y()), radius));
        boolean upper = at.y() < 0;
        double y = mm(at.y()) + (upper ? -radius - 1.4 * TEXT : radius + TEXT);
        shapes.add(new Shape.Label(Role.TEXT_STRONG, mm(at.x()), y, TEXT, Anchor.MIDDLE, support.name()));
        String number = carried.map(c -> units.text(Amount.force(c.force()))).orElse("not known");
        shapes.add(new Shape.Label(Role.TEXT, mm(at.x()), y + 1.1 * TEXT, TEXT, Anchor.MIDDLE, number));
    }

    private void castor(Vec3 at, Carried castor) {
        reach(at);
        double x = mm(at.x());
        double y = mm(at.y());
        shapes.add(new Shape.Polygon(Role.CASTOR, List.of(new Shape.Point(x - CASTOR, y - CASTOR), new Shape.Point(x + CASTOR, y - CASTOR),
                new Shape.Point(x + CASTOR, y + CASTOR), new Shape.Point(x - CASTOR, y + CASTOR))));
        shapes.add(new Shape.Label(Role.TEXT, x + 1.3 * CASTOR, y + TEXT / 3, 0.8 * TEXT, Anchor.START,
                castor.name() + " " + units.text(Amount.force(castor.force()))));
    }

    private void balance(Vec3 at, double give, String mass) {
        reach(at);
        double x = mm(at.x());
        double y = mm(at.y());
        double r = Math.max(mm(give), SMALLEST_DISC);
        shapes.add(new Shape.Circle(Role.BALANCE, x, y, r));
        shapes.add(new Shape.Line(Role.BALANCE, x - 2 * SMALLEST_DISC, y, x + 2 * SMALLEST_DISC, y));
        shapes.add(new Shape.Line(Role.BALANCE, x, y - 2 * SMALLEST_DISC, x, y + 2 * SMALLEST_DISC));
        shapes.add(new Shape.Label(Role.TEXT_STRONG, x + r + 30, y - 20, TEXT, Anchor.START, "balance point, " + mass));
    }

    private void front() {
        double y = bottom + MARGIN - TEXT;
        shapes.add(new Shape.Line(Role.DIMENSION, left + 6 * TEXT, y, left, y));
        shapes.add(new Shape.Line(Role.DIMENSION, left, y, left + TEXT / 2, y - TEXT / 3));
        shapes.add(new Shape.Line(Role.DIMENSION, left, y, left + TEXT / 2, y + TEXT / 3));
        shapes.add(new Shape.Label(Role.TEXT_STRONG, left + 6.5 * TEXT, y + TEXT / 3, TEXT, Anchor.START, "FRONT"));
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
