package cradlewright.ui.start;

import cradlewright.ui.look.Picture;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** What the start page shows: whatever shop is open. There is one of it. */
final class StartInput implements IEditorInput {

    static final StartInput ONLY = new StartInput();

    private StartInput() {
    }

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Picture.SHOP.descriptor();
    }

    @Override
    public String getName() {
        return Messages.Start_tab;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return Messages.Start_tabHint;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
