package cradlewright.analysis.checks.floor;

import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.slab.LoadedArea;
import cradlewright.mechanics.slab.SlabUltimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one castor, screw foot or end prop on the floor puts on the floor at its worst.
 *
 * @param id of the castor, foot or prop
 * @param name what people call it
 * @param at where it touches, m
 * @param situation in which it is worst
 * @param force N, at its upper end and without load factor
 * @param factored the same times the load factor of slab design
 * @param area contact; nothing when the castor type does not state it
 * @param foot whether it is a screw foot or the foot of a prop
 */
record FloorLoad(String id, String name, Vec3 at, Situation situation, double force, double factored, Optional<LoadedArea> area,
        boolean foot) {

    /** Radius of a screw foot and of the foot of a prop, m: common practice, no source. */
    static final double FOOT_RADIUS = 0.02;

    /** Returns all of a dolly, the worst first. */
    static List<FloorLoad> all(DollyFacts dolly, VisitLoads loads, Reader reader) {
        List<FloorLoad> all = new ArrayList<>();
        for (String id : loads.found().stream().flatMap(found -> found.castors().stream()).map(Carried::id).distinct().toList()) {
            loads.found().stream().flatMap(found -> of(id, found, dolly, reader).stream())
                    .max(Comparator.comparingDouble(FloorLoad::factored))
                    .ifPresent(all::add);
        }
        for (PropFacts prop : dolly.props()) {
            if (prop.fitted() && prop.nodeId().isEmpty()) {
                loads.found().stream().flatMap(found -> of(prop, found).stream()).max(Comparator.comparingDouble(FloorLoad::factored))
                        .ifPresent(all::add);
            }
        }
        all.sort(Comparator.comparingDouble(FloorLoad::factored).reversed());
        return all;
    }

    private static Optional<FloorLoad> of(String id, Loads loads, DollyFacts dolly, Reader reader) {
        Optional<CastorFacts> castor = CarFacts.find(dolly.castors(), id);
        Optional<FootFacts> foot = CarFacts.find(dolly.feet(), id);
        Optional<Vec3> at = castor.flatMap(CastorFacts::nodeId).or(() -> foot.flatMap(FootFacts::nodeId)).flatMap(dolly::node)
                .flatMap(NodeFacts::at);
        Optional<Carried> carried = loads.castors().stream().filter(found -> found.id().equals(id)).findFirst();
        if (at.isEmpty() || carried.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(of(carried.get(), at.get(), loads.situation(), area(castor, reader), foot.isPresent()));
    }

    private static Optional<FloorLoad> of(PropFacts prop, Loads loads) {
        return loads.props().stream().filter(found -> found.id().equals(prop.id())).findFirst().flatMap(carried -> prop.at()
                .map(at -> of(carried, at, loads.situation(), Optional.of(LoadedArea.circle(FOOT_RADIUS)), true)));
    }

    private static FloorLoad of(Carried carried, Vec3 at, Situation situation, Optional<LoadedArea> area, boolean foot) {
        boolean rolling = situation.kind() == Situation.Kind.JOINT || situation.kind() == Situation.Kind.HOLE;
        SlabUltimate.Load kind = rolling ? SlabUltimate.Load.ROLLING : SlabUltimate.Load.STANDING;
        double force = Math.max(0, carried.high());
        return new FloorLoad(carried.id(), carried.name(), new Vec3(at.x(), at.y(), 0), situation, force, kind.factor() * force, area,
                foot);
    }

    private static Optional<LoadedArea> area(Optional<CastorFacts> castor, Reader reader) {
        if (castor.isEmpty()) {
            return Optional.of(LoadedArea.circle(FOOT_RADIUS));
        }
        return castor.flatMap(CastorFacts::typeId).flatMap(id -> reader.read(new FactKey<>(CastorType.class, id)))
                .flatMap(CastorType::contactArea)
                .filter(area -> area.low() > 0).map(area -> LoadedArea.circle(Math.sqrt(area.low() / Math.PI)));
    }

    /** Returns this one and all others that stand nearer than that, m. */
    List<FloorLoad> within(double distance, List<FloorLoad> all) {
        return all.stream().filter(other -> other.at.minus(at).norm() < distance).toList();
    }
}
