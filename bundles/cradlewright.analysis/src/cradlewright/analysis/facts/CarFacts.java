package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A car with everything that its own file says. */
public record CarFacts(String id, String name, boolean separateChassis, List<PieceFacts> pieces, List<MountFacts> mounts,
        List<LiftPointFacts> liftPoints, List<WorkPointFacts> workPoints, List<CutZoneFacts> cutZones,
        List<TemporaryLoadFacts> temporaryLoads, List<BraceFacts> braces, List<StageFacts> stages, List<SetupFacts> setups,
        List<VisitFacts> visits, List<WeighingFacts> weighings) implements Fact {

    /** Returns the parts of all pieces. */
    public Stream<PartFacts> parts() {
        return pieces.stream().flatMap(piece -> piece.parts().stream());
    }

    /** Returns the stage of that id. */
    public Optional<StageFacts> stage(String stageId) {
        return find(stages, stageId);
    }

    /** Returns the setup of that id. */
    public Optional<SetupFacts> setup(String setupId) {
        return find(setups, setupId);
    }

    /** Returns the mount of that id. */
    public Optional<MountFacts> mount(String mountId) {
        return find(mounts, mountId);
    }

    /** Returns the lift point of that id. */
    public Optional<LiftPointFacts> liftPoint(String liftPointId) {
        return find(liftPoints, liftPointId);
    }

    /** Returns the first of a list with that id. */
    public static <T extends Fact> Optional<T> find(List<T> list, String id) {
        return list.stream().filter(fact -> fact.id().equals(id)).findFirst();
    }
}
