package cradlewright.analysis.lookup;

import cradlewright.analysis.check.Subject;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.standing.Support;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One body mount or support of one car, with everything that is known of it on the day of the answers.
 *
 * @param car the car
 * @param name what people call the place
 * @param mount the body mount, when it is one
 * @param held where it is held at a visit that is on; nothing when nothing stands or hangs there
 * @param weighings weighings of the car that are at hand for the stage of that visit
 * @param stock names of what is in stock, by ids
 */
public record SupportCard(CarFacts car, String name, Optional<MountFacts> mount, Optional<Held> held, List<WeighingFacts> weighings,
        Map<String, String> stock) {

    /** Copies the collections. */
    public SupportCard {
        weighings = List.copyOf(weighings);
        stock = Map.copyOf(stock);
    }

    /**
     * How it is held at a visit.
     *
     * @param visit the visit
     * @param support the support
     * @param carrier what people call the dolly, lift or hoist that carries it; empty when the support says all
     * @param carries what it carries
     */
    public record Held(VisitFacts visit, Support support, String carrier, SupportLoads carries) {
    }

    /** Returns what answers about it are about. */
    public Stream<String> objectIds() {
        Set<String> ids = new HashSet<>();
        mount.ifPresent(one -> ids.add(one.id()));
        held.ifPresent(at -> ids.addAll(List.of(at.support().contactId(), at.support().objectId())));
        held.flatMap(at -> at.support().fixture()).ifPresent(fixture -> ids.add(fixture.id()));
        return ids.stream();
    }

    /** Tells whether an answer with that subject may be about it: about the car itself, or the visit at which it is held. */
    public boolean concerns(Subject subject) {
        return subject.ownerId().equals(car.id())
                && subject.visitId().map(visit -> held.filter(at -> at.visit().id().equals(visit)).isPresent()).orElse(true);
    }
}
