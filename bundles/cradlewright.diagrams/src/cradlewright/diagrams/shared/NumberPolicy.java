package cradlewright.diagrams.shared;

import cradlewright.quantity.QuantityFormatException;
import cradlewright.ui.words.ReaderUnits;
import java.util.Optional;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.DirectEditPolicy;
import org.eclipse.gef.requests.DirectEditRequest;
import org.eclipse.gef.tools.DirectEditManager;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.widgets.Text;

/** Numbers typed into an item, see {@link SceneEdits#typed}. */
final class NumberPolicy extends DirectEditPolicy {

    private static final int WIDTH = 190;

    /** Opens the field beside an item, if there is a number to type. */
    static void edit(ItemPart part) {
        shown(part).ifPresent(text -> new DirectEditManager(part, TextCellEditor.class, cell -> locate(cell, part)) {
            @Override
            protected void initCellEditor() {
                getCellEditor().setValue(text);
                ((Text) getCellEditor().getControl()).selectAll();
            }
        }.show());
    }

    private static void locate(CellEditor cell, ItemPart part) {
        Text field = (Text) cell.getControl();
        Rectangle room = part.drawn();
        part.getFigure().translateToAbsolute(room);
        int height = field.computeSize(-1, -1).y;
        field.setBounds(room.right(), room.y + (room.height - height) / 2, WIDTH, height);
    }

    private static Optional<String> shown(ItemPart part) {
        return part.thing().flatMap(thing -> part.surface().page().edits().shown(thing, ReaderUnits.current()));
    }

    @Override
    protected Command getDirectEditCommand(DirectEditRequest request) {
        ItemPart part = (ItemPart) getHost();
        try {
            String typed = (String) request.getCellEditor().getValue();
            return part.thing().flatMap(thing -> part.surface().page().edits().typed(thing, typed, ReaderUnits.current()))
                    .map(ShopEdit::new).orElse(null);
        } catch (QuantityFormatException e) {
            part.surface().tell(e.getMessage());
            return null;
        }
    }

    /** The figure shows the number only when it is taken. */
    @Override
    protected void showCurrentEditValue(DirectEditRequest request) {
        getHostFigure().getUpdateManager().performUpdate();
    }
}
