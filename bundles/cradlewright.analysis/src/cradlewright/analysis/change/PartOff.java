package cradlewright.analysis.change;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A shop in which some parts are off at one visit. The visit gets a stage of its own, so other visits that share the old stage stay as
 * they are.
 */
public final class PartOff {

    private PartOff() {
    }

    /**
     * Takes parts off at one visit.
     *
     * @param shop the shop as it is; not changed
     * @param carId the car
     * @param visitId the visit
     * @param partIds parts that are on at the stage of that visit
     * @return the shop with a derived stage that only this visit uses, numbered one higher
     * @throws IllegalArgumentException when the car, the visit or its stage is missing, or a part is not on there
     */
    public static ShopSnapshot at(ShopSnapshot shop, String carId, String visitId, Set<String> partIds) {
        CarFacts car = shop.find(CarFacts.class, carId).orElseThrow(() -> new IllegalArgumentException("no car has the id " + carId));
        VisitFacts visit = CarFacts.find(car.visits(), visitId)
                .orElseThrow(() -> new IllegalArgumentException(car.name() + " has no visit with the id " + visitId));
        StageFacts stage = visit.stageId().flatMap(car::stage)
                .orElseThrow(() -> new IllegalArgumentException(visit.name() + " does not say which parts are on"));
        if (partIds.isEmpty() || !stage.partIds().containsAll(partIds)) {
            throw new IllegalArgumentException("only parts that are on at " + stage.name() + " can come off, asked for " + partIds);
        }
        StageFacts without = without(stage, visit, partIds);
        VisitFacts moved = new VisitFacts(visit.id(), visit.name(), Optional.of(without.id()), visit.setupId(), visit.from(), visit.to(),
                visit.current());
        List<StageFacts> stages = new ArrayList<>(car.stages());
        stages.add(without);
        List<VisitFacts> visits = car.visits().stream().map(other -> other.id().equals(visitId) ? moved : other).toList();
        Map<String, Fact> facts = new LinkedHashMap<>(shop.facts());
        facts.put(carId, new CarFacts(car.id(), car.name(), car.separateChassis(), car.pieces(), car.mounts(), car.liftPoints(),
                car.workPoints(), car.cutZones(), car.temporaryLoads(), car.braces(), stages, car.setups(), visits, car.weighings()));
        return new ShopSnapshot(shop.number() + 1, shop.name(), shop.settings(), shop.today(), facts);
    }

    private static StageFacts without(StageFacts stage, VisitFacts visit, Set<String> partIds) {
        List<String> left = stage.partIds().stream().filter(id -> !partIds.contains(id)).toList();
        return new StageFacts("parts off: " + stage.id() + "/" + visit.id(), stage.name(), left, stage.loadIds());
    }
}
