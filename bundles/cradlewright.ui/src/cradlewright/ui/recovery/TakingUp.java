package cradlewright.ui.recovery;

import cradlewright.model.edit.KeptCopy;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.WholeFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Gives back what copies hold: into the shop as unsaved edits, or into files beside those of the shop. */
final class TakingUp {

    private static final String BESIDE = ".unsaved";

    private final ShopStack stack;

    TakingUp(ShopStack stack) {
        this.stack = stack;
    }

    /**
     * Gives copies back.
     *
     * @param besideWhenChanged whether copies of files that changed since go beside these instead of into them
     * @return the files that were written beside others
     * @throws IOException when a file cannot be written; nothing was changed in the shop then
     */
    List<Path> run(List<CopyRow> rows, boolean besideWhenChanged) throws IOException {
        List<Path> beside = new ArrayList<>();
        List<KeptCopy> into = new ArrayList<>();
        List<CopyRow> fresh = new ArrayList<>();
        for (CopyRow row : rows) {
            switch (row.state()) {
                case SAME -> { }
                case NEW -> fresh.add(row);
                case FITS -> into.add(row.kept().orElseThrow());
                case FILE_CHANGED -> {
                    if (besideWhenChanged) {
                        beside.add(beside(row.copy()));
                    } else {
                        into.add(row.kept().orElseThrow());
                    }
                }
                case ONLY_BESIDE -> beside.add(beside(row.copy()));
            }
        }
        fresh.forEach(row -> stack.add(row.copy().kind(), name(row.copy()), row.root().orElseThrow()));
        if (!into.isEmpty()) {
            stack.execute(KeptCopy.takeUp(Messages.TakeUp_label, stack.shop(), into));
        }
        return beside;
    }

    private static String name(UnsavedCopy copy) {
        String path = copy.path();
        return path.substring(copy.kind().folder().length(), path.length() - copy.kind().extension().length());
    }

    private Path beside(UnsavedCopy copy) throws IOException {
        Path file = stack.shop().directory().resolve(copy.path());
        Path free = WholeFile.free(file.resolveSibling(file.getFileName() + BESIDE));
        WholeFile.write(free, copy.text());
        return free;
    }
}
