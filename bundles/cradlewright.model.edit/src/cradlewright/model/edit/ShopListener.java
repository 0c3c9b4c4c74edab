package cradlewright.model.edit;

/** Hears what happened to a shop, on the thread that owns it, when the objects are consistent again. */
@FunctionalInterface
public interface ShopListener {

    /** Called after the event; must not change the shop. */
    void happened(ShopEvent event);
}
