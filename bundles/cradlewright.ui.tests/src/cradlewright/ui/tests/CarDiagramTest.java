package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import cradlewright.diagrams.car.CarEditor;
import cradlewright.diagrams.shared.SceneNode;
import cradlewright.model.base.FileRoot;
import cradlewright.model.fixture.Contact;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Projection;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The red coupe on dolly 3 as a diagram: mouse, keys, numbers typed in place. */
class CarDiagramTest {

    private static Path folder;
    private static WorkingShop shop;
    private static Car car;
    private IEditorPart editor;
    private Diagram diagram;
    private GraphicalViewer viewer;

    @BeforeAll
    static void open() throws Exception {
        folder = DemoShop.copy();
        shop = DemoShop.open(folder);
        car = shop.folder().cars().stream().filter(each -> each.getName().contains("red")).findFirst().orElseThrow();
    }

    @BeforeEach
    void show() {
        editor = ShopEditors.open(Bot.page(), file());
        diagram = new Diagram(editor);
        viewer = diagram.viewer();
        DemoShop.awaitAnswers();
        Bot.await("loads are drawn", () -> text("4R").endsWith(" N"));
    }

    @AfterEach
    void undoAll() {
        while (shop.stack().canUndo()) {
            shop.stack().undo();
        }
        Bot.page().closeAllEditors(false);
    }

    @AfterAll
    static void close() {
        WorkingShop.close();
    }

    private static ShopFile file() {
        return shop.folder().fileOf(car).orElseThrow();
    }

    private static Mount mount(String name) {
        return car.getMounts().stream().filter(each -> name.equals(each.getName())).findFirst().orElseThrow();
    }

    private static Contact contact(String name) {
        return car.getSetups().get(0).getContacts().stream().filter(each -> name.equals(each.getName())).findFirst().orElseThrow();
    }

    private GraphicalEditPart part(String id, Kind kind, Projection projection) {
        return diagram.part(id, kind, projection);
    }

    /** Returns the number beside the bar of a support. */
    private String text(String support) {
        return diagram.texts(contact(support).getId(), Kind.LOAD).get(1);
    }

    /** What the command line would say of the files as they are saved. */
    private static String ofTheFiles(String support) {
        Engine engine = new Engine();
        List<FileRoot> roots = ShopFolder.open(folder).files().stream().map(ShopFile::root).flatMap(Optional::stream).toList();
        engine.update(ShopImporter.importShop(roots, LocalDate.now(DemoShop.DAY), 1));
        String visit = car.getVisits().get(1).getId();
        double force = engine.read(new LoadsKey(car.getId(), visit, Situation.atRest(), false), Progress.NONE)
                .support(contact(support).getId()).orElseThrow().force();
        return Math.round(force) + " N";
    }

    @Test
    void whileAMountIsDraggedTheBarsShowWhatTheCommandLineSaysAfterwards() throws Exception {
        String before = text("4R");
        assertEquals(ofTheFiles("4R"), before);
        double x = mount("4R").getPosition().x();
        Point from = diagram.middle(part(mount("4R").getId(), Kind.MOUNT, Projection.PLAN), 0);
        diagram.drag(from, -40);
        Bot.await("the loads there are shown", () -> !text("4R").equals(before));
        assertEquals(x, mount("4R").getPosition().x(), 0, "nothing is edited while it is dragged");
        Bot.picture(Bot.shell(), "car-dragging");
        String shown = text("4R");
        diagram.mouse(SWT.MouseUp, from.x - 40, from.y, 1, SWT.BUTTON1);
        assertTrue(mount("4R").getPosition().x() < x - 50);
        Bot.await("the loads are worked out", () -> !text("4R").contains("old"));
        assertEquals(shown, text("4R"));
        shop.stack().save(file());
        assertEquals(ofTheFiles("4R"), text("4R"));
        assertEquals(1, shop.stack().history().size(), "a drag is one step of undo");
        shop.stack().undo();
        Bot.await("the old loads are back", () -> text("4R").equals(before));
        shop.stack().save(file());
    }

    @Test
    void arrowsMoveByOneAndByTenMillimetres() {
        double x = mount("3L").getPosition().x();
        double y = mount("3L").getPosition().y();
        viewer.select(part(mount("3L").getId(), Kind.MOUNT, Projection.PLAN));
        diagram.key(SWT.ARROW_RIGHT, 0);
        diagram.key(SWT.ARROW_UP, SWT.SHIFT);
        assertEquals(x + 1, mount("3L").getPosition().x(), 1e-9);
        assertEquals(y + 10, mount("3L").getPosition().y(), 1e-9, "up on the sheet is to the right of the car");
        diagram.key('n', 0);
        EditPart next = (EditPart) viewer.getSelectedEditParts().get(0);
        assertNotEquals(mount("3L").getId(), ((SceneNode) next.getModel()).item().id());
    }

    @Test
    void shimsAreTypedUnderASupport() {
        String before = text("4R");
        Text field = diagram.field(part(contact("4R").getId(), Kind.SUPPORT, Projection.SIDE));
        assertEquals("2.00 mm", field.getText());
        field.setText("3.2");
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Bot.settle();
        assertEquals(3, mount("4R").getOnDolly().getShims().size());
        Bot.await("the loads are worked out", () -> !text("4R").contains("old") && !text("4R").equals(before));
        assertEquals("shims under support 4R", shop.stack().nextUndo().orElseThrow().label());
    }

    @Test
    void aToolOfThePaletteAddsASupportUnderAMount() {
        diagram.take("Support");
        diagram.click(diagram.middle(part(mount("3R").getId(), Kind.MOUNT, Projection.PLAN), 0));
        assertSame(mount("3R"), contact("3R").getMount());
        assertEquals("3R", contact("3R").getFixture().getName());
        DemoShop.awaitAnswers();
        Bot.picture(Bot.shell(), "car-with-another-support");
        Bot.await("it carries", () -> text("3R").endsWith(" N"));
    }

    @Test
    void anObjectIsShownAndTheWindowCanBeRead() {
        ((CarEditor) editor).show(contact("2L").getFixture().getId());
        EditPart shown = (EditPart) viewer.getSelectedEditParts().get(0);
        assertEquals(contact("2L").getId(), ((SceneNode) shown.getModel()).item().id(), "the support that stands on it");
        Bot.picture(Bot.shell(), "car");
        assertTrue(Eyes.colours(diagram.canvas()) > 20, "the car is drawn");
    }
}
