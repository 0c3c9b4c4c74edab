package cradlewright.diagrams.car;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Position;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The records of a car as they would be if something in the diagram were elsewhere; nothing is edited. */
final class Foresight {

    private Foresight() {
    }

    /**
     * Returns the change of records; nothing when no load depends on that thing's place.
     *
     * @param id of the thing
     * @param to where it would be, as its file says it
     */
    static Optional<Change> moved(ShopSnapshot shop, String carId, String setupId, String id, Position to) {
        Vec3 at = new Vec3(to.si()[0], to.si()[1], to.si()[2]);
        return shop.find(CarFacts.class, carId).flatMap(car -> onCar(car, setupId, id, at).<Change>map(Change::of)
                .or(() -> onDolly(shop, car, setupId, id, at)));
    }

    private static Optional<CarFacts> onCar(CarFacts car, String setupId, String id, Vec3 at) {
        Optional<CarFacts> mount = car.mount(id).map(m -> car.with(new MountFacts(m.id(), m.name(), spot(m.position(), at), m.condition(),
                m.sheet(), m.boltId(), m.boltCount(), m.fast(), m.asFound(), m.onDolly(), m.asBuilt())));
        Optional<CarFacts> contact = car.setup(setupId).flatMap(setup -> CarFacts.find(setup.contacts(), id)
                .map(c -> car.with(setup.with(c.at(at)))));
        Optional<CarFacts> point = CarFacts.find(car.workPoints(), id).map(w -> car.withWorkPoints(replaced(car.workPoints(), id,
                p -> new WorkPointFacts(p.id(), p.name(), spot(p.position(), at), p.direction(), p.kind()))));
        Optional<CarFacts> lift = car.liftPoint(id).map(l -> withLiftPoints(car, replaced(car.liftPoints(), id,
                p -> new LiftPointFacts(p.id(), p.name(), spot(p.position(), at), p.condition(), p.sheet(), p.lookedAt(), p.capacity(),
                        p.basis()))));
        return mount.or(() -> contact).or(() -> point).or(() -> lift);
    }

    private static Optional<Spot> spot(Optional<Spot> before, Vec3 at) {
        return Optional.of(new Spot(at, before.map(Spot::u).orElse(0.0), before.map(Spot::heightDoubted).orElse(false)));
    }

    private static <T extends Fact> List<T> replaced(List<T> all, String id, Function<T, T> change) {
        return all.stream().map(fact -> fact.id().equals(id) ? change.apply(fact) : fact).toList();
    }

    private static CarFacts withLiftPoints(CarFacts car, List<LiftPointFacts> points) {
        return new CarFacts(car.id(), car.name(), car.separateChassis(), car.pieces(), car.mounts(), points, car.workPoints(),
                car.cutZones(), car.temporaryLoads(), car.braces(), car.stages(), car.setups(), car.visits(), car.weighings());
    }

    private static Optional<Change> onDolly(ShopSnapshot shop, CarFacts car, String setupId, String id, Vec3 at) {
        return car.setup(setupId).flatMap(SetupFacts::dollyId).flatMap(dolly -> shop.find(DollyFacts.class, dolly))
                .flatMap(dolly -> CarFacts.find(dolly.props(), id).map(p -> Change.of(dolly.with(new PropFacts(p.id(), p.name(),
                        Optional.of(at), p.fitted(), p.capacity(), p.basis(), p.nodeId())))));
    }
}
