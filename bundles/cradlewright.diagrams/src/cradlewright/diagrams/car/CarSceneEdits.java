package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.car.CarAdditions.Sort;
import cradlewright.diagrams.shared.SceneEdits;
import cradlewright.diagrams.shared.TypedPlace;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Setup;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.Car;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/**
 * What may be done in the diagram of a car on one setup.
 *
 * @param setup what rests on what in the diagram; nothing while no visit is shown
 */
record CarSceneEdits(ShopFolder folder, Car car, Optional<Setup> setup) implements SceneEdits {

    /** A stack of shims higher than this is a slip of the hand, mm. */
    private static final double MOST_SHIMS = 500;

    private Optional<CarEdits> edits() {
        return setup.map(on -> new CarEdits(folder, on));
    }

    @Override
    public boolean movable(EObject thing) {
        return CarEdits.movable(thing);
    }

    @Override
    public Optional<Position> moved(EObject thing, Vec3 way, double grid) {
        return edits().flatMap(edits -> edits.moved(thing, way, grid));
    }

    @Override
    public Optional<ShopChange> move(EObject thing, Vec3 way, double grid) {
        return edits().flatMap(edits -> edits.move(thing, way, grid));
    }

    @Override
    public Optional<ShopChange> mirror(List<EObject> things) {
        return new Twins(folder, IdSource.secure()).mirror(things);
    }

    @Override
    public Optional<ShopChange> align(List<EObject> things) {
        return edits().flatMap(edits -> edits.align(things));
    }

    /** The height of the shims under a support, the place of anything else. */
    @Override
    public Optional<String> shown(EObject thing, UnitSystem units) {
        return thing instanceof Contact contact ? Optional.of(ShimText.shown(contact, units))
                : Place.of(thing).map(at -> TypedPlace.text(at, units));
    }

    @Override
    public Optional<ShopChange> typed(EObject thing, String text, UnitSystem units) {
        if (thing instanceof Contact contact) {
            return Optional.of(ShimText.lay(contact, height(text, units), folder));
        }
        return Place.of(thing).flatMap(before -> edits().map(edits -> edits.place(thing,
                TypedPlace.place(text, before, units, Locale.getDefault()))));
    }

    private static double height(String text, UnitSystem units) {
        return TypedPlace.length(text, MOST_SHIMS, Messages.Shims_found, Messages.Shims_mend, units, Locale.getDefault());
    }

    @Override
    public Optional<ShopChange> add(Object sort, Vec3 at, Optional<Vec3> far) {
        if (!(sort instanceof Sort wanted)) {
            return Optional.empty();
        }
        return setup.map(on -> new CarAdditions(folder, car, on, IdSource.secure())).filter(additions -> additions.possible(wanted))
                .map(additions -> additions.add(wanted, at, far));
    }
}
