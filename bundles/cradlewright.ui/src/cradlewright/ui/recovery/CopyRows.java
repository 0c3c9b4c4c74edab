package cradlewright.ui.recovery;

import cradlewright.model.edit.Difference;
import cradlewright.model.edit.KeptCopy;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;

/** Holds copies that were left against the shop as it is. */
final class CopyRows {

    private final ShopFolder shop;

    CopyRows(ShopFolder shop) {
        this.shop = shop;
    }

    /** Judges the copies of a run. */
    List<CopyRow> of(LeftCopies left) {
        return left.copies().stream().map(this::row).toList();
    }

    private CopyRow row(UnsavedCopy copy) {
        ShopFolder alone = ShopFolder.alone(copy.kind(), copy.path(), copy.text());
        ShopFile read = alone.files().get(0);
        if (read.root().isEmpty() || read.state() != ShopFile.State.WRITABLE) {
            return beside(copy, NLS.bind(Messages.Row_notUnderstood, alone.problems().stream().map(ReadProblem::what)
                    .collect(Collectors.joining("; "))));
        }
        Optional<ShopFile> file = shop.files().stream().filter(each -> each.path().equals(copy.path())).findFirst();
        if (file.isEmpty()) {
            return copy.from().isEmpty() ? new CopyRow(copy, CopyRow.State.NEW, read.root(), Optional.empty(), List.of(), "")
                    : beside(copy, Messages.Row_gone);
        }
        if (file.get().state() != ShopFile.State.WRITABLE) {
            return beside(copy, NLS.bind(Messages.Row_fileNotInOrder, file.get().state().words()));
        }
        try {
            KeptCopy kept = new KeptCopy(file.get(), read.root().get());
            List<Difference> differences = kept.differences();
            CopyRow.State state = differences.isEmpty() ? CopyRow.State.SAME
                    : file.get().digest().equals(copy.from()) ? CopyRow.State.FITS : CopyRow.State.FILE_CHANGED;
            return new CopyRow(copy, state, read.root(), Optional.of(kept), differences, "");
        } catch (IllegalArgumentException e) {
            return beside(copy, Messages.Row_otherThing);
        }
    }

    private static CopyRow beside(UnsavedCopy copy, String why) {
        return new CopyRow(copy, CopyRow.State.ONLY_BESIDE, Optional.empty(), Optional.empty(), List.of(), why);
    }
}
