package cradlewright.report.car;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.geometry.Vec3;
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
import java.util.stream.Stream;

/**
 * The pieces that are carried. Files hold only their outline from above, so from the left a piece is as long as its outline and as high as
 * the places on it that somebody measured.
 */
final class Pieces implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        for (PieceFacts piece : carried(sight.standing())) {
            List<Vec3> corners = piece.outline().stream().map(p -> Carriers.toCarrier(p, sight.standing().setup())).toList();
            if (corners.size() > 2) {
                if (pen.projection() == Projection.PLAN) {
                    outline(piece, corners.stream().map(pen::at).toList(), pen, "outline from above");
                } else {
                    side(piece, corners, sight.standing(), pen);
                }
            }
        }
    }

    private static List<PieceFacts> carried(Standing standing) {
        return standing.setup().pieceIds().stream().map(id -> CarFacts.find(standing.car().pieces(), id)).flatMap(Optional::stream)
                .toList();
    }

    private static void outline(PieceFacts piece, List<Shape.Point> corners, Pen pen, String value) {
        Box box = around(corners);
        pen.item(piece.id(), Kind.PIECE, piece.name(), value).edge(Role.OUTLINE, corners)
                .note(new Shape.Point(box.left(), box.top()), 0, 1, Side.RIGHT_BELOW, piece.name());
    }

    private static void side(PieceFacts piece, List<Vec3> corners, Standing standing, Pen pen) {
        List<Shape.Point> heights = measured(piece, standing.car()).map(p -> Carriers.toCarrier(p, standing.setup())).map(pen::at)
                .toList();
        if (heights.isEmpty()) {
            return;
        }
        Box along = around(corners.stream().map(pen::at).toList());
        Box up = around(heights);
        Box both = new Box(along.left(), up.top(), along.right(), up.bottom());
        outline(piece, Shape.Polygon.of(Role.OUTLINE, both).points(), pen, "as long as its outline, as high as the places on it that were "
                + "measured");
    }

    private static Box around(List<Shape.Point> points) {
        return points.stream().map(Box::of).reduce(Box.EMPTY, Box::union);
    }

    private static Stream<Vec3> measured(PieceFacts piece, CarFacts car) {
        List<Optional<Spot>> spots = new ArrayList<>(piece.parts().stream().map(PartFacts::position).toList());
        if (piece.kind() == PieceKind.SHELL) {
            spots.addAll(car.mounts().stream().map(MountFacts::position).toList());
            spots.addAll(car.liftPoints().stream().map(LiftPointFacts::position).toList());
            spots.addAll(car.workPoints().stream().map(WorkPointFacts::position).toList());
        }
        return spots.stream().flatMap(Optional::stream).map(Spot::at);
    }
}
