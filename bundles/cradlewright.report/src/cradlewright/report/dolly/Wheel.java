package cradlewright.report.dolly;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Shape;
import java.util.Optional;

/**
 * The wheel of a castor as it is drawn, turned so that it trails rearward; lengths in mm.
 *
 * @param known whether anybody wrote down how large it is
 * @param trail from the axis about which it swivels to that of the wheel; zero for a fixed one
 */
public record Wheel(double diameter, boolean known, double trail) {

    private static final double MM = 1000;
    /** Wheel that is drawn where nobody wrote down how large it is, mm. */
    private static final double UNKNOWN = 100;
    /** Breadth of a wheel over its diameter, for the drawing only. */
    private static final double BREADTH = 0.3;

    /** Returns the wheel of a castor. */
    public static Wheel of(CastorFacts castor, Optional<CastorType> type) {
        Optional<Double> diameter = type.flatMap(CastorType::wheelDiameter).map(value -> MM * value.si());
        double trail = MM * type.filter(t -> castor.swivel()).flatMap(CastorType::lead).map(Value::si).orElse(0.0);
        return new Wheel(diameter.orElse(UNKNOWN), diameter.isPresent(), trail);
    }

    /** Returns its outline from above. */
    public Box fromAbove(Shape.Point middle) {
        double half = halfBreadth();
        return new Box(middle.x() + trail - diameter / 2, middle.y() - half, middle.x() + trail + diameter / 2, middle.y() + half);
    }

    /** Returns half its breadth. */
    public double halfBreadth() {
        return BREADTH * diameter / 2;
    }

    /** Returns the radius of the circle that it sweeps while it swivels. */
    public double sweep() {
        return Math.hypot(trail + diameter / 2, halfBreadth());
    }

    /** Returns its axle seen from the left; the floor lies at zero. */
    public Shape.Point axle(Shape.Point middle) {
        return new Shape.Point(middle.x() + trail, -diameter / 2);
    }
}
