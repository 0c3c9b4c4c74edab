package cradlewright.analysis.checks;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.load.TipAnswer.Question;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.SupportEdge;
import cradlewright.mechanics.tipping.SupportPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The lines over which a visit would tip: those through the outermost supports, and with a dolly those through its castors or feet on
 * the floor. With castors that swivel the lines lie inward by the largest swivel lead, which is how near the wheels may come when all of
 * them turn inward; {@link TipOnFloor} rests on the same. Nothing for what hangs in straps or stands on fewer than three points that
 * span an area.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record TippingLinesKey(String carId, String visitId) implements Key<List<TippingLine>> {

    /** Sine of the angle between two lines below which they run alike and have no corner between them. */
    private static final double PARALLEL = 1e-9;

    @Override
    public List<TippingLine> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        if (standing.isEmpty() || standing.get().carrier() == CarrierKind.STRAPS) {
            return List.of();
        }
        List<TippingLine> lines = new ArrayList<>(lines(Question.ON_SUPPORTS, supports(standing.get()), 0));
        standing.get().dolly().ifPresent(dolly -> {
            TipOnFloor floor = TipOnFloor.of(standing.get(), dolly, reader);
            lines.addAll(lines(Question.ON_FLOOR, floor.points(), floor.inward()));
        });
        return List.copyOf(lines);
    }

    private static List<Vec3> supports(Standing standing) {
        return Stream.concat(standing.supports().stream().filter(Support::holdsUp).map(Support::inCarrier),
                standing.fittedProps().stream().map(PropFacts::at).flatMap(Optional::stream)).toList();
    }

    /** Returns the edges of the hull of some points, moved inward; none when nothing is left between them. */
    static List<TippingLine> lines(Question question, List<Vec3> points, double inward) {
        List<SupportEdge> edges = SupportPolygon.of(points).edges();
        double height = points.stream().mapToDouble(Vec3::z).min().orElse(0);
        List<TippingLine> lines = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            SupportEdge edge = edges.get(i);
            Vec3 from = corner(edges.get((i + edges.size() - 1) % edges.size()), edge, inward, height);
            Vec3 to = corner(edge, edges.get((i + 1) % edges.size()), inward, height);
            Vec3 along = Vec3.UP.cross(edge.outward());
            if (to.minus(from).dot(along) <= 0) {
                return List.of();
            }
            lines.add(new TippingLine(question, from, to));
        }
        return lines;
    }

    /** Where two edges meet after both have moved inward: both distances from that corner are the same. */
    private static Vec3 corner(SupportEdge before, SupportEdge after, double inward, double height) {
        Vec3 a = before.outward();
        Vec3 b = after.outward();
        double turn = a.x() * b.y() - a.y() * b.x();
        if (Math.abs(turn) < PARALLEL) {
            return raised(after.start().minus(b.times(inward)), height);
        }
        double c = a.dot(before.start()) - inward;
        double d = b.dot(after.start()) - inward;
        return new Vec3((c * b.y() - d * a.y()) / turn, (a.x() * d - b.x() * c) / turn, height);
    }

    private static Vec3 raised(Vec3 at, double height) {
        return new Vec3(at.x(), at.y(), height);
    }
}
