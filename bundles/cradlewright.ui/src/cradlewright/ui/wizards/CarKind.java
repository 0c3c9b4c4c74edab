package cradlewright.ui.wizards;

import cradlewright.model.vehicle.Construction;
import cradlewright.model.vehicle.PieceKind;
import java.util.List;

/**
 * Ways in which cars are built, with what such a car comes apart into. Masses and places are guesses of common practice, without a
 * source: a middling family car of the nineteen-sixties; they give the list a start and are marked as guessed.
 */
enum CarKind {
    /** A body on a chassis of its own, held by body mounts. */
    BODY_ON_CHASSIS(Construction.SEPARATE_CHASSIS, 4, List.of(
            new TypicalPiece(Messages.Typical_shell, PieceKind.SHELL, shell(172)),
            new TypicalPiece(Messages.Typical_chassis, PieceKind.CHASSIS, List.of(
                    new TypicalPart(Messages.Typical_bareChassis, 120, 0.50, 0, 430),
                    new TypicalPart(Messages.Typical_frontAxle, 75, 0.17, 0, 330),
                    new TypicalPart(Messages.Typical_rearAxle, 85, 0.80, 0, 330),
                    new TypicalPart(Messages.Typical_steeringBoxWithLinkage, 13, 0.18, -0.4, 420),
                    new TypicalPart(Messages.Typical_fuelPipesAndExhaust, 18, 0.60, 0.3, 330))),
            engine())),
    /** A body that carries itself, with a subframe under each end. */
    UNIT_BODY(Construction.INTEGRAL, 4, List.of(
            new TypicalPiece(Messages.Typical_shell, PieceKind.SHELL, shell(260)),
            new TypicalPiece(Messages.Typical_frontSubframe, PieceKind.OTHER, List.of(
                    new TypicalPart(Messages.Typical_bareFrontSubframe, 28, 0.17, 0, 330),
                    new TypicalPart(Messages.Typical_frontSuspension, 55, 0.17, 0, 330))),
            new TypicalPiece(Messages.Typical_rearSubframe, PieceKind.OTHER, List.of(
                    new TypicalPart(Messages.Typical_bareRearSubframe, 22, 0.80, 0, 330),
                    new TypicalPart(Messages.Typical_rearAxle, 70, 0.80, 0, 330))),
            engine())),
    /** A cab and a load body on a ladder chassis, each with mounts of its own. */
    CAB_AND_BODY_ON_LADDER(Construction.SEPARATE_CHASSIS, 5, List.of(
            new TypicalPiece(Messages.Typical_cab, PieceKind.SHELL, List.of(
                    new TypicalPart(Messages.Typical_bareCab, 150, 0.30, 0, 900),
                    new TypicalPart(Messages.Typical_leftDoor, 22, 0.30, -0.95, 850),
                    new TypicalPart(Messages.Typical_rightDoor, 22, 0.30, 0.95, 850),
                    new TypicalPart(Messages.Typical_bonnet, 16, 0.10, 0, 950),
                    new TypicalPart(Messages.Typical_windscreen, 12, 0.22, 0, 1200),
                    new TypicalPart(Messages.Typical_bench, 25, 0.36, 0, 750),
                    new TypicalPart(Messages.Typical_dashboardWithInstruments, 12, 0.23, 0, 950))),
            new TypicalPiece(Messages.Typical_loadBody, PieceKind.BOX, List.of(
                    new TypicalPart(Messages.Typical_bareLoadBody, 180, 0.72, 0, 900),
                    new TypicalPart(Messages.Typical_tailboard, 20, 0.98, 0, 850))),
            new TypicalPiece(Messages.Typical_chassis, PieceKind.CHASSIS, List.of(
                    new TypicalPart(Messages.Typical_bareLadderChassis, 160, 0.50, 0, 480),
                    new TypicalPart(Messages.Typical_frontAxle, 90, 0.17, 0, 350),
                    new TypicalPart(Messages.Typical_rearAxle, 110, 0.78, 0, 350),
                    new TypicalPart(Messages.Typical_fuelTankEmpty, 14, 0.60, 0.5, 480))),
            engine()));

    private final Construction construction;
    private final int mountRows;
    private final List<TypicalPiece> pieces;

    CarKind(Construction construction, int mountRows, List<TypicalPiece> pieces) {
        this.construction = construction;
        this.mountRows = mountRows;
        this.pieces = pieces;
    }

    /**
     * One piece of such a car.
     *
     * @param name its name
     * @param kind its kind
     * @param parts its parts
     */
    record TypicalPiece(String name, PieceKind kind, List<TypicalPart> parts) {
    }

    /**
     * One part of such a car.
     *
     * @param name its name
     * @param mass guessed mass, kg
     * @param along guessed place along the car, as a share of its length from the front
     * @param across guessed place across, as a share of half its width, to the right
     * @param height guessed height over the lowest marks, mm
     */
    record TypicalPart(String name, double mass, double along, double across, double height) {
    }

    private static List<TypicalPart> shell(double bare) {
        return List.of(new TypicalPart(Messages.Typical_bareShell, bare, 0.53, 0, 800),
        new TypicalPart(Messages.Typical_leftDoor, 19, 0.49, -0.95, 820),
                new TypicalPart(Messages.Typical_rightDoor, 19, 0.49, 0.95, 820),
                new TypicalPart(Messages.Typical_bonnet, 15, 0.18, 0, 900),
                new TypicalPart(Messages.Typical_bootLid, 11, 0.93, 0, 860),
                new TypicalPart(Messages.Typical_leftFrontWing, 9, 0.17, -0.9, 740),
                new TypicalPart(Messages.Typical_rightFrontWing, 9, 0.17, 0.9, 740),
                new TypicalPart(Messages.Typical_windscreen, 11, 0.38, 0, 1150),
                new TypicalPart(Messages.Typical_rearWindow, 8, 0.76, 0, 1140),
                new TypicalPart(Messages.Typical_dashboardWithInstruments, 13, 0.37, 0, 920),
                new TypicalPart(Messages.Typical_leftFrontChair, 13, 0.53, -0.5, 690),
                new TypicalPart(Messages.Typical_rightFrontChair, 13, 0.53, 0.5, 690),
                new TypicalPart(Messages.Typical_rearBench, 16, 0.70, 0, 650),
                new TypicalPart(Messages.Typical_wiringLoom, 8, 0.43, 0, 800),
                new TypicalPart(Messages.Typical_fuelTankEmpty, 11, 0.88, 0, 560),
                new TypicalPart(Messages.Typical_frontBumper, 7, 0.01, 0, 520),
                new TypicalPart(Messages.Typical_rearBumper, 6, 0.99, 0, 530));
    }

    private static TypicalPiece engine() {
        return new TypicalPiece(Messages.Typical_engineAndGearbox, PieceKind.ENGINE, List.of(
                new TypicalPart(Messages.Typical_engine, 140, 0.16, 0, 600),
                new TypicalPart(Messages.Typical_gearbox, 38, 0.31, 0, 500)));
    }

    Construction construction() {
        return construction;
    }

    /** Returns how many pairs of mounts such a car usually has. */
    int mountRows() {
        return mountRows;
    }

    List<TypicalPiece> pieces() {
        return pieces;
    }
}
