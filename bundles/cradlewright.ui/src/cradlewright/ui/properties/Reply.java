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
record Reply(Optional<ShopChange> change, String trouble, String remark) {

    static Reply refused(String trouble) {
        return new Reply(Optional.empty(), trouble, "");
    }

    static Reply nothing() {
        return new Reply(Optional.empty(), "", "");
    }

    boolean isRefused() {
        return !trouble.isEmpty();
    }
}
