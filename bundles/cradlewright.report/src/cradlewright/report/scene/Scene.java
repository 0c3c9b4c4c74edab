package cradlewright.report.scene;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A drawing.
 *
 * @param title what it shows, also for people who cannot see it
 * @param sheet the sheet in mm of the real thing
 * @param views what is seen from where, from top to bottom
 * @param items in the order of drawing; no two have the same key
 */
public record Scene(String title, Box sheet, List<View> views, List<Item> items) {

    /** Copies the lists. */
    public Scene {
        views = List.copyOf(views);
        items = List.copyOf(items);
    }

    /**
     * A view on the sheet.
     *
     * @param projection from where
     * @param down how far it lies down the sheet: y of its zero, mm
     * @param area the room it takes on the sheet
     */
    public record View(Projection projection, double down, Box area) {

        /** Returns the point of the sheet on which a place in m lies. */
        public Shape.Point at(Vec3 place) {
            return projection.at(place).moved(0, down);
        }
    }

    /** Returns the shapes of all items in the order of drawing. */
    public List<Shape> shapes() {
        return items.stream().flatMap(item -> item.shapes().stream()).toList();
    }

    /** Returns the view from there. */
    public Optional<View> view(Projection projection) {
        return views.stream().filter(view -> view.projection() == projection).findFirst();
    }
}
