package cradlewright.diagrams.shared;

import java.util.List;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.eclipse.gef.ui.parts.GraphicalViewerKeyHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/**
 * Keys of the diagram: arrows move what is selected by 1 mm, with Shift by 10 mm; where nothing can be moved they go to the next item. N
 * and P select the next and the one before in the order of drawing; F2 types numbers.
 */
final class SceneKeys extends GraphicalViewerKeyHandler {

    private static final int FINE = 1;
    private static final int COARSE = 10;

    private final GraphicalViewer viewer;
    private final Runnable type;

    SceneKeys(GraphicalViewer viewer, Runnable type) {
        super(viewer);
        this.viewer = viewer;
        this.type = type;
    }

    @Override
    public boolean keyPressed(KeyEvent event) {
        boolean plain = (event.stateMask & (SWT.CTRL | SWT.ALT)) == 0;
        int by = (event.stateMask & SWT.SHIFT) == 0 ? FINE : COARSE;
        return plain && switch (event.keyCode) {
            case SWT.ARROW_LEFT -> nudge(-by, 0);
            case SWT.ARROW_RIGHT -> nudge(by, 0);
            case SWT.ARROW_UP -> nudge(0, -by);
            case SWT.ARROW_DOWN -> nudge(0, by);
            case SWT.F2 -> typed();
            case 'n' -> step(1);
            case 'p' -> step(-1);
            default -> false;
        } || super.keyPressed(event);
    }

    private boolean typed() {
        type.run();
        return true;
    }

    private boolean nudge(int right, int down) {
        CompoundCommand all = new CompoundCommand();
        for (ItemPart part : Picked.parts(viewer, ItemPart.class)) {
            Command command = part.nudged(right, down);
            if (command != null) {
                all.add(command);
            }
        }
        if (all.isEmpty()) {
            return false;
        }
        viewer.getEditDomain().getCommandStack().execute(all.unwrap());
        return true;
    }

    private boolean step(int by) {
        List<ItemPart> all = ((SheetPart) viewer.getContents()).childParts().stream().map(ItemPart.class::cast).filter(part -> part.thing()
                .isPresent()).toList();
        if (all.isEmpty()) {
            return false;
        }
        List<ItemPart> picked = Picked.parts(viewer, ItemPart.class);
        int at = picked.isEmpty() ? (by > 0 ? -1 : all.size()) : all.indexOf(picked.get(picked.size() - 1));
        ItemPart next = all.get(Math.floorMod(at + by, all.size()));
        viewer.select(next);
        viewer.reveal(next);
        return true;
    }
}
