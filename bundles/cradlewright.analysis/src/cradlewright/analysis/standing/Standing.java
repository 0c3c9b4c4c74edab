package cradlewright.analysis.standing;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.util.List;
import java.util.Optional;

/**
 * A visit with its references resolved.
 *
 * @param car the car
 * @param visit the visit
 * @param stage which parts are on
 * @param setup what rests on what
 * @param dolly the dolly, when there is one
 * @param lift the lift, when there is one
 * @param hoist the hoist, when there is one
 * @param supports where the carried piece is held, in file order
 * @param stillFast body mounts that still hold the carried shell to its chassis although only the shell is to be carried
 * @param place where it stands
 * @param slab the slab under that place
 * @param missing what the files leave open, each in words with how to mend it
 */
public record Standing(CarFacts car, VisitFacts visit, StageFacts stage, SetupFacts setup, Optional<DollyFacts> dolly,
        Optional<GearFacts.Lift> lift, Optional<GearFacts.Hoist> hoist, List<Support> supports, List<MountFacts> stillFast,
        Optional<PlaceFacts> place, Optional<SlabFacts> slab, List<String> missing) {

    /** Copies the lists. */
    public Standing {
        supports = List.copyOf(supports);
        stillFast = List.copyOf(stillFast);
        missing = List.copyOf(missing);
    }

    /** Returns what carries it. */
    public CarrierKind carrier() {
        return setup.kind();
    }

    /** Tells whether people lift it or keep it lifted: a guessed mass never gives HOLDS there. */
    public boolean lifted() {
        return carrier() == CarrierKind.LIFT || carrier() == CarrierKind.STRAPS;
    }

    /** Returns the end props that are in place. */
    public List<PropFacts> fittedProps() {
        return dolly.stream().flatMap(d -> d.props().stream()).filter(PropFacts::fitted).toList();
    }

    /** Tells whether an end prop stands between the carried piece and the floor, so that the dolly must not be rolled. */
    public boolean proppedOnFloor() {
        return fittedProps().stream().anyMatch(prop -> prop.nodeId().isEmpty());
    }

    /** Tells whether the push of a support leans, so that it holds only with friction or against another one. */
    public boolean leans() {
        return carrier() != CarrierKind.STRAPS && supports.stream().anyMatch(support -> !support.upright());
    }

    /** Returns the bolted supports of which nobody said how hard they may be pulled. */
    public List<Support> boltsOfUnknownPull() {
        return supports.stream().filter(support -> support.hold() == Hold.BOLTED && support.pull().isEmpty()).toList();
    }

    /** Tells whether a piece of that kind is carried. */
    public boolean carries(PieceKind kind) {
        return setup.pieceIds().stream().flatMap(id -> CarFacts.find(car.pieces(), id).stream()).map(PieceFacts::kind)
                .anyMatch(kind::equals);
    }
}
