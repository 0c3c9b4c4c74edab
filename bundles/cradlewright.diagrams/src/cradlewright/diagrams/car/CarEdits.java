package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.Moved;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Prop;
import cradlewright.model.fixture.Setup;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import cradlewright.quantity.Position;
import cradlewright.ui.words.Nouns;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** What may be done in the diagram to things that are there, each as one change of the shop. Belongs to the thread that owns the shop. */
final class CarEdits {

    /** A support that is put down so near to a body mount or lift point rests on it, mm. */
    private static final double CATCH = 40;

    private final ShopFolder folder;
    private final Setup setup;

    /**
     * Makes edits for one car on one setup.
     *
     * @param setup what rests on what in the diagram
     */
    CarEdits(ShopFolder folder, Setup setup) {
        this.folder = folder;
        this.setup = setup;
    }

    /** Tells whether a thing has a place that can be changed here. */
    static boolean movable(EObject thing) {
        return Place.of(thing).isPresent();
    }

    /**
     * Returns where a thing would be after a move; nothing when it has no place.
     *
     * @param way in the axes of the carrier, m
     * @param grid places become whole multiples of this along the axes that it moves along, mm; zero for none
     */
    Optional<Position> moved(EObject thing, Vec3 way, double grid) {
        Vec3 by = thing instanceof Prop ? way : Axes.of(setup).way(way);
        return Place.of(thing).map(from -> Moved.by(from, by, grid));
    }

    /** Returns the change that moves a thing; a support that comes near a body mount or lift point rests on that from then on. */
    Optional<ShopChange> move(EObject thing, Vec3 way, double grid) {
        return moved(thing, way, grid).map(to -> {
            Optional<EObject> onto = thing instanceof Contact contact ? caught(contact, to) : Optional.empty();
            String label = NLS.bind(Messages.Edit_move, Nouns.kindAndName(thing));
            return onto.map(spot -> onto((Contact) thing, spot))
                    .orElseGet(() -> change(label, List.of(thing), () -> Place.set(thing, to)));
        });
    }

    /** Returns the body mount or lift point that a support put there would rest on: near, and no other support of this setup is there. */
    Optional<EObject> caught(Contact contact, Position to) {
        return spots().filter(spot -> Place.of(spot).filter(at -> near(at, to)).isPresent()).filter(spot -> setup.getContacts()
                .stream().noneMatch(other -> other != contact && (other.getMount() == spot || other.getLiftPoint() == spot))).findFirst();
    }

    private Stream<EObject> spots() {
        Car car = (Car) setup.eContainer();
        return Stream.concat(car.getMounts().stream(), car.getLiftPoints().stream());
    }

    private static boolean near(Position a, Position b) {
        return Math.hypot(Math.hypot(a.x() - b.x(), a.y() - b.y()), a.z() - b.z()) <= CATCH;
    }

    private ShopChange onto(Contact contact, EObject spot) {
        return change(NLS.bind(Messages.Edit_moveOnto, Nouns.kindAndName(contact), Nouns.kindAndName(spot)), List.of(contact), () -> {
            contact.setPoint(null);
            contact.setMount(spot instanceof Mount mount ? mount : null);
            contact.setLiftPoint(spot instanceof LiftPoint point ? point : null);
        });
    }

    /** Returns the change that puts a thing at a place that was typed. */
    ShopChange place(EObject thing, Position at) {
        return change(NLS.bind(Messages.Edit_place, Nouns.kindAndName(thing)), List.of(thing), () -> Place.set(thing, at));
    }

    /** Returns the change that puts things beside each other across the car: all get the x of the first. */
    Optional<ShopChange> align(List<EObject> things) {
        List<EObject> movable = things.stream().filter(CarEdits::movable).distinct().toList();
        if (movable.size() < 2) {
            return Optional.empty();
        }
        double x = Place.of(movable.get(0)).orElseThrow().x();
        List<EObject> others = movable.subList(1, movable.size());
        return Optional.of(change(NLS.bind(Messages.Edit_align, Nouns.kindAndName(movable.get(0))), others, () -> others.forEach(thing -> {
            Position from = Place.of(thing).orElseThrow();
            Place.set(thing, Moved.by(from, x - from.x(), 0, 0));
        })));
    }

    private ShopChange change(String label, List<EObject> touched, Runnable body) {
        Set<ShopFile> files = new LinkedHashSet<>();
        touched.forEach(thing -> files.add(folder.fileOf(thing).orElseThrow()));
        return new ShopChange(label, files, body);
    }
}
