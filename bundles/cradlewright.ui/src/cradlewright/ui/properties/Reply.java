package cradlewright.ui.properties;

import cradlewright.model.edit.ShopChange;
import java.util.Optional;

/**
 * What becomes of something that was typed or chosen.
 *
 * @param change what to do; nothing when it is refused or all is so already
 * @param trouble what is wrong with it and how to write it; empty when nothing is
 * @param remark what else there is to say, such as how the words were understood; may be empty
 */
public record Reply(Optional<ShopChange> change, String trouble, String remark) {

    /** Says that nothing is done, and why. */
    public static Reply refused(String trouble) {
        return new Reply(Optional.empty(), trouble, "");
    }

    /** Says that there is nothing to do. */
    public static Reply nothing() {
        return new Reply(Optional.empty(), "", "");
    }

    /** Tells whether nothing is done because something is wrong. */
    public boolean isRefused() {
        return !trouble.isEmpty();
    }
}
