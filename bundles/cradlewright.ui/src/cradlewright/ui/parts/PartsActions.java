package cradlewright.ui.parts;

import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.quantity.Source;
import cradlewright.ui.edit.Deleting;
import cradlewright.ui.edit.Edits;
import cradlewright.ui.look.Picture;
import cradlewright.ui.properties.Reply;
import cradlewright.ui.words.Nouns;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;

/** What can be done to the rows of a parts list from its menus and keys. */
final class PartsActions {

    private final PartsTree tree;
    private final Supplier<PartsTable> table;
    private final ShopFile file;
    private final Consumer<Reply> say;
    private final Turning turning;

    /** Turns ticks of several things. */
    interface Turning {
        /** Ticks things on or off in a stage, asking first where that matters. */
        void turn(Stage stage, List<EObject> things, boolean on);
    }

    PartsActions(PartsTree tree, Supplier<PartsTable> table, ShopFile file, Consumer<Reply> say, Turning turning) {
        this.tree = tree;
        this.table = table;
        this.file = file;
        this.say = say;
        this.turning = turning;
    }

    private PartEdits edits() {
        return new PartEdits(file, table.get().car(), IdSource.secure());
    }

    private boolean open() {
        return file.state() == ShopFile.State.WRITABLE;
    }

    /** Returns what stands in the tool bar of the list. */
    List<IAction> tools() {
        return List.of(addPart(), addLoad(), paste(), copy());
    }

    private IAction addPart() {
        return action(Messages.Menu_part, Picture.PART.descriptor(), open(), () -> piece().ifPresent(piece -> add(edits().part(piece))));
    }

    private IAction addLoad() {
        return action(Messages.Menu_load, Picture.LOAD.descriptor(), open(), () -> add(edits().load()));
    }

    private IAction paste() {
        return action(Messages.Menu_paste, shared(ISharedImages.IMG_TOOL_PASTE), open(), this::pasteCells);
    }

    private IAction copy() {
        return action(Messages.Menu_copy, shared(ISharedImages.IMG_TOOL_COPY), true, this::copyCells);
    }

    private IAction delete() {
        return action(Messages.Menu_delete, shared(ISharedImages.IMG_TOOL_DELETE), Deleting.possible(tree.selected()),
                () -> Deleting.delete(shell(), tree.selected()));
    }

    /** Returns the action for one of the entries of the Edit menu; null when there is none. */
    IAction global(ActionFactory factory) {
        if (factory == ActionFactory.COPY) {
            return forText(Messages.Menu_copy, Text::copy, this::copyCells);
        }
        if (factory == ActionFactory.PASTE) {
            return forText(Messages.Menu_paste, Text::paste, this::pasteCells);
        }
        if (factory == ActionFactory.CUT) {
            return forText(Messages.Menu_delete, Text::cut, () -> { });
        }
        if (factory == ActionFactory.SELECT_ALL) {
            return forText(Messages.Menu_all, Text::selectAll, () -> tree.select(tree.shown()));
        }
        return factory == ActionFactory.DELETE ? forText(Messages.Menu_delete, PartsActions::deleteNext, () -> {
            if (Deleting.possible(tree.selected())) {
                Deleting.delete(shell(), tree.selected());
            }
        }) : null;
    }

    private static void deleteNext(Text text) {
        if (text.getSelectionCount() == 0) {
            int at = text.getCaretPosition();
            text.setSelection(at, Math.min(at + 1, text.getCharCount()));
        }
        text.insert("");
    }

    /** The keys are for the field in which somebody is typing, when somebody is. */
    private IAction forText(String words, Consumer<Text> inField, Runnable otherwise) {
        return action(words, null, true, () -> {
            Control focus = tree.viewer().getTree().getDisplay().getFocusControl();
            if (focus instanceof Text field) {
                inField.accept(field);
            } else {
                otherwise.run();
            }
        });
    }

