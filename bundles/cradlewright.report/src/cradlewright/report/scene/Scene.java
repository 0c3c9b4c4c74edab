package cradlewright.report.scene;

import java.util.List;

/**
 * A drawing.
 *
 * @param title what it shows, also for people who cannot see it
 * @param width of the sheet in mm of the real thing
 * @param height of the sheet in mm of the real thing
 * @param left x of the left edge
 * @param top y of the upper edge
 * @param shapes in the order of drawing
 */
public record Scene(String title, double left, double top, double width, double height, List<Shape> shapes) {

    /** Copies the list. */
    public Scene {
        shapes = List.copyOf(shapes);
    }
}
