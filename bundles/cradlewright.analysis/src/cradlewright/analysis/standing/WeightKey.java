package cradlewright.analysis.standing;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.MassPoint;
import cradlewright.quantity.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is carried at a visit: the parts of the carried pieces that are on at its stage, and its temporary loads.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record WeightKey(String carId, String visitId) implements Key<Weight> {

    @Override
    public Weight compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        return standing.map(WeightKey::of).orElseGet(() -> new Weight(List.of(), List.of(), 0, List.of()));
    }

    /** Weighs one standing. */
    static Weight of(Standing standing) {
        return of(standing.car(), standing.stage(), standing.setup().pieceIds());
    }

    /** Weighs what is on in a stage of some pieces, and its temporary loads. */
    static Weight of(CarFacts car, StageFacts stage, List<String> pieceIds) {
        Tally tally = new Tally();
        Set<String> on = new HashSet<>(stage.partIds());
        for (PieceFacts piece : car.pieces()) {
            if (pieceIds.contains(piece.id())) {
                piece.parts().stream().filter(part -> on.contains(part.id())).forEach(tally::add);
            }
        }
        for (TemporaryLoadFacts load : car.temporaryLoads()) {
            if (stage.loadIds().contains(load.id())) {
                tally.add(load.name(), load.mass(), load.position());
            }
        }
        tally.absent("a piece that is carried but not in the file", pieceIds, car.pieces().stream());
        tally.absent("a part that is on but not in the file", stage.partIds(), car.parts());
        tally.absent("a load that is on but not in the file", stage.loadIds(), car.temporaryLoads().stream());
        return new Weight(tally.known, tally.missing, tally.guessedMass, tally.guessed);
    }

    private static final class Tally {
        /** The files do not name scales, so all weighed masses of a car may come from one. */
        private static final String SCALE = "scale of the shop";
        private final List<MassPoint> known = new ArrayList<>();
        private final List<String> missing = new ArrayList<>();
        private final List<String> guessed = new ArrayList<>();
        private double guessedMass;

        /** Notes ids that lead nowhere: what they stand for may weigh a lot. */
        void absent(String what, List<String> ids, Stream<? extends Fact> there) {
            Set<String> known = there.map(Fact::id).collect(Collectors.toSet());
            ids.stream().filter(id -> !known.contains(id)).map(id -> what + ": " + id).forEach(missing::add);
        }

        void add(PartFacts part) {
            add(part.name(), part.mass(), part.position());
        }

        void add(String name, Optional<Value> mass, Optional<Spot> position) {
            if (mass.isEmpty() || position.isEmpty()) {
                missing.add(name + (mass.isEmpty() ? ": mass" : ": balance point"));
                return;
            }
            Value m = mass.get();
            Spot spot = position.get();
            known.add(new MassPoint(m.si(), spot.at(), m.u(), new Vec3(spot.u(), spot.u(), spot.u()),
                    m.source() == Source.WEIGHED ? SCALE : MassPoint.NO_COMMON_SCALE));
            if (m.guessed()) {
                guessedMass += m.si();
                guessed.add(name);
            }
        }
    }
}
