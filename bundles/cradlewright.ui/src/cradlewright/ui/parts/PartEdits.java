package cradlewright.ui.parts;

import cradlewright.model.base.Named;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopCopier;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.SourceDefaults;
import cradlewright.ui.words.Nouns;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** What may be done to the rows of a parts list, each as one change of the shop. Belongs to the thread that owns the shop. */
final class PartEdits {

    /** Two places count as the same, mm. */
    private static final double SAME = 20;

    private final ShopFile file;
    private final Car car;
    private final IdSource ids;
    private final ShopCopier copier;

    PartEdits(ShopFile file, Car car, IdSource ids) {
        this.file = file;
        this.car = car;
        this.ids = ids;
        this.copier = new ShopCopier(ids);
    }

    /** A change, and what will be there after it. */
    record Made(ShopChange change, List<EObject> fresh) {
    }

    /** Returns a part of a piece of which nothing is known yet; it is on in no stage. */
    Made part(Piece piece) {
        Part part = named(VehicleFactory.eINSTANCE.createPart(), Messages.New_part);
        return new Made(new ShopChange(NLS.bind(Messages.Change_addPart, Nouns.kindAndName(piece)), file,
                () -> piece.getParts().add(part)), List.of(part));
    }

    /** Returns a temporary load of which nothing is known yet; it is there in no stage. */
    Made load() {
        TemporaryLoad load = named(VehicleFactory.eINSTANCE.createTemporaryLoad(), Messages.New_load);
        return new Made(new ShopChange(Messages.Change_addLoad, file, () -> car.getTemporaryLoads().add(load)), List.of(load));
    }

    /** Gives a new thing its id and name. */
    <T extends Named> T named(T thing, String name) {
        ids.give(thing);
        thing.setName(name);
        return thing;
    }

    /** Returns the same things once more, right behind these and on in the same stages. Nobody weighed the new ones. */
    Made duplicate(List<EObject> things) {
        Map<EObject, EObject> copies = new LinkedHashMap<>();
        for (EObject thing : things) {
            EObject copy = copy(thing);
            ((Named) copy).setName(NLS.bind(Messages.New_copy, Nouns.name(thing)));
            copies.put(thing, copy);
        }
        return made(Messages.Change_duplicate, copies);
    }

    /**
     * Returns things of one side on the other side, on in the same stages; nothing when all lie in the middle, have no place, or have their
     * twin already. Nobody weighed or measured the new ones.
     */
    Optional<Made> twins(List<EObject> things) {
        Map<EObject, EObject> twins = new LinkedHashMap<>();
        for (EObject thing : things) {
            Position here = place(thing);
            if (here != null && Math.abs(here.y()) > SAME / 2 && !hasTwin(thing, here)) {
                EObject twin = copy(thing);
                ((Named) twin).setName(otherSide(Nouns.name(thing)));
                twin.eSet(PartsTable.place(twin), new Position(here.x(), -here.y(), here.z(), here.uncertainty(), Source.DRAWING));
                twins.put(thing, twin);
            }
        }
        return twins.isEmpty() ? Optional.empty() : Optional.of(made(Messages.Change_twin, twins));
    }

    private static Position place(EObject thing) {
        return (Position) thing.eGet(PartsTable.place(thing));
    }

    /** A part in the same place across the car is the twin when it also bears the name of one. */
    private boolean hasTwin(EObject thing, Position here) {
        String name = otherSide(Nouns.name(thing));
        return siblings(thing).stream().anyMatch(other -> Nouns.name(other).equalsIgnoreCase(name) && place(other) != null
                && Math.hypot(place(other).x() - here.x(), place(other).y() + here.y()) < SAME);
    }

    private static List<EObject> siblings(EObject thing) {
        return ((List<?>) thing.eContainer().eGet(thing.eContainmentFeature())).stream().map(EObject.class::cast).toList();
    }

    static String otherSide(String name) {
        String left = "\\b" + Messages.Name_left + "\\b";
        String right = "\\b" + Messages.Name_right + "\\b";
        String swapped = name.replaceAll(left, "\u0000").replaceAll(right, Messages.Name_left).replace("\u0000", Messages.Name_right);
        return swapped.equals(name) ? NLS.bind(Messages.New_twin, name) : swapped;
    }

    private EObject copy(EObject thing) {
        EObject copy = copier.copy(thing);
        Measured mass = (Measured) thing.eGet(PartsTable.mass(thing));
        if (mass != null) {
            copy.eSet(PartsTable.mass(copy), likeAnother(mass));
        }
        return copy;
    }

    /** What was weighed or looked up for one part is known of another only as of something alike; a guess stays a guess. */
    static Measured likeAnother(Measured mass) {
        if (mass.source() == Source.GUESSED || mass.source() == Source.UNSTATED) {
            return mass;
        }
        double usual = SourceDefaults.COMMON_PRACTICE.likeAnotherCar() * Math.abs(mass.value());
        OptionalDouble stated = mass.uncertainty().isPresent() && mass.uncertainty().getAsDouble() > usual ? mass.uncertainty()
                : OptionalDouble.empty();
        return new Measured(mass.value(), mass.unit(), stated, Source.LIKE_ANOTHER_CAR);
    }

    private Made made(String label, Map<EObject, EObject> copies) {
        String what = copies.size() == 1 ? Nouns.kindAndName(copies.keySet().iterator().next()) : NLS.bind(Messages.Several, copies.size());
        ShopChange change = new ShopChange(NLS.bind(label, what), file, () -> copies.forEach((thing, copy) -> {
            addBehind(thing, copy);
            car.getStages().stream().filter(stage -> Ticks.isOn(stage, thing)).forEach(stage -> Ticks.turn(stage, copy, true));
        }));
        return new Made(change, List.copyOf(copies.values()));
    }

    @SuppressWarnings("unchecked") // the copy goes into the list that its model lies in, so it is of the type of that list
    private static void addBehind(EObject thing, EObject copy) {
        EList<EObject> list = (EList<EObject>) thing.eContainer().eGet(thing.eContainmentFeature());
        list.add(list.indexOf(thing) + 1, copy);
    }

    /** Returns the change that moves parts to another piece; nothing when all belong to it already. */
    Optional<ShopChange> move(List<? extends EObject> things, Piece piece) {
        List<Part> moved = things.stream().filter(Part.class::isInstance).map(Part.class::cast).filter(part -> part.eContainer() != piece)
                .toList();
        if (moved.isEmpty()) {
            return Optional.empty();
        }
        String what = moved.size() == 1 ? Nouns.kindAndName(moved.get(0)) : NLS.bind(Messages.Several, moved.size());
        return Optional.of(new ShopChange(NLS.bind(Messages.Change_piece, what, Nouns.name(piece)), file,
                () -> piece.getParts().addAll(moved)));
    }
}
