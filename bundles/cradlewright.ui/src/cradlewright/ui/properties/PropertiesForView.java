package cradlewright.ui.properties;

import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.views.properties.IPropertySheetPage;

/** Gives the properties view our page for every part that has none of its own. */
public final class PropertiesForView implements IAdapterFactory {

    @Override
    public <T> T getAdapter(Object view, Class<T> type) {
        return type == IPropertySheetPage.class ? type.cast(new PropertiesPage()) : null;
    }

    @Override
    public Class<?>[] getAdapterList() {
        return new Class<?>[] {IPropertySheetPage.class};
    }
}
