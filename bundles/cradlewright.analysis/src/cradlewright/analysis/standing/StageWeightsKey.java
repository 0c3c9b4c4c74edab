package cradlewright.analysis.standing;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.StageFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a car weighs in each of its stages, in their order: all that is on, then each piece for itself where parts of several pieces are
 * on, since shell and chassis of one stage may stand in two places. Empty when the car is not there.
 *
 * @param carId the car
 */
public record StageWeightsKey(String carId) implements Key<List<StageWeight>> {

    @Override
    public List<StageWeight> compute(Reader reader) {
        return reader.read(new FactKey<>(CarFacts.class, carId)).map(StageWeightsKey::of).orElse(List.of());
    }

    private static List<StageWeight> of(CarFacts car) {
        List<StageWeight> all = new ArrayList<>();
        for (StageFacts stage : car.stages()) {
            List<String> pieces = car.pieces().stream().map(PieceFacts::id).toList();
            all.add(new StageWeight(stage.id(), stage.name(), Optional.empty(), WeightKey.of(car, stage, pieces)));
            List<PieceFacts> on = car.pieces().stream().filter(piece -> anyOn(piece, stage)).toList();
            if (on.size() > 1) {
                on.forEach(piece -> all.add(new StageWeight(stage.id(), stage.name(), Optional.of(piece.name()),
                        WeightKey.of(car, alone(stage, piece), List.of(piece.id())))));
            }
        }
        return List.copyOf(all);
    }

    private static boolean anyOn(PieceFacts piece, StageFacts stage) {
        return piece.parts().stream().anyMatch(part -> stage.partIds().contains(part.id()));
    }

    private static StageFacts alone(StageFacts stage, PieceFacts piece) {
        Set<String> own = piece.parts().stream().map(PartFacts::id).collect(Collectors.toSet());
        return new StageFacts(stage.id(), stage.name(), stage.partIds().stream().filter(own::contains).toList(), List.of());
    }
}
