package cradlewright.analysis.facts;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A body mount: where the shell meets the chassis.
 *
 * @param position of its seating face
 * @param condition what was found
 * @param sheet measured sheet thickness in m
 * @param boltId bolt type in stock
 * @param boltCount number of bolts
 * @param fast whether it still holds the shell to the chassis; nothing when nobody said
 * @param asFound shims between shell and chassis as the car came in
 * @param onDolly shims under this mount on the dolly
 * @param asBuilt shims chosen for the rebuilt car
 */
public record MountFacts(String id, String name, Optional<Spot> position, Condition condition, Optional<Value> sheet,
        Optional<String> boltId, OptionalInt boltCount, Optional<Boolean> fast, Optional<ShimStackFacts> asFound,
        Optional<ShimStackFacts> onDolly, Optional<ShimStackFacts> asBuilt) implements Fact {

    /** Returns this mount freed. */
    public MountFacts freed() {
        return new MountFacts(id, name, position, condition, sheet, boltId, boltCount, Optional.of(false), asFound, onDolly, asBuilt);
    }
}
