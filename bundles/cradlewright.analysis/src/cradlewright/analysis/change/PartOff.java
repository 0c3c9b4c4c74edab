package cradlewright.analysis.change;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.util.LinkedHashMap;
import java.util.Map;
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
        Map<String, Fact> facts = new LinkedHashMap<>(shop.facts());
        facts.put(carId, car.partsOff(visit, stage, partIds));
        return new ShopSnapshot(shop.number() + 1, shop.name(), shop.settings(), shop.today(), facts);
    }
}
