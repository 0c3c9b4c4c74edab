package cradlewright.diagrams.shared;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.resource.ImageDescriptor;

/** An action of a diagram: a name, a picture and what it does. */
public final class DiagramAction extends Action {

    private final Runnable does;

    /** Makes an action for bars and menus of the diagram itself. */
    public DiagramAction(String name, ImageDescriptor picture, Runnable does) {
        super(name, picture);
        setToolTipText(name);
        this.does = does;
    }

    /** Makes an action that a menu of the window shows under its own name. */
    public DiagramAction(String id, Runnable does) {
        this.does = does;
        setId(id);
    }

    @Override
    public void run() {
        does.run();
    }
}
