package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.BraceFacts;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Construction;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.LoadKind;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.model.vehicle.Visit;
import cradlewright.model.vehicle.WorkKind;
import cradlewright.model.vehicle.WorkPoint;
import java.util.Optional;

/** Reads a car. */
final class CarImporter {

    private CarImporter() {
    }

    /** Reads the whole car; one whose construction nobody stated is taken to have a chassis, so that its mounts are looked at. */
    static CarFacts car(Car car) {
        return new CarFacts(id(car), name(car), car.getConstruction() != Construction.INTEGRAL,
                each(car.getPieces(), CarImporter::piece), each(car.getMounts(), CarImporter::mount),
                each(car.getLiftPoints(), CarImporter::liftPoint), each(car.getWorkPoints(), CarImporter::workPoint),
                each(car.getCutZones(), CarImporter::cutZone), each(car.getTemporaryLoads(), CarImporter::temporaryLoad),
                each(car.getBraces(), CarImporter::brace), each(car.getStages(), CarImporter::stage),
                each(car.getSetups(), SetupImporter::setup), each(car.getVisits(), CarImporter::visit),
                each(car.getWeighings(), WeighingImporter::weighing));
    }

    private static PieceFacts piece(Piece piece) {
        return new PieceFacts(id(piece), name(piece), kind(piece.getKind()), Values.si(piece.getTorsionalStiffness()),
                Values.si(piece.getBendingStiffness()), Values.points(piece.getOutline()),
                each(piece.getParts(), CarImporter::part));
    }

    private static PieceKind kind(cradlewright.model.vehicle.PieceKind kind) {
        if (kind == null) {
            return PieceKind.OTHER;
        }
        return switch (kind) {
            case SHELL -> PieceKind.SHELL;
            case CHASSIS -> PieceKind.CHASSIS;
            case ENGINE -> PieceKind.ENGINE;
            case BOX -> PieceKind.BOX;
            case OTHER -> PieceKind.OTHER;
        };
    }

    private static PartFacts part(Part part) {
        return new PartFacts(id(part), name(part), Values.si(part.getMass()), Values.spot(part.getPosition()),
                Values.celsius(part.getTemperatureLimit()));
    }

    private static MountFacts mount(Mount mount) {
        return new MountFacts(id(mount), name(mount), Values.spot(mount.getPosition()), Words.condition(mount.getCondition()),
                Values.si(mount.getSheetThickness()), Identity.reference(mount.getBolt()), Values.count(mount.getBoltCount()),
                fast(mount.getState()), ShimImporter.stack(mount.getAsFound()), ShimImporter.stack(mount.getOnDolly()),
                ShimImporter.stack(mount.getAsBuilt()));
    }

    private static Optional<Boolean> fast(MountState state) {
        return Optional.ofNullable(state).map(given -> switch (given) {
            case FAST -> true;
            case FREE -> false;
        });
    }

    private static LiftPointFacts liftPoint(LiftPoint point) {
        return new LiftPointFacts(id(point), name(point), Values.spot(point.getPosition()),
                Words.condition(point.getCondition()), Values.si(point.getSheetThickness()),
                Optional.ofNullable(point.getLookedAt()), Values.rating(point.getCapacity()), Words.basis(point.getBasis()));
    }

    private static WorkPointFacts workPoint(WorkPoint point) {
        return new WorkPointFacts(id(point), name(point), Values.spot(point.getPosition()),
                Values.direction(point.getDirection()), kind(point.getKind()));
    }

    private static Optional<WorkPointFacts.Kind> kind(WorkKind kind) {
        return Optional.ofNullable(kind).map(given -> switch (given) {
            case LEAN -> WorkPointFacts.Kind.LEAN;
            case BAR -> WorkPointFacts.Kind.BAR;
            case STAND_ON -> WorkPointFacts.Kind.STAND_ON;
        });
    }

    private static CutZoneFacts cutZone(CutZone zone) {
        return new CutZoneFacts(id(zone), name(zone), Values.point(zone.getLow()), Values.point(zone.getHigh()), zone.isPlanned(),
                Identity.references(zone.getBraces()));
    }

    private static TemporaryLoadFacts temporaryLoad(TemporaryLoad load) {
        return new TemporaryLoadFacts(id(load), name(load), kind(load.getKind()), Values.si(load.getMass()),
                Values.spot(load.getPosition()));
    }

    /** Returns the kind; people when nobody said, because the strictest rules hold for them. */
    private static TemporaryLoadFacts.Kind kind(LoadKind kind) {
        if (kind == null) {
            return TemporaryLoadFacts.Kind.PEOPLE;
        }
        return switch (kind) {
            case PEOPLE -> TemporaryLoadFacts.Kind.PEOPLE;
            case BOX -> TemporaryLoadFacts.Kind.BOX;
            case BRACE -> TemporaryLoadFacts.Kind.BRACE;
            case TOOLS -> TemporaryLoadFacts.Kind.TOOLS;
        };
    }

    private static BraceFacts brace(Brace brace) {
        return new BraceFacts(id(brace), name(brace), Values.point(brace.getFrom()), Values.point(brace.getTo()),
                brace.isFitted());
    }

    private static StageFacts stage(Stage stage) {
        return new StageFacts(id(stage), name(stage), Identity.references(stage.getOn()), Identity.references(stage.getLoads()));
    }

    private static VisitFacts visit(Visit visit) {
        return new VisitFacts(id(visit), name(visit), Identity.reference(visit.getStage()), Identity.reference(visit.getSetup()),
                Optional.ofNullable(visit.getFrom()), Optional.ofNullable(visit.getTo()),
                Optional.ofNullable(visit.getCurrent()));
    }
}
