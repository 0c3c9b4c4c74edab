package cradlewright.report.car;

import cradlewright.analysis.dolly.DollyOutline;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.UnitSystem;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Scene;
import cradlewright.report.scene.Shape;
import cradlewright.report.scene.Shape.Anchor;
import java.util.ArrayList;
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
    /** Room round each view in heights of the font. */
    private static final double MARGIN = 1.5;
    /** Room for the heading of a view in heights of the font. */
    private static final double HEADING = 2;
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
        List<Item> items = new ArrayList<>();
        List<Scene.View> views = new ArrayList<>();
        Box sheet = Box.EMPTY;
        double down = 0;
        for (Projection projection : Projection.values()) {
            List<Item> drawn = view(sight, projection, text);
            Box room = drawn.stream().map(Item::box).reduce(Box.EMPTY, Box::union);
            if (room.isEmpty()) {
                continue;
            }
            Box area = room.grown(MARGIN * text);
            double by = stepped(down + HEADING * text - area.top(), text);
            Box placed = area.moved(0, by);
            views.add(new Scene.View(projection, by, placed));
            drawn.forEach(item -> items.add(item.down(by)));
            items.add(heading(projection, placed, text));
            sheet = sheet.union(placed).union(new Box(placed.left(), placed.top() - HEADING * text, placed.right(), placed.top()));
            down = placed.bottom();
        }
        if (!sheet.isEmpty()) {
            items.add(front(sheet, text));
            items.add(scale(sheet, text));
            sheet = new Box(sheet.left(), sheet.top(), sheet.right(), sheet.bottom() + 2 * HEADING * text);
        }
        return new Scene(title(sight), sheet.isEmpty() ? new Box(0, 0, UNKNOWN_LENGTH, UNKNOWN_LENGTH) : sheet, views, items);
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

    private static double stepped(double down, double text) {
        return Math.ceil(down / text) * text;
    }

    private static Stream<Vec3> places(Standing standing) {
        Stream<Vec3> outlines = standing.setup().pieceIds().stream().map(id -> CarFacts.find(standing.car().pieces(), id))
                .flatMap(Optional::stream).flatMap(piece -> piece.outline().stream()).map(p -> Carriers.toCarrier(p, standing.setup()));
        Stream<Vec3> rails = standing.dolly().stream().flatMap(dolly -> DollyOutline.edges(dolly).stream())
                .flatMap(edge -> Stream.of(edge.from(), edge.to()));
        Stream<Vec3> supports = standing.supports().stream().map(support -> support.inCarrier());
        return Stream.of(outlines, rails, supports).flatMap(s -> s);
    }

    private static Item heading(Projection projection, Box area, double text) {
        String words = projection == Projection.PLAN ? "From above (right side up)" : "From the left";
        return note("heading " + projection, words, List.of(new Shape.Label(Role.TEXT_STRONG, area.left() + text, area.top() - text / 2,
                text, Anchor.START, words)));
    }

    private static Item front(Box sheet, double text) {
        double y = sheet.bottom() + HEADING * text;
        double x = sheet.left() + text;
        return note("front", "the front is to the left", List.of(new Shape.Line(Role.DIMENSION, x + 5 * text, y, x, y),
                new Shape.Line(Role.DIMENSION, x, y, x + text / 2, y - text / 3),
                new Shape.Line(Role.DIMENSION, x, y, x + text / 2, y + text / 3),
                new Shape.Label(Role.TEXT_STRONG, x + 5.5 * text, y + text / 3, text, Anchor.START, "FRONT")));
    }

    private Item scale(Box sheet, double text) {
        double y = sheet.bottom() + HEADING * text;
        double length = words.units() == UnitSystem.METRIC ? 500 : 609.6;
        String label = words.units() == UnitSystem.METRIC ? "500 mm" : "2 ft";
        double right = sheet.right() - text;
        return note("scale", "scale: " + label, List.of(new Shape.Line(Role.DIMENSION, right - length, y, right, y),
                new Shape.Line(Role.DIMENSION, right - length, y - text / 3, right - length, y + text / 3),
                new Shape.Line(Role.DIMENSION, right, y - text / 3, right, y + text / 3),
                new Shape.Label(Role.TEXT, right - length - text / 2, y + text / 3, text, Anchor.END, label)));
    }

    private static Item note(String id, String name, List<Shape> shapes) {
        return new Item(id, Kind.NOTE, Optional.empty(), name, "", shapes);
    }
}
