package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import cradlewright.model.edit.ShopChange;
import cradlewright.report.scene.Palette;
import cradlewright.report.scene.SvgPainter;
import cradlewright.ui.edit.Deleting;
import cradlewright.ui.edit.Edits;
import cradlewright.ui.words.Nouns;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.actions.ActionFactory;

/** What can be done in the diagram by menus and bars. */
final class SceneActions {

    private final ScenePage<?> page;
    private final GraphicalViewer viewer;
    private final IAction snap = new Action(Messages.Action_snap, IAction.AS_CHECK_BOX) {
    };

    SceneActions(ScenePage<?> page, GraphicalViewer viewer) {
        this.page = page;
        this.viewer = viewer;
        snap.setImageDescriptor(Pictures.GRID.descriptor());
        snap.setChecked(true);
    }

    /** Tells whether moves go to whole steps. */
    boolean snaps() {
        return snap.isChecked();
    }

    /** Puts the actions of the diagram's own bar and menu into one. */
    void fill(IContributionManager bar, List<IAction> views) {
        views.forEach(bar::add);
        bar.add(new Separator());
        bar.add(snap);
        bar.add(new DiagramAction(Messages.Action_mirror, Pictures.MIRROR.descriptor(), this::mirror));
        bar.add(new DiagramAction(Messages.Action_align, Pictures.ALIGN.descriptor(), this::align));
        bar.add(new Separator());
        bar.add(new DiagramAction(Messages.Action_export, Pictures.SAVE_PICTURE.descriptor(), this::export));
    }

    /** Returns the menu of the sheet. */
    MenuManager menu(List<IAction> views) {
        MenuManager menu = new MenuManager();
        menu.add(new DiagramAction(Messages.Action_type, null, this::type));
        menu.add(new DiagramAction(Messages.Action_delete, null, this::delete));
        menu.add(new Separator());
        fill(menu, views);
        return menu;
    }

    /** Returns the actions that menus of the window hand on to the diagram. */
    List<IAction> forWindow() {
        return List.of(new DiagramAction(ActionFactory.DELETE.getId(), this::delete),
                new DiagramAction(ActionFactory.SELECT_ALL.getId(), this::selectAll),
                new DiagramAction(ActionFactory.PRINT.getId(), () -> ScenePrint.ask(shell(), page.scene(), family())));
    }

    /** Opens the field for numbers of what is selected. */
    void type() {
        List<ItemPart> picked = Picked.parts(viewer, ItemPart.class);
        if (!picked.isEmpty()) {
            NumberPolicy.edit(picked.get(picked.size() - 1));
        }
    }

    private Shell shell() {
        return viewer.getControl().getShell();
    }

    private static String family() {
        return JFaceResources.getDefaultFont().getFontData()[0].getName();
    }

    private List<EObject> things(Predicate<EObject> wanted) {
        return Picked.parts(viewer, ItemPart.class).stream().map(ItemPart::thing).flatMap(Optional::stream).filter(wanted).distinct()
                .toList();
    }

    private List<EObject> things() {
        return things(page.edits()::movable);
    }

    private void delete() {
        List<EObject> out = things(page.edits()::removable);
        if (Deleting.possible(out)) {
            Deleting.delete(shell(), out);
        }
    }

    private void selectAll() {
        List<EditPart> all = ((SheetPart) viewer.getContents()).childParts().stream()
                .filter(part -> part instanceof ItemPart item && item.thing().filter(page.edits()::movable).isPresent()).toList();
        viewer.setSelection(new StructuredSelection(all));
    }

    private void mirror() {
        run(page.edits().mirror(things(page.edits()::removable)));
    }

    /** The thing selected last is the one that the others are put beside. */
    private void align() {
        List<EObject> things = new ArrayList<>(things());
        Collections.reverse(things);
        run(page.edits().align(things));
    }

    private static void run(Optional<ShopChange> change) {
        change.ifPresent(Edits::run);
    }

    private void export() {
        FileDialog dialog = new FileDialog(shell(), SWT.SAVE);
        dialog.setFilterExtensions(new String[] {"*.svg"});
        dialog.setFileName(Nouns.name(page.root()) + ".svg");
        dialog.setOverwrite(true);
        String file = dialog.open();
        if (file != null) {
            try {
                save(Path.of(file));
            } catch (IOException e) {
                MessageDialog.openError(shell(), Messages.Action_export, NLS.bind(Messages.Action_exportFailed, e.getMessage()));
            }
        }
    }

    /** Saves the drawing as it is, dark on white. */
    void save(Path file) throws IOException {
        Files.writeString(file, new SvgPainter().document(page.scene(), Palette.LIGHT), StandardCharsets.UTF_8);
    }
}
