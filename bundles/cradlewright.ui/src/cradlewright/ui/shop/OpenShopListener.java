package cradlewright.ui.shop;

/** Hears on the owner thread which shop is open, for views that stay when it is exchanged. */
public interface OpenShopListener {

    /** The shop is open now. */
    void opened(WorkingShop shop);

    /** The shop is about to be put away; nothing of it may be kept. */
    void closing(WorkingShop shop);
}
