package cradlewright.ui.wizards;

import cradlewright.model.base.FileRoot;
import cradlewright.model.edit.ChangeRefused;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFile;
import cradlewright.model.stock.StockFactory;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts a new file into a shop, fills it by one change that can be taken back, and saves what was changed. */
final class NewFile {

    private NewFile() {
    }

    /**
     * Makes the file.
     *
     * @param root the object at the top, with its id and name and nothing else
     * @param others further files that the change fills
     * @throws IOException when something could not be saved: it is in the shop still, unsaved
     * @throws ChangeRefused when one of the files cannot be changed
     */
    static ShopFile make(ShopStack stack, FileKind kind, String name, FileRoot root, String label, List<ShopFile> others, Runnable fill)
            throws IOException {
        Set<ShopFile> files = new LinkedHashSet<>(others);
        Optional<ShopFile> closed = others.stream().filter(other -> other.state() != ShopFile.State.WRITABLE).findFirst();
        if (closed.isPresent()) {
            throw new IOException(closed.get().path() + " " + closed.get().state().words());
        }
        ShopFile file = stack.add(kind, name, root);
        files.add(file);
        stack.execute(new ShopChange(label, files, fill));
        for (ShopFile each : files) {
            SaveOutcome outcome = stack.save(each);
            if (outcome.kind() != SaveOutcome.Kind.SAVED) {
                throw new IOException(outcome.message());
            }
        }
        return file;
    }

    /** Returns the file of the stock; one without anything in it is begun when the shop has none. */
    static ShopFile stock(ShopStack stack) {
        return stack.shop().files().stream().filter(file -> file.kind() == FileKind.STOCK).findFirst()
                .orElseGet(() -> stack.add(FileKind.STOCK, "", StockFactory.eINSTANCE.createStock()));
    }
}
