package cradlewright.ui.properties;

import cradlewright.model.edit.ShopChange;

/** The page as its fields see it. */
interface Desk {

    /** Says what there is to say about the field that is being edited; an empty reply clears it. */
    void say(Reply reply);

    /** Runs a change. */
    void perform(ShopChange change);
}
