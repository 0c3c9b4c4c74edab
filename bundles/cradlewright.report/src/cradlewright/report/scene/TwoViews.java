package cradlewright.report.scene;

import cradlewright.report.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A sheet with a thing seen from above, and below that from the left with the same x. An arrow at its top says where the front is, a
 * measure at its foot how large everything is.
 */
public final class TwoViews {

    /** Room round each view in heights of the font. */
    private static final double MARGIN = 1.5;
    /** Room for the heading of a view in heights of the font. */
    private static final double HEADING = 2;
    /** Sheet for what says nowhere how large it is, mm. */
    private static final Box UNKNOWN = new Box(0, 0, 4000, 4000);
    /** Length of the arrow in heights of the font. */
    private static final double ARROW = 3;
    private static final double FEET = 609.6;
    /** How far below the views the words at the foot stand, in heights of the font. */
    private static final double FOOT = 2.6;

    private final UnitSystem units;
    private final double text;

    /**
     * Makes sheets.
     *
     * @param text height of the font, mm of the real thing, above zero
     */
    public TwoViews(UnitSystem units, double text) {
        this.units = units;
        this.text = text;
    }

    /** Draws both views without words at the foot. */
    public Scene draw(String title, Function<Projection, List<Item>> view) {
        return draw(title, "", view);
    }

    /**
     * Draws both views.
     *
     * @param title what the drawing shows, also for people who cannot see it
     * @param foot words at the foot of the sheet; may be empty
     * @param view draws the items of one view
     */
    public Scene draw(String title, String foot, Function<Projection, List<Item>> view) {
        List<Item> items = new ArrayList<>();
        List<Scene.View> views = new ArrayList<>();
        Box sheet = Box.EMPTY;
        double down = 0;
        for (Projection projection : Projection.values()) {
            List<Item> drawn = view.apply(projection);
            Box room = drawn.stream().map(Item::box).reduce(Box.EMPTY, Box::union);
            if (room.isEmpty()) {
                continue;
            }
            Box area = room.grown(MARGIN * text);
            double by = stepped(down + HEADING * text - area.top());
            Box placed = area.moved(0, by);
            views.add(new Scene.View(projection, by, placed));
            drawn.forEach(item -> items.add(item.down(by)));
            double above = placed.top() - HEADING * text;
            sheet = sheet.union(placed).union(new Box(placed.left(), above, placed.right(), placed.top()));
            down = placed.bottom();
        }
        if (sheet.isEmpty()) {
            return new Scene(title, UNKNOWN, views, items);
        }
        for (Scene.View each : views) {
            items.add(heading(each, sheet.left()));
        }
        items.add(front(sheet));
        items.add(scale(sheet));
        if (!foot.isEmpty()) {
            items.add(note("foot", foot, List.of(new Shape.Label(Role.TEXT, sheet.left() + text / 2, sheet.bottom() + FOOT * text, text,
                    Shape.Anchor.START, foot))));
        }
        double bottom = sheet.bottom() + (foot.isEmpty() ? HEADING : FOOT + 0.5) * text;
        Box whole = new Box(sheet.left(), sheet.top(), sheet.right(), bottom);
        return new Scene(title, whole.union(items.stream().map(Item::box).reduce(Box.EMPTY, Box::union)), views, items);
    }

    private double stepped(double down) {
        return Math.ceil(down / text) * text;
    }

    /** The heading of the view from above stands after the arrow. */
    private Item heading(Scene.View view, double left) {
        boolean above = view.projection() == Projection.PLAN;
        String words = above ? "From above (right side up)" : "From the left";
        double x = left + text + (above ? (ARROW + 1) * text + TextSize.width("FRONT", text, true) : 0);
        return note("heading " + view.projection(), words, List.of(new Shape.Label(Role.TEXT_STRONG, x, view.area().top() - text / 2,
                text, Shape.Anchor.START, words)));
    }

    private Item front(Box sheet) {
        double y = sheet.top() + 1.2 * text;
        double x = sheet.left() + text / 2;
        return note("front", "the front is to the left", List.of(new Shape.Line(Role.DIMENSION, x + ARROW * text, y, x, y),
                new Shape.Line(Role.DIMENSION, x, y, x + text / 2, y - text / 3),
                new Shape.Line(Role.DIMENSION, x, y, x + text / 2, y + text / 3),
                new Shape.Label(Role.TEXT_STRONG, x + (ARROW + 0.3) * text, y + text * 0.3, text, Shape.Anchor.START, "FRONT")));
    }

    private Item scale(Box sheet) {
        double y = sheet.bottom() + HEADING / 2 * text;
        double length = units == UnitSystem.METRIC ? 500 : FEET;
        String label = units == UnitSystem.METRIC ? "500 mm" : "2 ft";
        double right = sheet.right() - text;
        return note("scale", "scale: " + label, List.of(new Shape.Line(Role.DIMENSION, right - length, y, right, y),
                new Shape.Line(Role.DIMENSION, right - length, y - text / 3, right - length, y + text / 3),
                new Shape.Line(Role.DIMENSION, right, y - text / 3, right, y + text / 3),
                new Shape.Label(Role.TEXT, right - length - text / 2, y + text / 3, text, Shape.Anchor.END, label)));
    }

    private static Item note(String id, String name, List<Shape> shapes) {
        return new Item(id, Kind.NOTE, Optional.empty(), name, "", shapes);
    }
}
