package cradlewright.ui.shop;

import cradlewright.model.edit.ShopEvent;

/** Hears what happens to the shop that is open, on the owner thread. Must not change the shop. */
public interface WorkingShopListener {

    /** Objects changed, or a file was saved; the snapshot is that after the event. */
    default void changed(ShopEvent event) {
    }

    /** The answers are new, are now older than the snapshot, or are not worked out any more. */
    default void answered() {
    }
}
