package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.DiagramAction;
import cradlewright.diagrams.shared.Paints;
import cradlewright.diagrams.shared.Picked;
import cradlewright.diagrams.shared.Pictures;
import cradlewright.diagrams.shared.Ruler;
import cradlewright.diagrams.shared.ScenePainter;
import cradlewright.diagrams.shared.SharedGefStack;
import cradlewright.model.fixture.Contact;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Palette;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import cradlewright.ui.file.TroublePage;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.Saveables;
import cradlewright.ui.shop.ShowsObject;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.MouseWheelZoomHandler;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.gef.palette.PaletteRoot;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite.FlyoutPreferences;
import org.eclipse.gef.ui.parts.GraphicalEditorWithFlyoutPalette;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.ide.IGotoMarker;

/**
 * The editor of a car: its visits on what carries them, from above and from the left. All edits go through the one stack of the shop.
 */
public final class CarEditor extends GraphicalEditorWithFlyoutPalette implements ISaveablesSource, ShowsObject, IGotoMarker, CarSurface {

    /** Its id. */
    public static final String ID = "cradlewright.diagrams.car";

    /** A drag goes to whole multiples of this when it snaps, mm. */
    private static final double STEP = 5;
    /** Pixels of a screen for a mm at full size: 96 to the inch. */
    private static final double FULL_SIZE = 96 / 25.4;
    private static final double[] ZOOMS = {0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75, 1, 1.5, 2, FULL_SIZE, 6, 10, 20};
    private static final double CLOSER = 1.25;
    /** Of the zoom at which the drawn things fill the window, the least that texts may leave of it. */
    private static final double LEAST = 0.8;
    /** Height of texts on the screen, px. */
    private static final double TEXT = 12;
    /** Texts keep their height on the sheet while the zoom changes by less than this share. */
    private static final double TEXT_STEP = 1.1;

    private final ScalableFreeformRootEditPart root = new ScalableFreeformRootEditPart();
    private WorkingShop shop;
    private ShopFile file;
    private Saveables saveables;
    private CarPage page;
    private CarActions actions;
    private CarBar bar;
    private Paints paints;
    private ScenePainter painter;
    private Composite ruled;
    private Ruler along;
    private Ruler up;
    /** Whether the whole car is shown, whatever the size of the window, because nobody has zoomed yet. */
    private boolean fitting = true;
    private boolean zooming;

    /** Makes an editor. */
    public CarEditor() {
        setEditDomain(new DefaultEditDomain(this));
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        Optional<WorkingShop> open = WorkingShop.current();
        Optional<ShopFile> found = input instanceof IFileEditorInput wanted ? open.flatMap(now -> now.fileOf(wanted.getFile()))
                : Optional.empty();
        if (found.isEmpty()) {
            throw new PartInitException(Messages.Editor_notOfShop);
        }
        shop = open.orElseThrow();
        file = found.get();
        getEditDomain().setCommandStack(new SharedGefStack(shop.stack(), file, refused -> MessageDialog.openError(site.getShell(),
                Messages.Editor_refused, refused.getMessage())));
        super.init(site, input);
        setPartName(file.root().map(Nouns::name).orElse(input.getName()));
        saveables = new Saveables(this, shop, () -> Stream.of(file), () -> firePropertyChange(PROP_DIRTY));
    }

    @Override
    public void createPartControl(Composite parent) {
        if (TroublePage.wanted(file)) {
            TroublePage.create(parent, shop, file);
            return;
        }
        paints = new Paints(parent.getDisplay(), VerdictLook.dark(parent.getBackground()) ? Palette.DARK : Palette.LIGHT,
                JFaceResources.getDefaultFont().getFontData()[0].getName());
        painter = new ScenePainter(paints);
        page = new CarPage(shop, (Car) file.root().orElseThrow(), this::sceneChanged);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite top = new Composite(parent, SWT.NONE);
        top.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        super.createPartControl(body);
        bar = new CarBar(top, page, actions, views());
        getGraphicalViewer().setContextMenu(actions.menu(views()));
    }

