package cradlewright.report.scene;

import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws the items of one view. Texts are gathered and find their places when everything else is drawn, so that none lies over another
 * and those asked for first lie nearest to what they are about.
 */
public final class Pen {

    /** Room between lines of a text over the height of the font. */
    private static final double LINE = 1.15;
    /** A text farther off than this, in heights of the font, gets a line that leads to what it is about. */
    private static final double NEAR = 1.5;
    private static final double GAP = 0.25;
    private static final double THIN = 0.1;

    private final Projection projection;
    private final double text;
    private final List<ItemPen> items = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final LabelPlacer placer;
    private Box reach = Box.EMPTY;

    private record Text(ItemPen item, Shape.Point point, double reach, double height, LabelPlacer.Side side, List<Line> lines,
            boolean spare) {
    }

    private record Line(Role role, String words) {
    }

    /**
     * Takes up a pen.
     *
     * @param text height of the font, mm on the sheet
     */
    public Pen(Projection projection, double text) {
        this.projection = projection;
        this.text = text;
        this.placer = new LabelPlacer(GAP * text);
    }

    /** Returns from where things are seen. */
    public Projection projection() {
        return projection;
    }

    /** Returns the height of the font, mm. */
    public double text() {
        return text;
    }

    /** Returns where a place in m lies in this view. */
    public Shape.Point at(Vec3 place) {
        return projection.at(place);
    }

    /** Begins an item; it lies over those begun before. */
    public ItemPen item(String id, Kind kind, String name, String value) {
        ItemPen item = new ItemPen(id, kind, name, value);
        items.add(item);
        return item;
    }

    /** Returns the room that everything drawn so far takes, without texts. */
    public Box reach() {
        return reach;
    }

    /** Finds room for the texts and returns the items. */
    public List<Item> finish() {
        texts.forEach(this::place);
        texts.clear();
        return items.stream().map(ItemPen::item).toList();
    }

    private void place(Text wanted) {
        double height = wanted.height;
        double width = wanted.lines.stream().mapToDouble(line -> TextSize.width(line.words, height, line.role == Role.TEXT_STRONG)).max()
                .orElse(0);
        double tall = height * (LINE * (wanted.lines.size() - 1) + TextSize.ASCENT + TextSize.DESCENT);
        Optional<Box> found = wanted.spare ? placer.placeNear(wanted.point, wanted.reach, width, tall, wanted.side)
                : Optional.of(placer.place(wanted.point, wanted.reach, width, tall, wanted.side));
        found.ifPresent(box -> write(wanted, box));
    }

    private static void write(Text wanted, Box box) {
        double height = wanted.height;
        lead(wanted, box);
        double middle = (box.left() + box.right()) / 2;
        double y = box.top() + TextSize.ASCENT * height;
        for (Line line : wanted.lines) {
            wanted.item.shapes.add(new Shape.Label(line.role, middle, y, height, Shape.Anchor.MIDDLE, line.words));
            y += LINE * height;
        }
    }

    private static void lead(Text wanted, Box box) {
        double x = Math.max(box.left(), Math.min(box.right(), wanted.point.x()));
        double y = Math.max(box.top(), Math.min(box.bottom(), wanted.point.y()));
        double dx = x - wanted.point.x();
        double dy = y - wanted.point.y();
        double length = Math.hypot(dx, dy);
        if (length > wanted.reach + NEAR * wanted.height) {
            double from = wanted.reach / length;
            wanted.item.shapes.add(new Shape.Line(Role.DIMENSION, wanted.point.x() + from * dx, wanted.point.y() + from * dy, x, y));
        }
    }

    /** Draws one item; not to be used any more once the view is finished. */
    public final class ItemPen {

        private final String id;
        private final Kind kind;
        private final String name;
        private final String value;
        private final List<Shape> shapes = new ArrayList<>();

        private ItemPen(String id, Kind kind, String name, String value) {
            this.id = id;
            this.kind = kind;
            this.name = name;
            this.value = value;
        }

        private Item item() {
            return new Item(id, kind, Optional.of(projection), name, value, shapes);
        }

        /** Draws a shape that lies in this view. */
        public ItemPen draw(Shape shape) {
            shapes.add(shape);
            reach = reach.union(shape.box());
            return this;
        }

        /** Draws a shape that texts keep clear of. */
        public ItemPen drawClear(Shape shape) {
            placer.keepClear(shape.box());
            return draw(shape);
        }

        /** Draws a line. */
        public ItemPen line(Role role, Shape.Point from, Shape.Point to) {
            return draw(new Shape.Line(role, from, to));
        }

        /** Draws a circle. */
        public ItemPen circle(Role role, Shape.Point at, double radius) {
            return draw(new Shape.Circle(role, at.x(), at.y(), radius));
        }

        /** Draws a closed polygon whose upright and level edges texts keep clear of. */
        public ItemPen edge(Role role, List<Shape.Point> points) {
            for (int i = 0; i < points.size(); i++) {
                Box along = Box.of(points.get(i)).union(Box.of(points.get((i + 1) % points.size())));
                if (Math.min(along.width(), along.height()) < THIN * text) {
                    placer.keepClear(along.grown(THIN * text));
                }
            }
            return polygon(role, points);
        }

        /** Draws a closed polygon. */
        public ItemPen polygon(Role role, List<Shape.Point> points) {
            return draw(new Shape.Polygon(role, points));
        }

        /** Draws an upright rectangle. */
        public ItemPen box(Role role, Box box) {
            return draw(Shape.Polygon.of(role, box));
        }

        /**
         * Asks for a text of one or more lines near a point; the first line is read first.
         *
         * @param reach how large the thing at the point is, from its middle
         * @param size height over that of the font
         */
        public ItemPen text(Shape.Point point, double reach, double size, LabelPlacer.Side side, String strong, List<String> more) {
            List<Line> lines = new ArrayList<>(List.of(new Line(Role.TEXT_STRONG, strong)));
            for (String words : more) {
                lines.add(new Line(Role.TEXT, words));
            }
            texts.add(new Text(this, point, reach, size * text, side, lines, false));
            return this;
        }

        /** Asks for a plain text of one line near a point, which is left out where there is no room: its words stand in the item anyhow. */
        public ItemPen note(Shape.Point point, double reach, double size, LabelPlacer.Side side, String words) {
            texts.add(new Text(this, point, reach, size * text, side, List.of(new Line(Role.TEXT, words)), true));
            return this;
        }
    }
}
