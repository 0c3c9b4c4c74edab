package cradlewright.report.car;

import cradlewright.analysis.dolly.DollyOutline;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.UnitSystem;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Scene;
import cradlewright.report.scene.TwoViews;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A car on what carries it: from above, and below that from the left with the same x, front to the left. The same records and units always
 * give the same drawing.
 */
public final class CarDrawing {

    /** Texts that fit across the sheet: about nine points on a page. */
    private static final double TEXTS_ACROSS = 62;
    /** Heights of the font are whole multiples of this, mm, so that a small move does not change every text. */
    private static final double TEXT_STEP = 5;
    /** Widest car that the drawing is made for when nothing says how large it is, mm. */
    private static final double UNKNOWN_LENGTH = 4000;

    /** In the order of drawing; a text that is asked for earlier lies nearer to what it is about. */
    private static final List<Drawn> DRAWN = List.of(new Pieces(), new CutZones(), new Rails(), new TippingLines(), new Supports(),
            new LoadBars(), new BalancePoint(), new Castors(), new Props(), new Mounts(), new LiftPoints(), new WorkPoints(),
            new FloorLine());

    private final Words words;

    /** Makes drawings with numbers in these units. */
    public CarDrawing(UnitSystem units) {
        words = new Words(units);
    }

    /** Draws what there is to see of a visit, for a page. */
    public Scene draw(VisitSight sight) {
        return draw(sight, text(sight.standing()));
    }

    /**
     * Draws what there is to see of a visit.
     *
     * @param text height of the font, mm of the real thing, above zero; marks and bars are as large as it says
     */
    public Scene draw(VisitSight sight, double text) {
        return new TwoViews(words.units(), text).draw(title(sight), projection -> view(sight, projection, text));
    }

    private static String title(VisitSight sight) {
        return sight.standing().car().name() + ", " + sight.standing().visit().name() + ", from above and from the left, with what each "
                + "support carries at rest" + (sight.outdated() ? "; loads are being worked out again" : "");
    }

    private List<Item> view(VisitSight sight, Projection projection, double text) {
        Pen pen = new Pen(projection, text);
        DRAWN.forEach(drawn -> drawn.draw(sight, pen, words));
        return pen.finish();
    }

    /** Texts grow with the longest thing, since the whole drawing is fitted to a page or window. */
    private static double text(Standing standing) {
        Box reach = places(standing).map(Projection.PLAN::at).map(Box::of).reduce(Box.EMPTY, Box::union);
        double length = reach.isEmpty() ? UNKNOWN_LENGTH : Math.max(reach.width(), 2 * reach.height());
        return Math.max(TEXT_STEP, Math.ceil(length / TEXTS_ACROSS / TEXT_STEP) * TEXT_STEP);
    }

    private static Stream<Vec3> places(Standing standing) {
        Stream<Vec3> outlines = standing.setup().pieceIds().stream().map(id -> CarFacts.find(standing.car().pieces(), id))
                .flatMap(Optional::stream).flatMap(piece -> piece.outline().stream()).map(p -> Carriers.toCarrier(p, standing.setup()));
        Stream<Vec3> rails = standing.dolly().stream().flatMap(dolly -> DollyOutline.edges(dolly).stream())
                .flatMap(edge -> Stream.of(edge.from(), edge.to()));
        Stream<Vec3> supports = standing.supports().stream().map(support -> support.inCarrier());
        return Stream.of(outlines, rails, supports).flatMap(s -> s);
    }
}
