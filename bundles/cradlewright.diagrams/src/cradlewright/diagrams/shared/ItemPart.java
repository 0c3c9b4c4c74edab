package cradlewright.diagrams.shared;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

/** One item of the drawing: can be selected, moved, typed into and pointed at as far as its kind allows. */
public final class ItemPart extends TypedPart<SceneNode> {

    private final SceneSurface surface;

    ItemPart(SceneNode node, SceneSurface surface) {
        super(node);
        this.surface = surface;
    }

    /** Returns the object of the shop that it stands for; nothing for what is only drawn. */
    public Optional<EObject> thing() {
        return surface.page().shop().folder().find(model().item().id());
    }

    SceneSurface surface() {
        return surface;
    }

    /** Returns where the drawn things of the item lie, without its texts. */
    Rectangle drawn() {
        return ((SceneFigure) getFigure()).drawn();
    }

    /** Returns the change that moves it by so many mm on the sheet, or null when it cannot be moved. */
    Command nudged(double right, double down) {
        return ((MovePolicy) getEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE)).command(model().item().view().map(view -> view.way(right, down))
                .orElse(Vec3.ZERO), 0);
    }

    /** Marks it as another view of something that is selected. */
    void link(boolean on) {
        ((SceneFigure) getFigure()).link(on);
    }

    @Override
    protected IFigure createFigure() {
        return new SceneFigure(model().item(), surface.painter(), surface::zoom);
    }

    @Override
    protected void refreshVisuals() {
        ((SceneFigure) getFigure()).show(model().item());
        Label words = new Label(model().item().description());
        words.setForegroundColor(surface.paints().text());
        words.setBackgroundColor(surface.paints().ground());
        words.setOpaque(true);
        getFigure().setToolTip(words);
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.DIRECT_EDIT_ROLE, new NumberPolicy());
    }

    @Override
    public void performRequest(Request request) {
        if (RequestConstants.REQ_DIRECT_EDIT.equals(request.getType()) || RequestConstants.REQ_OPEN.equals(request.getType())) {
            NumberPolicy.edit(this);
        } else {
            super.performRequest(request);
        }
    }

    @Override
    protected <T> T adapted(Class<T> type) {
        boolean properties = type.getPackageName().startsWith("org.eclipse.ui.views.properties");
        return type == EObject.class ? type.cast(thing().orElse(null))
                : properties ? thing().map(thing -> Adapters.adapt(thing, type)).orElse(null) : null;
    }

    @Override
    protected AccessibleEditPart getAccessibleEditPart() {
        return new AccessibleGraphicalEditPart() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = model().item().name();
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = model().item().description();
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = model().item().value();
            }
        };
    }
}
