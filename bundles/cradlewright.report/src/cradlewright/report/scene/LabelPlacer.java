package cradlewright.report.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for texts so that no two overlap. Each text first tries the places next to its point, the wished side first; then the same
 * sides farther off, keeping clear of what must stay visible, until one is free. There always is one, since the sheet grows with them.
 */
public final class LabelPlacer {

    /** The sides of a point, in the order in which they are tried after the wished one. */
    public enum Side {
        RIGHT(1, 0), LEFT(-1, 0), ABOVE(0, -1), BELOW(0, 1), RIGHT_ABOVE(1, -1), RIGHT_BELOW(1, 1), LEFT_ABOVE(-1, -1), LEFT_BELOW(-1, 1);

        private final int right;
        private final int down;

        Side(int right, int down) {
            this.right = right;
            this.down = down;
        }
    }

    /** So many distances keep clear of drawn things as well; farther off only of other texts. */
    private static final int CAREFUL_RINGS = 6;

    private final List<Box> texts = new ArrayList<>();
    private final List<Box> things = new ArrayList<>();
    private final double gap;

    /** Makes a placer that keeps that much room between point and text, mm. */
    public LabelPlacer(double gap) {
        this.gap = gap;
    }

    /** Keeps clear of a thing that must stay visible, as far as there is room near a text's point. */
    public void keepClear(Box thing) {
        things.add(thing);
    }

    /**
     * Returns where a text of that size goes.
     *
     * @param point what it is about
     * @param reach how large the thing at the point is, from its middle
     */
    public Box place(Shape.Point point, double reach, double width, double height, Side wished) {
        for (int ring = 0;; ring++) {
            Optional<Box> found = inRing(ring, point, reach, width, height, wished);
            if (found.isPresent()) {
                return found.get();
            }
        }
    }

    /** Returns where a text goes that may be left out: nothing when there is no room near its point. */
    public Optional<Box> placeNear(Shape.Point point, double reach, double width, double height, Side wished) {
        for (int ring = 0; ring < CAREFUL_RINGS; ring++) {
            Optional<Box> found = inRing(ring, point, reach, width, height, wished);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Box> inRing(int ring, Shape.Point point, double reach, double width, double height, Side wished) {
        for (Side side : order(wished)) {
            Box box = beside(point, reach + gap + ring * height / 2, width, height, side);
            if (free(box, ring < CAREFUL_RINGS)) {
                texts.add(box);
                return Optional.of(box);
            }
        }
        return Optional.empty();
    }

    private boolean free(Box box, boolean careful) {
        return texts.stream().noneMatch(box::intersects) && (!careful || things.stream().noneMatch(box::intersects));
    }

    private static List<Side> order(Side wished) {
        List<Side> order = new ArrayList<>(List.of(Side.values()));
        order.remove(wished);
        order.add(0, wished);
        return order;
    }

    private static Box beside(Shape.Point point, double off, double width, double height, Side side) {
        double x = point.x() + side.right * (off + width / 2) - width / 2;
        double y = point.y() + side.down * (off + height / 2) - height / 2;
        return new Box(x, y, x + width, y + height);
    }
}
