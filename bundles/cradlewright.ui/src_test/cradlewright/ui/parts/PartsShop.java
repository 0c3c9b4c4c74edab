package cradlewright.ui.parts;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Named;
import cradlewright.model.base.Shop;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.LoadKind;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import cradlewright.ui.properties.Habits;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.eclipse.emf.ecore.EObject;

/** A car with a shell of three parts, a chassis, somebody in it and two stages, in a shop that is not on disk. */
final class PartsShop {

    static final Habits METRIC = new Habits(UnitSystem.METRIC, Locale.ENGLISH);
    static final Habits INCH = new Habits(UnitSystem.INCH, Locale.ENGLISH);
    static final Habits COMMA = new Habits(UnitSystem.METRIC, Locale.GERMANY);

    final ShopFolder folder = new ShopFolder(Path.of("nowhere"));
    final IdSource ids = new IdSource(new Random(1));
    final ShopStack stack;
    final ShopFile file;
    final Car car;
    final Piece shell;
    final Piece chassis;
    final Part bare;
    final Part leftDoor;
    final Part glass;
    final Part rails;
    final TemporaryLoad welder;
    final Stage full;
    final Stage stripped;

    PartsShop() {
        Shop shop = named(BaseFactory.eINSTANCE.createShop(), "shed");
        folder.add(FileKind.SHOP, "", shop);
        VehicleFactory make = VehicleFactory.eINSTANCE;
        car = named(make.createCar(), "red coupe");
        shell = named(make.createPiece(), "shell");
        chassis = named(make.createPiece(), "chassis");
        car.getPieces().add(shell);
        car.getPieces().add(chassis);
        bare = part(shell, "bare shell", "172 kg weighed", "2060 0 800 mm u 20 measured");
        leftDoor = part(shell, "left door", "19 kg u 0.2 weighed", "1900 -690 820 mm u 20 measured");
        glass = part(shell, "glass", null, null);
        rails = part(chassis, "rails", "121 kg guessed", "1980 0 430 mm");
        welder = named(make.createTemporaryLoad(), "welder");
        welder.setKind(LoadKind.PEOPLE);
        welder.setMass(Measured.parse("120 kg guessed", Dimension.MASS));
        car.getTemporaryLoads().add(welder);
        full = named(make.createStage(), "full");
        full.getOn().add(bare);
        full.getOn().add(leftDoor);
        full.getLoads().add(welder);
        stripped = named(make.createStage(), "stripped");
        stripped.getOn().add(bare);
        car.getStages().add(full);
        car.getStages().add(stripped);
        file = folder.add(FileKind.CAR, "red coupe", car);
        stack = new ShopStack(folder, new ShopWriter(folder, Clock.systemUTC()));
    }

    private Part part(Piece piece, String name, String mass, String place) {
        Part part = named(VehicleFactory.eINSTANCE.createPart(), name);
        part.setMass(mass == null ? null : Measured.parse(mass, Dimension.MASS));
        part.setPosition(place == null ? null : Position.parse(place));
        piece.getParts().add(part);
        return part;
    }

    /** Adds a part by a change of its own. */
    Part added(Piece piece, String name, String mass, String place) {
        stack.execute(new ShopChange("add " + name, file, () -> part(piece, name, mass, place)));
        return piece.getParts().get(piece.getParts().size() - 1);
    }

    <T extends Named> T named(T object, String name) {
        object.setId(ids.next());
        object.setName(name);
        return object;
    }

    PartsTable table(Habits habits) {
        return new PartsTable(folder, car, habits, thing -> "");
    }

    PartEdits edits() {
        return new PartEdits(file, car, ids);
    }

    void run(ShopChange change) {
        stack.execute(change);
    }

    void run(Optional<ShopChange> change) {
        run(change.orElseThrow(() -> new AssertionError("nothing to do")));
    }

    /** Writes all of the car that the parts list shows, to be compared before and after. */
    String picture() {
        StringBuilder all = new StringBuilder();
        PartsTable table = table(METRIC);
        for (EObject thing : table.things()) {
            for (PartColumn column : PartColumn.values()) {
                all.append(table.text(thing, column)).append('|');
            }
            car.getStages().forEach(stage -> all.append(Ticks.isOn(stage, thing)).append('|'));
            all.append('\n');
        }
        return all.toString();
    }
}