    /** Fills the menu of the rows for what is selected. */
    void fill(IMenuManager menu) {
        List<EObject> things = tree.selected();
        boolean some = open() && !things.isEmpty();
        menu.add(addPart());
        menu.add(addLoad());
        menu.add(action(Messages.Menu_duplicate, null, some, () -> add(edits().duplicate(things))));
        Optional<PartEdits.Made> twins = some ? edits().twins(things) : Optional.empty();
        menu.add(action(Messages.Menu_mirror, null, twins.isPresent(), () -> twins.ifPresent(this::add)));
        menu.add(delete());
        menu.add(new Separator());
        if (some) {
            menu.add(stages(Messages.Bulk_on, things, true));
            menu.add(stages(Messages.Bulk_off, things, false));
            masses(menu, things);
            pieces(menu, things);
        }
        menu.add(new Separator());
        menu.add(copy());
        menu.add(paste());
        menu.add(new Separator());
        menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    private MenuManager stages(String title, List<EObject> things, boolean on) {
        MenuManager menu = new MenuManager(title);
        table.get().car().getStages().forEach(stage -> menu.add(action(Nouns.name(stage), null,
                things.stream().anyMatch(thing -> Ticks.isOn(stage, thing) != on), () -> turning.turn(stage, things, on))));
        return menu;
    }

    private void masses(IMenuManager menu, List<EObject> things) {
        BulkMass bulk = new BulkMass(table.get(), things);
        MenuManager sources = new MenuManager(Messages.Bulk_source);
        Arrays.stream(Source.values()).forEach(source -> sources.add(action(
                source == Source.UNSTATED ? Messages.Bulk_unstated : source.word(), null, bulk.possible(),
                () -> run(bulk.source(source)))));
        menu.add(sources);
        menu.add(action(Messages.Bulk_give, null, bulk.possible(), () -> giveOrTake(bulk)));
    }

    private void giveOrTake(BulkMass bulk) {
        InputDialog dialog = new InputDialog(shell(), Messages.Editor_parts, Messages.Bulk_giveHow, "", text -> {
            Reply reply = bulk.giveOrTake(text);
            return reply.isRefused() ? reply.trouble() : null;
        });
        if (dialog.open() == Window.OK) {
            run(bulk.giveOrTake(dialog.getValue()));
        }
    }

    private void pieces(IMenuManager menu, List<EObject> things) {
        MenuManager pieces = new MenuManager(Messages.Bulk_move);
        table.get().car().getPieces().forEach(piece -> pieces.add(action(Nouns.name(piece), null,
                edits().move(things, piece).isPresent(), () -> edits().move(things, piece).ifPresent(Edits::run))));
        menu.add(pieces);
    }

    private void run(Reply reply) {
        reply.change().ifPresent(Edits::run);
        say.accept(reply);
    }

    private void add(PartEdits.Made made) {
        if (Edits.run(made.change())) {
            tree.select(made.fresh());
            if (made.fresh().size() == 1) {
                tree.rename(made.fresh().get(0));
            }
        }
    }

    /** Returns the piece of what is selected, else the first one. */
    private Optional<Piece> piece() {
        Object first = tree.viewer().getStructuredSelection().getFirstElement();
        if (first instanceof Piece piece) {
            return Optional.of(piece);
        }
        return first instanceof Part part ? Optional.of((Piece) part.eContainer()) : table.get().car().getPieces().stream().findFirst();
    }

    private void copyCells() {
        List<EObject> things = tree.selected().isEmpty() ? tree.shown() : tree.shown().stream().filter(tree.selected()::contains).toList();
        Clipboard clipboard = new Clipboard(tree.viewer().getTree().getDisplay());
        clipboard.setContents(new Object[] {CopiedRows.of(table.get(), things)}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private void pasteCells() {
        Clipboard clipboard = new Clipboard(tree.viewer().getTree().getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        PastedCells cells = PastedCells.of(text instanceof String words ? words : "");
        if (!open() || !cells.trouble().isEmpty() || piece().isEmpty()) {
            say.accept(Reply.refused(!cells.trouble().isEmpty() ? cells.trouble() : Messages.Paste_nowhere));
            return;
        }
        PasteDialog dialog = new PasteDialog(shell(), file, table.get(), cells, piece().get());
        if (dialog.open() == Window.OK) {
            dialog.plan().change().ifPresent(Edits::run);
        }
    }

    private Shell shell() {
        return tree.viewer().getTree().getShell();
    }

    private static ImageDescriptor shared(String name) {
        return PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(name);
    }

    private static IAction action(String words, ImageDescriptor picture, boolean enabled, Runnable body) {
        Action action = new Action(words) {
            @Override
            public void run() {
                body.run();
            }
        };
        action.setImageDescriptor(picture);
        action.setToolTipText(words.replace("&", ""));
        action.setEnabled(enabled);
        return action;
    }
}
