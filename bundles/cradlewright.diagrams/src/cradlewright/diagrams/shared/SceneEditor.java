package cradlewright.diagrams.shared;

import cradlewright.diagrams.Messages;
import cradlewright.model.base.FileRoot;
import cradlewright.model.io.ShopFile;
import cradlewright.report.scene.Palette;
import cradlewright.ui.file.TroublePage;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.Saveables;
import cradlewright.ui.shop.ShowsObject;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import cradlewright.ui.words.ReaderUnits;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.MouseWheelZoomHandler;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.eclipse.gef.ui.palette.FlyoutPaletteComposite.FlyoutPreferences;
import org.eclipse.gef.ui.parts.GraphicalEditorWithFlyoutPalette;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/**
 * An editor that shows a file of the shop as a drawing from above and from the left. What is drawn and what may be done there a
 * {@link ScenePage} says; window, bar, rulers, zoom, selection and saving are the same for all. All edits go through the one stack of the
 * shop.
 */
public abstract class SceneEditor extends GraphicalEditorWithFlyoutPalette
        implements ISaveablesSource, ShowsObject, IGotoMarker, SceneSurface {

    /** A drag goes to whole multiples of this when it snaps, mm. */
    private static final double STEP = 5;

    private final ScalableFreeformRootEditPart root = new ScalableFreeformRootEditPart();
    private WorkingShop shop;
    private ShopFile file;
    private Saveables saveables;
    private ScenePage<?> page;
    private SceneActions actions;
    private SceneBar bar;
    private Zooming zooming;
    private Paints paints;
    private ScenePainter painter;
    private Rulers rulers;

    /** Makes an editor. */
    protected SceneEditor() {
        setEditDomain(new DefaultEditDomain(this));
    }

    /**
     * Makes what is shown.
     *
     * @param changed to be run after each change of the drawing
     */
    protected abstract ScenePage<?> createPage(WorkingShop open, FileRoot shown, Runnable changed);

    @Override
    public final void init(IEditorSite site, IEditorInput input) throws PartInitException {
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
    public final void createPartControl(Composite parent) {
        if (TroublePage.wanted(file)) {
            TroublePage.create(parent, shop, file);
            return;
        }
        paints = new Paints(parent.getDisplay(), VerdictLook.dark(parent.getBackground()) ? Palette.DARK : Palette.LIGHT,
                JFaceResources.getDefaultFont().getFontData()[0].getName());
        painter = new ScenePainter(paints);
        page = createPage(shop, file.root().orElseThrow(), this::sceneChanged);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite top = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        super.createPartControl(body);
        bar = new SceneBar(top, page, actions, zooming.actions());
        getGraphicalViewer().setContextMenu(actions.menu(zooming.actions()));
        ReaderUnits.whenChanged(body, page::draw);
    }

    @Override
    protected final void createGraphicalViewer(Composite parent) {
        rulers = new Rulers(parent, page::scene, root.getZoomManager(), paints);
        super.createGraphicalViewer(rulers.frame());
        rulers.follow((FigureCanvas) getGraphicalViewer().getControl());
    }

    @Override
    protected final Control getGraphicalControl() {
        return rulers.frame();
    }

    @Override
    protected final void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        GraphicalViewer viewer = getGraphicalViewer();
        actions = new SceneActions(page, viewer);
        actions.forWindow().forEach(getActionRegistry()::registerAction);
        viewer.setRootEditPart(root);
        viewer.setEditPartFactory(new SceneParts(this));
        viewer.setKeyHandler(new SceneKeys(viewer, actions::type));
        viewer.setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.CTRL), MouseWheelZoomHandler.SINGLETON);
        viewer.getControl().setBackground(paints.ground());
        viewer.addSelectionChangedListener(event -> linkViews());
    }

    @Override
    protected final void initializeGraphicalViewer() {
        super.initializeGraphicalViewer();
        zooming = new Zooming(root.getZoomManager(), (FigureCanvas) getGraphicalViewer().getControl(), page);
        getGraphicalViewer().setContents(page);
        zooming.follow();
    }

    /** Only undo and redo of the window are offered: there is one history for the whole shop. */
    @Override
    protected final void createActions() {
        // The actions of the diagram are made with its viewer.
    }

    private void sceneChanged() {
        if (bar != null && !rulers.isDisposed()) {
            ((SheetPart) getGraphicalViewer().getContents()).showAgain();
            linkViews();
            rulers.again();
            bar.show();
            zooming.sceneChanged();
        }
    }

    private void linkViews() {
        List<ItemPart> picked = Picked.parts(getGraphicalViewer(), ItemPart.class);
        List<String> ids = picked.stream().map(part -> part.model().item().id()).toList();
        parts().forEach(part -> part.link(!picked.contains(part) && ids.contains(part.model().item().id())));
    }

    private Stream<ItemPart> parts() {
        return ((SheetPart) getGraphicalViewer().getContents()).childParts().stream().map(ItemPart.class::cast);
    }

    @Override
    public final void show(String objectId) {
        if (page != null) {
            String drawn = page.drawn(objectId);
            parts().filter(part -> part.model().item().id().equals(drawn)).findFirst().ifPresent(part -> {
                getGraphicalViewer().select(part);
                getGraphicalViewer().reveal(part);
            });
        }
    }

    @Override
    public final void gotoMarker(IMarker marker) {
        show(marker.getAttribute("objectId", ""));
    }

    @Override
    public final double grid() {
        return actions.snaps() ? STEP : 0;
    }

    @Override
    public final double zoom() {
        return root.getZoomManager().getZoom();
    }

    @Override
    public final ScenePage<?> page() {
        return page;
    }

    @Override
    public final Paints paints() {
        return paints;
    }

    @Override
    public final ScenePainter painter() {
        return painter;
    }

    @Override
    public final void tell(String message) {
        bar.tell(message);
        getSite().getShell().getDisplay().beep();
    }

    @Override
    @SuppressWarnings("rawtypes")
    public final Object getAdapter(Class type) {
        return type == IContentOutlinePage.class && page != null ? new Miniature(root, paints) : super.getAdapter(type);
    }

    @Override
    protected final FlyoutPreferences getPalettePreferences() {
        return new OpenPalette();
    }

    @Override
    public final Saveable[] getSaveables() {
        return saveables.getSaveables();
    }

    @Override
    public final Saveable[] getActiveSaveables() {
        return saveables.getSaveables();
    }

    @Override
    public final boolean isDirty() {
        return saveables != null && saveables.isDirty();
    }

    @Override
    public final void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("the workbench saves the file itself");
    }

    @Override
    public final void setFocus() {
        if (page != null) {
            super.setFocus();
        }
    }

    @Override
    public final void dispose() {
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
