package cradlewright.ui.recovery;

import cradlewright.model.base.FileRoot;
import cradlewright.model.edit.Difference;
import cradlewright.model.edit.KeptCopy;
import java.util.List;
import java.util.Optional;

/**
 * What can be done with one copy that was left.
 *
 * @param copy the copy
 * @param state how it stands to the file
 * @param root what the copy holds; empty when it cannot be understood or used
 * @param kept for taking it up; empty when it cannot be
 * @param differences what differs, when it can be taken up
 * @param why what hinders, in words; empty when nothing does
 */
record CopyRow(UnsavedCopy copy, State state, Optional<FileRoot> root, Optional<KeptCopy> kept, List<Difference> differences,
        String why) {

    /** How a copy stands to its file. */
    enum State {
        /** The file is as it was when the edits were made. */
        FITS,
        /** Nothing of the copy is lost: the file holds the same. */
        SAME,
        /** The file has been changed since. */
        FILE_CHANGED,
        /** The file was never saved. */
        NEW,
        /** The file cannot be read or written, or is gone, or the copy cannot be understood: it can only be put beside it. */
        ONLY_BESIDE
    }
}
