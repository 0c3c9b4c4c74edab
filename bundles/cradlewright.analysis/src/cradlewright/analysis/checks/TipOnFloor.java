package cradlewright.analysis.checks;

import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a dolly stands on the floor when the question is whether it tips.
 *
 * @param points castors, or feet when they are down, and end props that stand on the floor, in the axes of the dolly, m
 * @param inward how far the castors may come inward as they swivel: the largest lead at its upper end; a lead that nobody wrote down
 *     counts as none, which a check that judges has to refuse
 */
public record TipOnFloor(List<Vec3> points, double inward) {

    /** Copies the list. */
    public TipOnFloor {
        points = List.copyOf(points);
    }

    /** Returns the points of a dolly as it stands. */
    public static TipOnFloor of(Standing standing, DollyFacts dolly, Reader reader) {
        List<Vec3> propped = standing.fittedProps().stream().filter(prop -> prop.nodeId().isEmpty()).map(PropFacts::at)
                .flatMap(Optional::stream).toList();
        if (DollyLoad.onFeet(dolly)) {
            return new TipOnFloor(both(DollyLoad.feet(dolly), propped), 0);
        }
        List<DollyLoad.Wheel> wheels = DollyLoad.wheels(dolly, reader);
        return new TipOnFloor(both(wheels.stream().map(DollyLoad.Wheel::at).toList(), propped), worstLead(wheels));
    }

    private static double worstLead(List<DollyLoad.Wheel> wheels) {
        return wheels.stream().filter(wheel -> wheel.castor().swivel()).flatMap(wheel -> wheel.type().flatMap(CastorType::lead).stream())
                .mapToDouble(Value::high).max().orElse(0);
    }

    private static List<Vec3> both(List<Vec3> points, List<Vec3> propped) {
        return Stream.concat(points.stream(), propped.stream()).toList();
    }
}
