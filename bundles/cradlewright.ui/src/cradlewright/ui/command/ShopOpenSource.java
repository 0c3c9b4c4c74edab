package cradlewright.ui.command;

import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import java.util.Map;
import org.eclipse.ui.AbstractSourceProvider;
import org.eclipse.ui.ISources;

/** Tells menus and commands whether a shop is open. */
public final class ShopOpenSource extends AbstractSourceProvider implements OpenShopListener {

    private static final String VARIABLE = "cradlewright.ui.shopOpen";

    /** Begins to listen. */
    public ShopOpenSource() {
        WorkingShop.addOpenListener(this);
    }

    @Override
    public String[] getProvidedSourceNames() {
        return new String[] {VARIABLE};
    }

    @Override
    public Map<String, Object> getCurrentState() {
        return Map.of(VARIABLE, WorkingShop.current().isPresent());
    }

    @Override
    public void opened(WorkingShop shop) {
        fireSourceChanged(ISources.WORKBENCH, VARIABLE, true);
    }

    @Override
    public void closing(WorkingShop shop) {
        fireSourceChanged(ISources.WORKBENCH, VARIABLE, false);
    }

    @Override
    public void dispose() {
        WorkingShop.removeOpenListener(this);
    }
}
