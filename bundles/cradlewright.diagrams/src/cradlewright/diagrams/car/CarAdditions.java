package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.Moved;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Prop;
import cradlewright.model.fixture.Setup;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.WorkKind;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.ui.words.Nouns;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.eclipse.emf.common.util.EList;
import org.eclipse.osgi.util.NLS;

/** New things put into the diagram, each as one change of the shop. Belongs to the thread that owns the shop. */
final class CarAdditions {

    /** What the palette offers. */
    enum Sort {
        SUPPORT, PROP, LIFT_POINT, WORK_POINT, CUT_ZONE
    }

    private static final double MM = 1000;
    /** A cut zone that was not drawn with a size, mm. */
    private static final Vec3 USUAL_CUT = new Vec3(400, 150, 150);

    private final ShopFolder folder;
    private final Car car;
    private final Setup setup;
    private final IdSource ids;

    CarAdditions(ShopFolder folder, Car car, Setup setup, IdSource ids) {
        this.folder = folder;
        this.car = car;
        this.setup = setup;
        this.ids = ids;
    }

    /** Tells whether such a thing can be added here: a prop needs a dolly that can be changed. */
    boolean possible(Sort sort) {
        return sort != Sort.PROP || setup.getDolly() != null && folder.fileOf(setup.getDolly()).isPresent();
    }

    /**
     * Returns the change that adds a thing.
     *
     * @param at in the axes of the carrier, m
     * @param far the opposite corner of a cut zone, if one was drawn
     */
    ShopChange add(Sort sort, Vec3 at, Optional<Vec3> far) {
        Position place = drawn(sort == Sort.PROP ? at : Axes.of(setup).onCar(at));
        return switch (sort) {
            case SUPPORT -> new NewSupport(folder, setup, ids).at(place, free(Messages.New_support, setup.getContacts()));
            case PROP -> add(named(FixtureFactory.eINSTANCE.createProp(), Messages.New_prop, setup.getDolly().getProps()),
                    setup.getDolly().getProps(), prop -> prop.setPosition(place));
            case LIFT_POINT -> add(named(VehicleFactory.eINSTANCE.createLiftPoint(), Messages.New_liftPoint, car.getLiftPoints()),
                    car.getLiftPoints(), point -> {
                        point.setPosition(place);
                        point.setCondition(Condition.NOT_LOOKED_AT);
                    });
            case WORK_POINT -> add(named(VehicleFactory.eINSTANCE.createWorkPoint(), Messages.New_workPoint, car.getWorkPoints()),
                    car.getWorkPoints(), point -> {
                        point.setPosition(place);
                        point.setKind(WorkKind.LEAN);
                        point.setDirection(new Direction(0, 0, -1));
                    });
            case CUT_ZONE -> cut(place, far.map(corner -> drawn(Axes.of(setup).onCar(corner)))
                    .orElseGet(() -> Moved.by(place, USUAL_CUT.x(), USUAL_CUT.y(), USUAL_CUT.z())));
        };
    }

    private ShopChange cut(Position a, Position b) {
        Position low = Position.of(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z()));
        Position high = Position.of(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z()));
        return add(named(VehicleFactory.eINSTANCE.createCutZone(), Messages.New_cutZone, car.getCutZones()), car.getCutZones(), zone -> {
            zone.setLow(low);
            zone.setHigh(high);
            zone.setPlanned(true);
        });
    }

    private static Position drawn(Vec3 metres) {
        return Moved.by(new Position(0, 0, 0, OptionalDouble.empty(), Source.DRAWING), MM * metres.x(), MM * metres.y(),
                MM * metres.z());
    }

    private <T extends Named> T named(T thing, String name, List<? extends Named> others) {
        ids.give((Identified) thing);
        thing.setName(free(name, others));
        return thing;
    }

    private static String free(String name, List<? extends Named> others) {
        List<String> taken = others.stream().map(Named::getName).filter(Objects::nonNull).toList();
        String free = name;
        for (int i = 2; taken.contains(free); i++) {
            free = name + " " + i;
        }
        return free;
    }

    private <T extends Named> ShopChange add(T thing, EList<T> to, Consumer<T> fill) {
        fill.accept(thing);
        ShopFile file = folder.fileOf(thing instanceof Prop ? setup.getDolly() : car).orElseThrow();
        return new ShopChange(NLS.bind(Messages.Edit_add, Nouns.kindAndName(thing)), file, () -> to.add(thing));
    }
}
