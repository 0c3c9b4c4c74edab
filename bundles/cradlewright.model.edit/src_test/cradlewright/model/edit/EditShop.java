package cradlewright.model.edit;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;
import cradlewright.model.base.Shop;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Setup;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import org.eclipse.emf.ecore.resource.Resource;

/** A generated shop with references inside files and across them; the same seed makes the same shop. */
final class EditShop {

    private static final VehicleFactory VEHICLE = VehicleFactory.eINSTANCE;
    private static final FixtureFactory FIXTURE = FixtureFactory.eINSTANCE;

    private final Random random;
    private final IdSource ids;
    private final ShopFolder shop;

    private EditShop(Path directory, long seed) {
        random = new Random(seed);
        ids = new IdSource(random);
        shop = new ShopFolder(directory);
    }

    /** Returns a shop of this many cars, each with a dolly and this many parts in each of two pieces. */
    static ShopFolder build(Path directory, long seed, int cars, int parts) {
        EditShop made = new EditShop(directory, seed);
        Shop root = made.named(BaseFactory.eINSTANCE.createShop(), "shed");
        root.setSettings(BaseFactory.eINSTANCE.createSettings());
        made.shop.add(FileKind.SHOP, "", root);
        Stock stock = StockFactory.eINSTANCE.createStock();
        CastorType castor = made.named(StockFactory.eINSTANCE.createCastorType(), "castor");
        castor.setRatedLoad(made.mass());
        stock.getItems().add(castor);
        made.shop.add(FileKind.STOCK, "", stock);
        for (int i = 0; i < cars; i++) {
            made.addCar(i, made.addDolly(i, castor), parts);
        }
        return made.shop;
    }

    /** Returns all files as they would stand on disk. */
    static String text(ShopFolder shop) {
        StringBuilder text = new StringBuilder();
        shop.resourceSet().getResources().forEach(file -> text.append(text(file)));
        return text.toString();
    }

    static String text(ShopFile file) {
        return text(file.root().orElseThrow().eResource());
    }

    static ShopFile file(ShopFolder shop, String path) {
        return shop.files().stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow();
    }

    static <T extends Named> T giveName(T object, IdSource ids, String name) {
        object.setName(name);
        return ids.give(object);
    }

    private static String text(Resource file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            file.save(out, null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    private <T extends Named & Identified> T named(T object, String name) {
        return giveName(object, ids, name);
    }

    private Measured mass() {
        return Measured.parse(1 + random.nextInt(400) + " kg weighed", Dimension.MASS);
    }

    private Position position() {
        return Position.parse(random.nextInt(3000) + " " + (random.nextInt(1600) - 800) + " " + random.nextInt(900) + " mm");
    }

    private Dolly addDolly(int number, CastorType castor) {
        Dolly dolly = named(FIXTURE.createDolly(), "dolly " + number);
        for (int i = 0; i < 4; i++) {
            Fixture fixture = named(FIXTURE.createFixture(), "fixture " + i);
            dolly.getFixtures().add(fixture);
            var wheel = named(FIXTURE.createCastor(), "wheel " + i);
            wheel.setType(castor);
            dolly.getCastors().add(wheel);
        }
        shop.add(FileKind.DOLLY, "dolly " + number, dolly);
        return dolly;
    }

    private void addCar(int number, Dolly dolly, int parts) {
        Car car = named(VEHICLE.createCar(), "car " + number);
        Stage stage = named(VEHICLE.createStage(), "as it came");
        Setup setup = named(FIXTURE.createSetup(), "on its dolly");
        setup.setDolly(dolly);
        for (String name : new String[] {"shell", "chassis"}) {
            Piece piece = named(VEHICLE.createPiece(), name);
            for (int i = 0; i < parts; i++) {
                Part part = named(VEHICLE.createPart(), name + " part " + i);
                part.setMass(mass());
                part.setPosition(position());
                piece.getParts().add(part);
                stage.getOn().add(part);
                piece.getOutline().add(position());
            }
            car.getPieces().add(piece);
            setup.getCarried().add(piece);
        }
        for (Fixture fixture : dolly.getFixtures()) {
            Mount mount = named(VEHICLE.createMount(), "mount of " + fixture.getName());
            mount.setPosition(position());
            mount.setAsFound(VEHICLE.createShimStack());
            mount.getAsFound().getShims().add(VEHICLE.createShim());
            car.getMounts().add(mount);
            Contact contact = named(FIXTURE.createContact(), mount.getName());
            contact.setMount(mount);
            contact.setFixture(fixture);
            setup.getContacts().add(contact);
        }
        car.getStages().add(stage);
        car.getSetups().add(setup);
        shop.add(FileKind.CAR, "car " + number, car);
    }
}