    private List<IAction> views() {
        return List.of(new DiagramAction(Messages.Action_fit, Pictures.FIT.descriptor(), this::fit),
                new DiagramAction(Messages.Action_zoomIn, Pictures.CLOSER.descriptor(), () -> zoomBy(CLOSER)),
                new DiagramAction(Messages.Action_zoomOut, Pictures.FARTHER.descriptor(), () -> zoomBy(1 / CLOSER)));
    }

    private void zoomBy(double times) {
        zoomTo(times * zoom());
    }

    @Override
    protected void createGraphicalViewer(Composite parent) {
        ruled = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(ruled);
        Label corner = new Label(ruled, SWT.NONE);
        corner.setBackground(paints.ground());
        GridDataFactory.fillDefaults().applyTo(corner);
        along = new Ruler(ruled, true, page::scene, root.getZoomManager(), paints);
        along.setToolTipText(Messages.Ruler_along);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(along);
        up = new Ruler(ruled, false, page::scene, root.getZoomManager(), paints);
        up.setToolTipText(Messages.Ruler_up);
        GridDataFactory.fillDefaults().grab(false, true).applyTo(up);
        super.createGraphicalViewer(ruled);
        GraphicalViewer viewer = getGraphicalViewer();
        GridDataFactory.fillDefaults().grab(true, true).applyTo(viewer.getControl());
        along.follow((FigureCanvas) viewer.getControl());
        up.follow((FigureCanvas) viewer.getControl());
    }

    @Override
    protected Control getGraphicalControl() {
        return ruled;
    }

