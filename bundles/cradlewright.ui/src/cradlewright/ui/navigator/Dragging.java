package cradlewright.ui.navigator;

import cradlewright.ui.edit.Spot;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.ViewerDropAdapter;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.dnd.TransferData;

/** Moves things by the mouse: among others of their list, or into another thing of the same file that takes them. */
final class Dragging {

    private static final Transfer[] TRANSFERS = {LocalSelectionTransfer.getTransfer()};

    private Dragging() {
    }

    static void install(TreeViewer tree) {
        tree.addDragSupport(DND.DROP_MOVE, TRANSFERS, new DragSourceAdapter() {
            @Override
            public void dragStart(DragSourceEvent event) {
                event.doit = !things(tree.getStructuredSelection()).isEmpty();
                LocalSelectionTransfer.getTransfer().setSelection(tree.getStructuredSelection());
            }

            @Override
            public void dragFinished(DragSourceEvent event) {
                LocalSelectionTransfer.getTransfer().setSelection(null);
            }
        });
        tree.addDropSupport(DND.DROP_MOVE, TRANSFERS, new Drop(tree));
    }

    /** Returns the things chosen, if all rows are things inside files. */
    private static List<EObject> things(IStructuredSelection chosen) {
        List<EObject> things = chosen.stream().filter(EObject.class::isInstance).map(EObject.class::cast)
                .filter(thing -> thing.eContainer() != null).toList();
        return things.size() == chosen.size() ? things : List.of();
    }

    private static final class Drop extends ViewerDropAdapter {

        Drop(TreeViewer tree) {
            super(tree);
            setExpandEnabled(true);
        }

        private static List<EObject> dragged() {
            return LocalSelectionTransfer.getTransfer().getSelection() instanceof IStructuredSelection chosen ? things(chosen) : List.of();
        }

        private Optional<Spot> spot(Object target, int location) {
            List<EObject> things = dragged();
            if (target instanceof Group group) {
                return Optional.of(Spot.endOf(group.owner(), group.list()));
            }
            if (!(target instanceof EObject object)) {
                return Optional.empty();
            }
            return location == LOCATION_ON ? Spot.in(object, things) : Spot.beside(object, location == LOCATION_AFTER, things);
        }

        @Override
        public boolean validateDrop(Object target, int operation, TransferData type) {
            return spot(target, getCurrentLocation()).filter(spot -> spot.accepts(dragged())).isPresent();
        }

        @Override
        public boolean performDrop(Object data) {
            return spot(getCurrentTarget(), getCurrentLocation()).filter(spot -> spot.accepts(dragged()))
                    .filter(spot -> spot.move(dragged()))
                    .isPresent();
        }
    }
}
