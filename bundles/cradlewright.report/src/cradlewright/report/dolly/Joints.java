package cradlewright.report.dolly;

import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.report.Words;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Joints as small squares on the ends that they make fast; round the weakest one a ring, and its number in words. */
final class Joints implements Drawn {

    private static final double HALF = 0.2;
    private static final double RING = 0.55;
    /** How far from the end of its member a joint is drawn, in heights of the font, and over the length of the member. */
    private static final double IN = 0.5;
    private static final double SHARE = 0.3;
    private static final double TEXT = 0.9;

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        Optional<String> weakest = sight.worked().flatMap(stand -> weakest(sight.dolly().joints(), stand));
        for (JointFacts joint : sight.dolly().joints()) {
            List<Shape.Point> places = places(joint, sight, pen);
            if (!places.isEmpty()) {
                draw(joint, places, weakest.filter(joint.id()::equals).isPresent(), sight, pen, words);
            }
        }
    }

    /** The one with the gravest answer, and among equally grave ones with the largest use; nothing when none has a number. */
    private static Optional<String> weakest(List<JointFacts> joints, DollyStand stand) {
        return joints.stream().filter(joint -> stand.use(joint.id()).ratio().isPresent())
                .max(Comparator.comparing((JointFacts joint) -> stand.use(joint.id()).verdict())
                        .thenComparing(joint -> stand.use(joint.id()).ratio().orElseThrow())).map(Fact::id);
    }

    private static List<Shape.Point> places(JointFacts joint, DollySight sight, Pen pen) {
        List<Shape.Point> places = new ArrayList<>();
        for (MemberFacts member : sight.dolly().members()) {
            Band.of(member, sight.dolly(), Optional.empty(), pen).ifPresent(band -> {
                if (member.jointFromId().filter(joint.id()::equals).isPresent()) {
                    places.add(inward(band.from(), band.to(), pen.text()));
                }
                if (member.jointToId().filter(joint.id()::equals).isPresent()) {
                    places.add(inward(band.to(), band.from(), pen.text()));
                }
            });
        }
        return places;
    }

    private static Shape.Point inward(Shape.Point end, Shape.Point other, double text) {
        double x = other.x() - end.x();
        double y = other.y() - end.y();
        double length = Math.hypot(x, y);
        double share = length == 0 ? 0 : Math.min(IN * text / length, SHARE);
        return end.moved(share * x, share * y);
    }

    private static void draw(JointFacts joint, List<Shape.Point> places, boolean weakest, DollySight sight, Pen pen, Words words) {
        Optional<Use> use = sight.worked().map(stand -> stand.use(joint.id()));
        String head = weakest ? "weakest joint" : "";
        Pen.ItemPen item = pen.item(joint.id(), Kind.JOINT, "joint " + joint.name(), Words.join(head,
                use.map(u -> u.sentence(words.units())).orElse("")));
        double half = HALF * pen.text();
        for (Shape.Point at : places) {
            item.polygon(Role.JOINT, List.of(at.moved(-half, 0), at.moved(0, -half), at.moved(half, 0), at.moved(0, half)));
            if (weakest) {
                item.draw(new Shape.Circle(Role.BALANCE, at.x(), at.y(), RING * pen.text()));
            }
        }
        if (weakest && pen.projection() == Projection.PLAN) {
            Shape.Point first = places.get(0);
            item.text(first, RING * pen.text(), TEXT, first.y() < 0 ? Side.BELOW : Side.ABOVE,
                    "weakest joint: " + use.orElseThrow().words(), List.of(joint.name()));
        }
    }
}
