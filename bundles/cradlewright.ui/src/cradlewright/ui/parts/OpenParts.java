package cradlewright.ui.parts;

import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.ui.shop.ChosenCar;
import cradlewright.ui.shop.WorkingShop;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the parts list of the car that is chosen: in the tree, on the start page, or in the editor in front. */
public final class OpenParts extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        WorkingShop shop = WorkingShop.current().orElseThrow();
        Optional<ShopFile> file = chosen(HandlerUtil.getActivePart(event), shop).or(() -> selected(event, shop))
                .or(() -> inFront(window, shop));
        if (file.isPresent()) {
            PartsEditor.open(window.getActivePage(), file.get());
        } else {
            MessageDialog.openInformation(window.getShell(), Messages.Editor_parts, Messages.Editor_chooseCar);
        }
        return null;
    }

    /** The start page goes first when somebody is in it: what was selected elsewhere before still counts as selected. */
    private static Optional<ShopFile> chosen(IWorkbenchPart part, WorkingShop shop) {
        return part instanceof ChosenCar chooser ? chooser.chosenCar().flatMap(shop::fileOf) : Optional.empty();
    }

    private static Optional<ShopFile> selected(ExecutionEvent event, WorkingShop shop) {
        Object first = HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection several ? several.getFirstElement() : null;
        EObject object = first == null ? null : Adapters.adapt(first, EObject.class);
        return object == null ? Optional.empty() : shop.folder().fileOf(EcoreUtil.getRootContainer(object)).filter(OpenParts::ofCar);
    }

    private static Optional<ShopFile> inFront(IWorkbenchWindow window, WorkingShop shop) {
        IEditorPart editor = window.getActivePage().getActiveEditor();
        return editor != null && editor.getEditorInput() instanceof IFileEditorInput input
                ? shop.fileOf(input.getFile()).filter(OpenParts::ofCar) : chosen(editor, shop);
    }

    private static boolean ofCar(ShopFile file) {
        return file.root().filter(Car.class::isInstance).isPresent();
    }
}
