package cradlewright.analysis.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A car with everything that its own file says. */
public record CarFacts(String id, String name, boolean separateChassis, List<PieceFacts> pieces, List<MountFacts> mounts,
        List<LiftPointFacts> liftPoints, List<WorkPointFacts> workPoints, List<CutZoneFacts> cutZones,
        List<TemporaryLoadFacts> temporaryLoads, List<BraceFacts> braces, List<StageFacts> stages, List<SetupFacts> setups,
        List<VisitFacts> visits, List<WeighingFacts> weighings) implements Fact {

    /**
     * Returns the visits that are on that day. One of which nobody wrote down the last day ends where later ones have begun that carry
     * all of its pieces: they cannot stand in two places.
     */
    public List<VisitFacts> visitsOn(LocalDate day) {
        return visits.stream().filter(visit -> visit.on(day) && !followed(visit, day)).toList();
    }

    /** Tells whether a visit of this car is history on that day: its last day has gone by, or later visits carry all of its pieces. */
    public boolean over(VisitFacts visit, LocalDate day) {
        return visit.over(day) || followed(visit, day);
    }

    private boolean followed(VisitFacts visit, LocalDate day) {
        if (visit.current().isPresent() || visit.to().isPresent() || visit.from().isEmpty()) {
            return false;
        }
        Set<String> elsewhere = visits.stream().filter(later -> later.current().orElse(true))
                .filter(later -> later.from().filter(first -> first.isAfter(visit.from().get()) && !first.isAfter(day)).isPresent())
                .flatMap(later -> carriedAt(later).stream()).collect(Collectors.toSet());
        List<String> own = carriedAt(visit);
        return !own.isEmpty() && elsewhere.containsAll(own);
    }

    private List<String> carriedAt(VisitFacts visit) {
        return visit.setupId().flatMap(this::setup).map(SetupFacts::pieceIds).orElse(List.of());
    }

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

    /** Returns the list with the fact of that id replaced. */
    static <T extends Fact> List<T> replace(List<T> list, T fact) {
        return list.stream().map(other -> other.id().equals(fact.id()) ? fact : other).toList();
    }

    /** Returns this car with the setup of that id replaced. */
    public CarFacts with(SetupFacts setup) {
        return new CarFacts(id, name, separateChassis, pieces, mounts, liftPoints, workPoints, cutZones, temporaryLoads, braces, stages,
                replace(setups, setup), visits, weighings);
    }

    /** Returns this car with the visit of that id replaced. */
    public CarFacts with(VisitFacts visit) {
        return new CarFacts(id, name, separateChassis, pieces, mounts, liftPoints, workPoints, cutZones, temporaryLoads, braces, stages,
                setups, replace(visits, visit), weighings);
    }

    /** Returns this car as a question about a day takes it, the same record where that changes nothing; see {@link VisitFacts#asked}. */
    public CarFacts asked(LocalDate asked, LocalDate clock) {
        List<VisitFacts> then = visits.stream().map(visit -> visit.asked(asked, clock)).toList();
        return then.equals(visits) ? this : new CarFacts(id, name, separateChassis, pieces, mounts, liftPoints, workPoints, cutZones,
                temporaryLoads, braces, stages, setups, then, weighings);
    }

    /** Returns this car with the mount of that id replaced. */
    public CarFacts with(MountFacts mount) {
        return new CarFacts(id, name, separateChassis, pieces, replace(mounts, mount), liftPoints, workPoints, cutZones, temporaryLoads,
                braces, stages, setups, visits, weighings);
    }

    /** Returns this car with the brace of that id replaced. */
    public CarFacts with(BraceFacts brace) {
        return new CarFacts(id, name, separateChassis, pieces, mounts, liftPoints, workPoints, cutZones, temporaryLoads,
                replace(braces, brace), stages, setups, visits, weighings);
    }

    /** Returns this car with other places where people lean, pull and stand. */
    public CarFacts withWorkPoints(List<WorkPointFacts> points) {
        return new CarFacts(id, name, separateChassis, pieces, mounts, liftPoints, points, cutZones, temporaryLoads, braces, stages,
                setups, visits, weighings);
    }

    /**
     * Returns this car with some parts off at one visit. The visit gets a stage of its own, so other visits that share the old stage stay
     * as they are.
     *
     * @param visit a visit of this car
     * @param stage the stage of that visit
     * @param partIds parts that are on there
     * @throws IllegalArgumentException when no part is named or one is not on
     */
    public CarFacts partsOff(VisitFacts visit, StageFacts stage, Set<String> partIds) {
        if (partIds.isEmpty() || !stage.partIds().containsAll(partIds)) {
            throw new IllegalArgumentException("only parts that are on at " + stage.name() + " can come off, asked for " + partIds);
        }
        List<String> left = stage.partIds().stream().filter(part -> !partIds.contains(part)).toList();
        StageFacts without = new StageFacts("parts off: " + stage.id() + "/" + visit.id(), stage.name(), left, stage.loadIds());
        return new CarFacts(id, name, separateChassis, pieces, mounts, liftPoints, workPoints, cutZones, temporaryLoads, braces,
                Stream.concat(stages.stream(), Stream.of(without)).toList(), setups, replace(visits, visit.withStage(without.id())),
                weighings);
    }
}
