package cradlewright.ui.properties;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Named;
import cradlewright.model.base.Shop;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.GearStore;
import cradlewright.model.fixture.Lift;
import cradlewright.model.fixture.LiftArm;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.Weighing;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.eclipse.emf.ecore.EObject;

/** A car with three parts, a dolly with a corner and a castor, a lift with one arm, in a shop that is not on disk. */
final class PropertyShop {

    static final Habits METRIC = new Habits(UnitSystem.METRIC, Locale.ENGLISH);
    static final Habits INCH = new Habits(UnitSystem.INCH, Locale.ENGLISH);
    static final Habits COMMA = new Habits(UnitSystem.METRIC, Locale.GERMANY);

    final ShopFolder folder = new ShopFolder(Path.of("nowhere"));
    final ShopStack stack;
    final Car car;
    final Part bonnet;
    final Part door;
    final Part glass;
    final Stage stage;
    final Mount mount;
    final Dolly dolly;
    final DollyNode corner;
    final Castor castor;
    final LiftPoint liftPoint;
    final LiftArm arm;
    final Weighing weighing;

    private final IdSource ids = new IdSource(new Random(1));

    PropertyShop() {
        Shop shop = named(BaseFactory.eINSTANCE.createShop(), "shed");
        folder.add(FileKind.SHOP, "", shop);
        VehicleFactory make = VehicleFactory.eINSTANCE;
        car = named(make.createCar(), "red coupe");
        Piece shell = named(make.createPiece(), "shell");
        car.getPieces().add(shell);
        bonnet = part(shell, "bonnet", "18 kg u 0.2 weighed");
        bonnet.setPosition(Position.parse("457.2 -254 1000.123456 mm u 5 measured"));
        door = part(shell, "door", "25 kg guessed");
        glass = part(shell, "glass", null);
        stage = named(make.createStage(), "bare");
        stage.getOn().add(door);
        car.getStages().add(stage);
        mount = named(make.createMount(), "1L");
        mount.setCondition(Condition.THIN);
        car.getMounts().add(mount);
        liftPoint = named(make.createLiftPoint(), "left sill");
        car.getLiftPoints().add(liftPoint);
        weighing = make.createWeighing();
        weighing.setId(ids.next());
        car.getWeighings().add(weighing);
        folder.add(FileKind.CAR, "red coupe", car);
        dolly = named(FixtureFactory.eINSTANCE.createDolly(), "dolly A");
        corner = named(FixtureFactory.eINSTANCE.createDollyNode(), "front left");
        dolly.getNodes().add(corner);
        castor = named(FixtureFactory.eINSTANCE.createCastor(), "front left");
        dolly.getCastors().add(castor);
        folder.add(FileKind.DOLLY, "dolly A", dolly);
        Lift lift = named(FixtureFactory.eINSTANCE.createLift(), "two columns");
        arm = named(FixtureFactory.eINSTANCE.createLiftArm(), "front left");
        arm.setReachMin(Measured.parse("600 mm", Dimension.LENGTH));
        lift.getArms().add(arm);
        GearStore gear = FixtureFactory.eINSTANCE.createGearStore();
        gear.getItems().add(lift);
        folder.add(FileKind.GEAR, "", gear);
        stack = new ShopStack(folder, new ShopWriter(folder, Clock.systemUTC()));
    }

    private Part part(Piece shell, String name, String mass) {
        Part part = named(VehicleFactory.eINSTANCE.createPart(), name);
        part.setMass(mass == null ? null : Measured.parse(mass, Dimension.MASS));
        shell.getParts().add(part);
        return part;
    }

    private <T extends Named> T named(T object, String name) {
        object.setId(ids.next());
        object.setName(name);
        return object;
    }

    Chosen chosen(Habits habits, EObject... objects) {
        return new Chosen(folder, List.of(objects), habits);
    }

    /** Finds a row by its label. */
    <R extends Row> R row(Class<R> type, String label, Habits habits, EObject... objects) {
        return Rows.of(chosen(habits, objects)).stream().filter(row -> row.label().equals(label)).map(type::cast).findFirst().orElseThrow();
    }

    /** Runs the change of a reply. */
    void run(Reply reply) {
        stack.execute(reply.change().orElseThrow(() -> new AssertionError("no change: " + reply)));
    }
}
