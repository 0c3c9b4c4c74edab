package cradlewright.ui.shop;

/** Implemented by editors, or given by their adapter: selects one of the objects that they show and scrolls to it. */
@FunctionalInterface
public interface ShowsObject {

    /** Shows the object with this id; does nothing when it is not among those shown. */
    void show(String objectId);
}
