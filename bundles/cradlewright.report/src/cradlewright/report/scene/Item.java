package cradlewright.report.scene;

import java.util.List;
import java.util.Optional;

/**
 * One thing of a drawing, which can be pointed at as a whole.
 *
 * @param id of the object it stands for; several items of one object differ in kind or view
 * @param kind what sort of thing
 * @param view the view it lies in; nothing for what belongs to the sheet
 * @param name what people call it, with what it is: "body mount 2L"
 * @param value its numbers in one line; may be empty
 * @param shapes in the order of drawing
 */
public record Item(String id, Kind kind, Optional<Projection> view, String name, String value, List<Shape> shapes) {

    /** Copies the list. */
    public Item {
        shapes = List.copyOf(shapes);
    }

    /** What tells one item of a scene from another. */
    public record Key(String id, Kind kind, Optional<Projection> view) {
    }

    /** Returns what tells it from the others. */
    public Key key() {
        return new Key(id, kind, view);
    }

    /** Returns the room its shapes take. */
    public Box box() {
        return shapes.stream().map(Shape::box).reduce(Box.EMPTY, Box::union);
    }

    /** Returns the same lower on the sheet. */
    public Item down(double by) {
        return new Item(id, kind, view, name, value, shapes.stream().map(shape -> shape.moved(0, by)).toList());
    }

    /** Returns name and numbers in one sentence. */
    public String description() {
        return value.isEmpty() ? name : name + ": " + value;
    }
}
