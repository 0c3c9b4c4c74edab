package cradlewright.diagrams.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Setup;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The red coupe of the demo shop, which stands on dolly 3; nothing is saved. */
public final class RedCoupe {

    private static final Path DEMO = Path.of("..", "cradlewright.demo", "shop");

    private final ShopFolder folder;
    private final ShopStack stack;
    private final Car car;

    /** Reads the shop. */
    public RedCoupe() {
        assumeTrue(Files.isRegularFile(DEMO.resolve("shop.cwshop")), "the demo shop is not beside this bundle");
        folder = ShopFolder.open(DEMO);
        stack = new ShopStack(folder, new ShopWriter(folder, Clock.systemUTC()));
        car = folder.cars().stream().filter(each -> each.getName().contains("red")).findFirst().orElseThrow();
    }

    /** Returns the shop. */
    public ShopFolder folder() {
        return folder;
    }

    /** Returns the stack of the shop. */
    public ShopStack stack() {
        return stack;
    }

    /** Returns the file of the car. */
    public ShopFile file() {
        return folder.fileOf(car).orElseThrow();
    }

    /** Returns the car. */
    public Car car() {
        return car;
    }

    /** Returns what the car stands on. */
    public Setup setup() {
        return car.getSetups().get(0);
    }

    /** Returns a body mount of the car. */
    public Mount mount(String name) {
        return car.getMounts().stream().filter(each -> name.equals(each.getName())).findFirst().orElseThrow();
    }

    LiftPoint liftPoint(String name) {
        return car.getLiftPoints().stream().filter(each -> name.equals(each.getName())).findFirst().orElseThrow();
    }

    Contact contact(String name) {
        return setup().getContacts().stream().filter(each -> name.equals(each.getName())).findFirst().orElseThrow();
    }

    CarEdits edits() {
        return new CarEdits(folder, setup());
    }

    CarAdditions additions() {
        return new CarAdditions(folder, car, setup(), new IdSource(new Random(1)));
    }

    Twins twins() {
        return new Twins(folder, new IdSource(new Random(2)));
    }

    /** Runs a change, takes it back, does it again and takes it back for good: each time everything must be as it was. */
    public void thereAndBack(ShopChange change, Runnable look) {
        List<EObject> before = copies();
        stack.execute(change);
        look.run();
        List<EObject> after = copies();
        assertNotEquals(true, same(before, after), "the change must change something");
        stack.undo();
        assertEquals(true, same(before, copies()), "undo of " + change.label());
        stack.redo();
        assertEquals(true, same(after, copies()), "redo of " + change.label());
        look.run();
        stack.undo();
    }

    private List<EObject> copies() {
        List<EObject> roots = folder.files().stream().map(ShopFile::root).flatMap(root -> root.stream()).map(EObject.class::cast).toList();
        return List.copyOf(EcoreUtil.copyAll(roots));
    }

    private static boolean same(List<EObject> some, List<EObject> others) {
        EcoreUtil.EqualityHelper compare = new EcoreUtil.EqualityHelper();
        return some.size() == others.size() && compare.equals(some, others);
    }
}
