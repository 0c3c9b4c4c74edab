package cradlewright.ui.shop;

import cradlewright.ui.Messages;

/** What is said above answers that are not those of the latest edit. */
public final class StateWords {

    private StateWords() {
    }

    /** Returns the sentence; empty while the answers are current. */
    public static String of(WorkingShop shop) {
        return switch (shop.state()) {
            case CURRENT -> "";
            case WORKING_OUT -> shop.answers().isPresent() ? Messages.Checking_again : Messages.Checking_first;
            case STOPPED -> Messages.Checking_stopped;
            case HELD_BACK -> shop.heldBack();
        };
    }
}
