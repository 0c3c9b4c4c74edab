package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.TwinName;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Named;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Contact;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopCopier;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.ui.words.Nouns;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/**
 * Gives things on one side of a car a twin on the other. What somebody found or measured on this side says nothing about the other one, so
 * the twin has no condition and stands on nothing yet. Belongs to the thread that owns the shop.
 */
final class Twins {

    /** Two places count as the same, mm. */
    private static final double SAME = 20;

    private final ShopFolder folder;
    private final ShopCopier copier;

    Twins(ShopFolder folder, IdSource ids) {
        this.folder = folder;
        this.copier = new ShopCopier(ids);
    }

    /** Returns the change; nothing for things on the middle plane and where the other side has its twin already. */
    Optional<ShopChange> mirror(Collection<EObject> things) {
        List<EObject> wanted = things.stream().distinct().filter(CarEdits::movable).filter(Twins::missing).toList();
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        Set<ShopFile> files = new LinkedHashSet<>();
        wanted.forEach(thing -> files.add(folder.fileOf(thing).orElseThrow()));
        List<String> names = wanted.stream().map(Nouns::kindAndName).toList();
        return Optional.of(new ShopChange(NLS.bind(Messages.Edit_mirror, String.join(", ", names)), files,
                () -> wanted.forEach(this::add)));
    }

    private static boolean missing(EObject thing) {
        Optional<Position> here = Place.of(thing);
        Optional<Position> there = across(thing);
        return here.isPresent() && there.isPresent() && !same(here.get(), there.get()) && thing.eContainer().eContents().stream()
                .filter(other -> other.eClass() == thing.eClass()).flatMap(other -> Place.of(other).stream())
                .noneMatch(place -> same(place, there.get()));
    }

    private static boolean same(Position a, Position b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y()) < SAME;
    }

    /** Returns the place on the other side; of a cut zone that of its lower corner there, which is its inner corner here. */
    private static Optional<Position> across(EObject thing) {
        if (thing instanceof CutZone zone && zone.getHigh() != null) {
            return Place.of(zone).map(low -> at(low, -zone.getHigh().y()));
        }
        return Place.of(thing).map(place -> at(place, -place.y()));
    }

    private static Position at(Position place, double y) {
        return new Position(place.x(), y + 0.0, place.z(), place.uncertainty(), Source.DRAWING);
    }

    @SuppressWarnings("unchecked") // the twin goes into the list that its model holds, so it is of the type of that list
    private void add(EObject thing) {
        Position there = across(thing).orElseThrow();
        EObject twin = copier.copy(thing);
        ((Named) twin).setName(TwinName.of(((Named) thing).getName()));
        if (twin instanceof Contact contact) {
            standsOnNothing(contact, (Contact) thing, there);
        } else {
            Place.set(twin, there);
            forgetFindings(twin);
        }
        ((EList<EObject>) thing.eContainer().eGet(thing.eContainmentFeature())).add(twin);
    }

    private static void standsOnNothing(Contact twin, Contact of, Position there) {
        twin.setFixture(null);
        twin.setStand(null);
        twin.setTrestle(null);
        twin.setArm(null);
        twin.setStrap(null);
        twin.setChassisMount(null);
        twin.setGap(null);
        Place.set(twin, there);
        Car car = (Car) of.eContainer().eContainer();
        Stream<EObject> spots = of.getMount() != null ? car.getMounts().stream().map(EObject.class::cast)
                : of.getLiftPoint() != null ? car.getLiftPoints().stream().map(EObject.class::cast) : Stream.empty();
        spots.filter(spot -> Place.of(spot).filter(place -> same(place, there)).isPresent()).findFirst().ifPresent(spot -> {
            twin.setPoint(null);
            twin.setMount(spot instanceof Mount mount ? mount : null);
            twin.setLiftPoint(spot instanceof LiftPoint point ? point : null);
        });
    }

    private static void forgetFindings(EObject twin) {
        if (twin instanceof Mount mount) {
            mount.setCondition(Condition.NOT_LOOKED_AT);
            mount.setSheetThickness(null);
            mount.setAsFound(null);
            mount.setOnDolly(null);
            mount.setAsBuilt(null);
        } else if (twin instanceof LiftPoint point) {
            point.setCondition(Condition.NOT_LOOKED_AT);
            point.setSheetThickness(null);
            point.setLookedAt(null);
        }
    }
}