    @Override
    protected void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        GraphicalViewer viewer = getGraphicalViewer();
        actions = new CarActions(page, viewer);
        actions.forWindow().forEach(getActionRegistry()::registerAction);
        viewer.setRootEditPart(root);
        viewer.setEditPartFactory(new CarParts(this));
        viewer.setKeyHandler(new CarKeys(viewer, actions::type));
        viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.CTRL), MouseWheelZoomHandler.SINGLETON);
        viewer.getControl().setBackground(paints.ground());
        viewer.addSelectionChangedListener(event -> linkViews());
    }

    @Override
    protected void initializeGraphicalViewer() {
        super.initializeGraphicalViewer();
        ZoomManager zoom = root.getZoomManager();
        zoom.setZoomLevels(ZOOMS);
        zoom.setUIMultiplier(1 / FULL_SIZE);
        getGraphicalViewer().setContents(page);
        zoom.addZoomListener(now -> {
            fitting &= zooming;
            page.setText(text(now));
        });
        getGraphicalViewer().getControl().addListener(SWT.Resize, event -> fitAgain());
    }

    /** Only undo and redo of the window are offered: there is one history for the whole shop. */
    @Override
    protected void createActions() {
        // The actions of the diagram are made with its viewer.
    }

    /** Returns the height of texts for a zoom, mm: in steps, so that they do not jump with each turn of the wheel. */
    private static double text(double zoom) {
        return TEXT / Math.pow(TEXT_STEP, Math.rint(Math.log(zoom) / Math.log(TEXT_STEP)));
    }

    private void fitAgain() {
        if (fitting && !page.nodes().isEmpty() && getGraphicalViewer().getControl().getSize().x > 1) {
            fit();
        }
    }

    /**
     * Shows the whole car. Texts keep their height on the screen, so of the room first comes off what they take beside the drawn things;
     * where that leaves too little, texts stand beyond the edge.
     */
    private void fit() {
        Rectangle room = ((Composite) getGraphicalViewer().getControl()).getClientArea();
        Dimension things = things();
        if (things.isEmpty()) {
            return;
        }
        zooming = true;
        fitting = true;
        double filled = Math.min((double) room.width / things.width, (double) room.height / things.height);
        zoomTo(filled);
        Box sheet = page.scene().sheet();
        double beside = (sheet.width() - things.width) * zoom();
        double above = (sheet.height() - things.height) * zoom();
        zoomTo(Math.max(LEAST * filled, Math.min((room.width - beside) / things.width, (room.height - above) / things.height)));
        zooming = false;
        Box shown = page.scene().sheet();
        ((FigureCanvas) getGraphicalViewer().getControl()).getViewport().getUpdateManager().performUpdate();
        int spare = (int) Math.max(0, room.width - shown.width() * zoom());
        root.getZoomManager().setViewLocation(new Point((int) (shown.left() * zoom()) - spare / 2, (int) (shown.top() * zoom())));
    }

    private void zoomTo(double zoom) {
        root.getZoomManager().setZoom(Math.max(ZOOMS[0], Math.min(ZOOMS[ZOOMS.length - 1], zoom)));
    }

    /** Returns the room that the drawn things take without texts and what leads to them: both views one above the other, mm. */
    private Dimension things() {
        double width = 0;
        double height = 0;
        for (Projection projection : Projection.values()) {
            Box box = page.scene().items().stream().filter(item -> item.view().filter(projection::equals).isPresent())
                    .flatMap(item -> item.shapes().stream()).filter(shape -> shape.role() != Role.DIMENSION)
                    .filter(shape -> !(shape instanceof Shape.Label)).map(Shape::box).reduce(Box.EMPTY, Box::union);
            if (!box.isEmpty()) {
                width = Math.max(width, box.width());
                height += box.height();
            }
        }
        return new Dimension((int) Math.ceil(width), (int) Math.ceil(height));
    }

    private void sceneChanged() {
        if (bar != null && !ruled.isDisposed()) {
            ((CarPart) getGraphicalViewer().getContents()).showAgain();
            linkViews();
            along.again();
            up.again();
            bar.show();
        }
    }

    private void linkViews() {
        List<ItemPart> picked = Picked.parts(getGraphicalViewer(), ItemPart.class);
        List<String> ids = picked.stream().map(part -> part.model().item().id()).toList();
        parts().forEach(part -> part.link(!picked.contains(part) && ids.contains(part.model().item().id())));
    }

    private Stream<ItemPart> parts() {
        return ((CarPart) getGraphicalViewer().getContents()).childParts().stream().map(ItemPart.class::cast);
    }

    @Override
    public void show(String objectId) {
        if (page != null) {
            String drawn = page.setup().stream().flatMap(setup -> setup.getContacts().stream())
                    .filter(contact -> holds(contact, objectId)).map(Contact::getId).findFirst().orElse(objectId);
            parts().filter(part -> part.model().item().id().equals(drawn)).findFirst().ifPresent(part -> {
                getGraphicalViewer().select(part);
                getGraphicalViewer().reveal(part);
            });
        }
    }

    private static boolean holds(Contact contact, String id) {
        return Stream.of(contact.getFixture(), contact.getStand(), contact.getTrestle(), contact.getArm(), contact.getStrap())
                .anyMatch(holder -> holder != null && id.equals(holder.getId()));
    }

    @Override
    public void gotoMarker(IMarker marker) {
        show(marker.getAttribute("objectId", ""));
    }

    @Override
    public double grid() {
        return actions.snaps() ? STEP : 0;
    }

    @Override
    public double zoom() {
        return root.getZoomManager().getZoom();
    }

    @Override
    public CarPage page() {
        return page;
    }

    @Override
    public Paints paints() {
        return paints;
    }

    @Override
    public ScenePainter painter() {
        return painter;
    }

    @Override
    public void tell(String message) {
        bar.tell(message);
        getSite().getShell().getDisplay().beep();
    }

    @Override
    protected PaletteRoot getPaletteRoot() {
        return CarPalette.create();
    }

    @Override
    protected FlyoutPreferences getPalettePreferences() {
        return new OpenPalette();
    }

    @Override
    public Saveable[] getSaveables() {
        return saveables.getSaveables();
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return saveables.getSaveables();
    }

    @Override
    public boolean isDirty() {
        return saveables != null && saveables.isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("the workbench saves the file itself");
    }

    @Override
    public void setFocus() {
        if (page != null) {
            super.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (saveables != null) {
            saveables.dispose();
        }
        if (page != null) {
            page.dispose();
            paints.dispose();
        }
        super.dispose();
    }
}
