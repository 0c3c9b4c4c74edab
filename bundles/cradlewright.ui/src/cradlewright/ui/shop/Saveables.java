package cradlewright.ui.shop;

import cradlewright.model.edit.ShopEvent;
import cradlewright.model.io.ShopFile;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.ui.ISaveablesLifecycleListener;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.SaveablesLifecycleEvent;

/**
 * Lets a part be a source of the files that it shows, for dirty marks, save, save all and the question on closing. An editor passes its one
 * file, the tree of the shop all of them.
 */
public final class Saveables implements ISaveablesSource, WorkingShopListener {

    private final IWorkbenchPart part;
    private final WorkingShop shop;
    private final Supplier<Stream<ShopFile>> files;
    private final Runnable dirtyChanged;
    private final Map<ShopFile, Saveable> saveables = new HashMap<>();
    private final Map<ShopFile, Boolean> dirty = new HashMap<>();

    /**
     * @param part the part, which is an {@link ISaveablesSource} that passes on to this
     * @param shop the open shop
     * @param files the files it shows
     * @param dirtyChanged fires the property change of the part
     */
    public Saveables(IWorkbenchPart part, WorkingShop shop, Supplier<Stream<ShopFile>> files, Runnable dirtyChanged) {
        this.part = part;
        this.shop = shop;
        this.files = files;
        this.dirtyChanged = dirtyChanged;
        shop.addListener(this);
    }

    /** Ends it; called when the part is disposed of. */
    public void dispose() {
        shop.removeListener(this);
    }

    /** Returns whether one of the files wants saving. */
    public boolean isDirty() {
        return Stream.of(getSaveables()).anyMatch(Saveable::isDirty);
    }

    @Override
    public Saveable[] getSaveables() {
        return files.get().map(this::saveable).toArray(Saveable[]::new);
    }

    private Saveable saveable(ShopFile file) {
        return saveables.computeIfAbsent(file, key -> new ShopSaveable(shop, key));
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return getSaveables();
    }

    @Override
    public void changed(ShopEvent event) {
        List<ShopFile> turned = files.get().filter(this::turned).toList();
        if (turned.isEmpty()) {
            return;
        }
        dirtyChanged.run();
        Saveable[] changed = turned.stream().map(this::saveable).toArray(Saveable[]::new);
        ISaveablesLifecycleListener workbench = part.getSite().getService(ISaveablesLifecycleListener.class);
        if (workbench != null) {
            workbench.handleLifecycleEvent(new SaveablesLifecycleEvent(part, SaveablesLifecycleEvent.DIRTY_CHANGED, changed, false));
        }
    }

    private boolean turned(ShopFile file) {
        boolean now = file.state() == ShopFile.State.WRITABLE && shop.stack().isDirty(file);
        Boolean before = dirty.put(file, now);
        return before == null ? now : before != now;
    }
}
