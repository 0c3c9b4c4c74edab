package cradlewright.ui.parts;

import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.TemporaryLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** The rows of a parts list, below their pieces or all in one. */
final class PartsRows implements ITreeContentProvider {

    private final Supplier<PartsTable> table;
    private boolean grouped = true;

    PartsRows(Supplier<PartsTable> table) {
        this.table = table;
    }

    void group(boolean byPiece) {
        grouped = byPiece;
    }

    boolean grouped() {
        return grouped;
    }

    @Override
    public Object[] getElements(Object input) {
        if (!grouped) {
            return table.get().things().toArray();
        }
        List<Object> all = new ArrayList<>(table.get().car().getPieces());
        all.add(LoadsHeading.HERE);
        return all.toArray();
    }

    @Override
    public Object[] getChildren(Object row) {
        return children(row).toArray();
    }

    /** Returns the rows below a heading. */
    List<? extends EObject> children(Object row) {
        return row instanceof Piece piece ? piece.getParts() : row == LoadsHeading.HERE ? table.get().car().getTemporaryLoads() : List.of();
    }

    @Override
    public Object getParent(Object row) {
        if (!grouped || !PartsTable.isThing(row)) {
            return null;
        }
        return row instanceof TemporaryLoad ? LoadsHeading.HERE : ((EObject) row).eContainer();
    }

    @Override
    public boolean hasChildren(Object row) {
        return !children(row).isEmpty();
    }
}
