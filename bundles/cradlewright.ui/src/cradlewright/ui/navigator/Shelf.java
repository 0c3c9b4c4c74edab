package cradlewright.ui.navigator;

import cradlewright.model.io.FileKind;

/**
 * All files of one kind, as a row at the top of the tree.
 *
 * @param kind the kind
 */
record Shelf(FileKind kind) {
}
