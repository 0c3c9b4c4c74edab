package cradlewright.ui.wizards;

import cradlewright.model.base.Condition;
import cradlewright.model.base.Named;
import cradlewright.model.io.IdSource;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a new car begins with: its pieces, a list of parts, its body mounts in pairs from front to back, and the stage in which everything
 * is on. What nobody has said stays empty, so that the checks name it as missing.
 *
 * @param kind how it is built
 * @param mountRows pairs of mounts
 * @param size length and width of the shell, when places are to be guessed; nothing leaves all places empty
 * @param parts the parts that it has
 */
record CarPlan(CarKind kind, int mountRows, Optional<Size> size, List<PlannedPart> parts) {

    /** Guessed places are good to 300 mm, 19 times in 20: common practice, no source. */
    private static final double UNCERTAIN_PLACE = 150;
    private static final double MOUNT_ACROSS = 0.62;
    private static final double MOUNT_HEIGHT = 425;
    private static final double FIRST_MOUNT = 0.16;
    private static final double LAST_MOUNT = 0.85;

    CarPlan {
        parts = List.copyOf(parts);
    }

    /**
     * Size of the shell.
     *
     * @param length from bumper to bumper, mm
     * @param width over the sills, mm
     */
    record Size(double length, double width) {
    }

    /**
     * A part on the list.
     *
     * @param piece name of the piece to which it belongs
     * @param typical what such a part is usually like
     * @param mass how heavy it is; nothing when not known
     */
    record PlannedPart(String piece, CarKind.TypicalPart typical, Optional<Measured> mass) {
    }

    /** Fills a car. */
    void fill(Car car, IdSource ids) {
        VehicleFactory make = VehicleFactory.eINSTANCE;
        car.setConstruction(kind.construction());
        Stage all = named(make.createStage(), Messages.Car_allOn, ids);
        for (CarKind.TypicalPiece typical : kind.pieces()) {
            Piece piece = named(make.createPiece(), typical.name(), ids);
            piece.setKind(typical.kind());
            for (PlannedPart planned : parts) {
                if (planned.piece().equals(typical.name())) {
                    Part part = named(make.createPart(), planned.typical().name(), ids);
                    planned.mass().ifPresent(part::setMass);
                    size.ifPresent(known -> part.setPosition(guess(known, planned.typical().along(), planned.typical().across(),
                            planned.typical().height())));
                    piece.getParts().add(part);
                    all.getOn().add(part);
                }
            }
            car.getPieces().add(piece);
        }
        for (int row = 1; row <= mountRows; row++) {
            double along = mountRows == 1 ? FIRST_MOUNT : FIRST_MOUNT + (LAST_MOUNT - FIRST_MOUNT) * (row - 1) / (mountRows - 1);
            car.getMounts().add(mount(row + "L", along, -MOUNT_ACROSS, ids));
            car.getMounts().add(mount(row + "R", along, MOUNT_ACROSS, ids));
        }
        car.getStages().add(all);
    }

    private Mount mount(String name, double along, double across, IdSource ids) {
        Mount mount = named(VehicleFactory.eINSTANCE.createMount(), name, ids);
        mount.setCondition(Condition.NOT_LOOKED_AT);
        size.ifPresent(known -> mount.setPosition(guess(known, along, across, MOUNT_HEIGHT)));
        return mount;
    }

    private static Position guess(Size size, double along, double across, double height) {
        return new Position(Math.rint(along * size.length()), Math.rint(across * size.width() / 2), height,
                OptionalDouble.of(UNCERTAIN_PLACE), Source.GUESSED);
    }

    private static <T extends Named> T named(T object, String name, IdSource ids) {
        object.setName(name);
        return ids.give(object);
    }
}
