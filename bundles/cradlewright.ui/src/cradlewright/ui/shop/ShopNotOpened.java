package cradlewright.ui.shop;

/** A folder that cannot be opened as a shop; the message says why and what to do. */
public final class ShopNotOpened extends Exception {

    private static final long serialVersionUID = 1;

    ShopNotOpened(String message, Throwable cause) {
        super(message, cause);
    }
}
