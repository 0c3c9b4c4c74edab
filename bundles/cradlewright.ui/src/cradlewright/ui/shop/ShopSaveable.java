package cradlewright.ui.shop;

import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import java.io.IOException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.Saveable;

/** One file of the open shop as the workbench saves it; equal for whoever shows the file, so it is asked about and saved once. */
final class ShopSaveable extends Saveable {

    private final WorkingShop shop;
    private final ShopFile file;

    ShopSaveable(WorkingShop shop, ShopFile file) {
        this.shop = shop;
        this.file = file;
    }

    @Override
    public boolean isDirty() {
        return file.state() == ShopFile.State.WRITABLE && shop.stack().isDirty(file);
    }

    /** Saves the file; throws what the person has to know when it was not saved where it belongs. */
    @Override
    public void doSave(IProgressMonitor monitor) throws CoreException {
        SaveOutcome outcome;
        try {
            outcome = shop.stack().save(file);
        } catch (IOException e) {
            throw new CoreException(Status.error(NLS.bind(Messages.Save_diskRefuses, file.path(), e.getMessage()), e));
        }
        if (outcome.kind() != SaveOutcome.Kind.SAVED) {
            throw new CoreException(Status.error(outcome.message()));
        }
    }

    @Override
    public String getName() {
        return file.path();
    }

    @Override
    public String getToolTipText() {
        return file.path();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return type == IFile.class || type == IResource.class ? type.cast(shop.resource(file)) : super.getAdapter(type);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ShopSaveable saveable && saveable.file == file;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(file);
    }
}
