package cradlewright.report.car;

import cradlewright.analysis.standing.Carriers;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.report.BalanceWords;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The balance point of what is carried: a cross, and a closed line round its give or take, to scale. */
final class BalancePoint implements Drawn {

    private static final double MM = 1000;
    private static final int CORNERS = 36;
    /** Arm of the cross in heights of the font. */
    private static final double ARM = 0.7;

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        sight.weight().estimate().ifPresent(estimate -> draw(estimate, sight, pen, words));
    }

    private static void draw(EstimatedBalance estimate, VisitSight sight, Pen pen, Words words) {
        Vec3 onCar = estimate.balance().point();
        Shape.Point at = pen.at(Carriers.toCarrier(onCar, sight.standing().setup()));
        int missing = sight.weight().missing().size();
        String open = missing == 0 ? "" : "without " + missing + " whose mass or place is missing";
        Pen.ItemPen item = pen.item("balance point", Kind.BALANCE, "balance point of what is carried",
                Words.join(BalanceWords.mass(Optional.of(estimate), words.units()), words.place(onCar), open));
        double arm = ARM * pen.text();
        List<Shape.Point> give = give(estimate, sight, pen, at);
        Box room = give.stream().map(Box::of).reduce(Box.EMPTY, Box::union);
        item.drawClear(new Shape.Polygon(Role.BALANCE, give));
        item.drawClear(new Shape.Line(Role.BALANCE, at.moved(-arm, 0), at.moved(arm, 0)));
        item.drawClear(new Shape.Line(Role.BALANCE, at.moved(0, -arm), at.moved(0, arm)));
        if (pen.projection() == Projection.PLAN) {
            String mass = words.mass(estimate.balance().mass()) + " (give or take " + words.mass(estimate.expanded(Quantity.MASS)) + ")";
            item.text(at, Math.max(arm, Math.max(room.width(), room.height()) / 2), 1, Side.RIGHT, "balance point", List.of(mass));
        }
    }

    /** The curve whose reach along every direction of the view is the give or take there: k = 2, with the covariance of both. */
    private static List<Shape.Point> give(EstimatedBalance estimate, VisitSight sight, Pen pen, Shape.Point at) {
        boolean plan = pen.projection() == Projection.PLAN;
        double turn = plan ? sight.standing().setup().heading() : 0;
        Quantity down = plan ? Quantity.Y : Quantity.Z;
        double a = estimate.standard(Quantity.X);
        double b = a > 0 ? estimate.covariance(Quantity.X, down) / a : 0;
        double c = Math.sqrt(Math.max(0, estimate.covariance(down, down) - b * b));
        List<Shape.Point> points = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double u = EstimatedBalance.COVERAGE * Math.cos(2 * Math.PI * i / CORNERS);
            double v = EstimatedBalance.COVERAGE * Math.sin(2 * Math.PI * i / CORNERS);
            double x = a * u;
            double y = b * u + c * v;
            points.add(at.moved(MM * (x * Math.cos(turn) - y * Math.sin(turn)), -MM * (x * Math.sin(turn) + y * Math.cos(turn))));
        }
        return points;
    }
}
