package cradlewright.diagrams.shared;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.edit.ShopChange;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/**
 * What may be done in a diagram to the things that it shows, each as one change of the shop. Belongs to the thread that owns the shop.
 * Ways and new places are in the axes in which the diagram is drawn, in m; places that things have are as their file says them.
 */
public interface SceneEdits {

    /** Tells whether a thing has a place that can be changed here. */
    boolean movable(EObject thing);

    /** Tells whether a thing can be taken out here. */
    default boolean removable(EObject thing) {
        return movable(thing);
    }

    /**
     * Returns where a thing would be after a move; nothing when it has no place.
     *
     * @param grid places become whole multiples of this along the axes that it moves along, mm; zero for none
     */
    Optional<Position> moved(EObject thing, Vec3 way, double grid);

    /** Returns the change that moves a thing; see {@link #moved}. */
    Optional<ShopChange> move(EObject thing, Vec3 way, double grid);

    /** Returns the change that gives things their twins on the other side; nothing when there is none to give. */
    Optional<ShopChange> mirror(List<EObject> things);

    /** Returns the change that puts things beside the first of them; nothing when there is none to put. */
    Optional<ShopChange> align(List<EObject> things);

    /** Returns the number of a thing as it is shown for typing; nothing when it has none. */
    Optional<String> shown(EObject thing, UnitSystem units);

    /**
     * Returns the change that makes a number what was typed; nothing when the thing has none.
     *
     * @throws cradlewright.quantity.QuantityFormatException when it cannot be read, with how to write it
     */
    Optional<ShopChange> typed(EObject thing, String text, UnitSystem units);

    /**
     * Returns the change that adds a thing; nothing when that cannot be done here.
     *
     * @param sort what a tool of the palette makes
     * @param far the opposite corner, if a size was drawn
     */
    Optional<ShopChange> add(Object sort, Vec3 at, Optional<Vec3> far);
}
