package cradlewright.analysis.standing;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.mechanics.mass.CellReading;
import cradlewright.mechanics.mass.PoseWeighing;
import cradlewright.mechanics.mass.PoseWeighing.Level;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The last weighing of the stage of a visit; nothing when that stage was never weighed.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record WeighedKey(String carId, String visitId) implements Key<Optional<Weighed>> {

    @Override
    public Optional<Weighed> compute(Reader reader) {
        return reader.read(new StandingKey(carId, visitId)).flatMap(standing -> standing.car().weighings().stream()
                .filter(weighing -> weighing.stageId().filter(standing.stage().id()::equals).isPresent())
                .max(Comparator.comparing(weighing -> weighing.at().orElse(LocalDateTime.MIN)))).map(WeighedKey::weighed);
    }

    private static Weighed weighed(WeighingFacts weighing) {
        List<String> missing = new ArrayList<>();
        List<CellReading> cells = new ArrayList<>();
        for (int i = 0; i < weighing.readings().size(); i++) {
            WeighingFacts.Reading reading = weighing.readings().get(i);
            if (reading.mass().isEmpty() || reading.place().isEmpty()) {
                missing.add("reading " + (i + 1) + ": " + (reading.mass().isEmpty() ? "what the scale showed" : "where the scale touched"));
            } else if (reading.mass().get().si() > 0) {
                cells.add(cell(reading.place().get(), reading.mass().get()));
            }
        }
        if (cells.isEmpty()) {
            missing.add("readings of the scales, each with its place");
        }
        Optional<Level> level = missing.isEmpty() ? Optional.of(PoseWeighing.level(cells)) : Optional.empty();
        return new Weighed(weighing.id(), weighing.at(), weighing.by(), level, missing);
    }

    private static CellReading cell(Spot place, Value mass) {
        return new CellReading(place.at(), mass.si(), mass.u(), place.u());
    }
}
