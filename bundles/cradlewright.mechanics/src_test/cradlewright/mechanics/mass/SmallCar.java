package cradlewright.mechanics.mass;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;

/** The seven parts that the check values use. */
final class SmallCar {

    static final MassPoint ENGINE = part(205, 0.850, 0.010, 0.560);
    static final MassPoint GEARBOX = part(52, 1.450, 0, 0.450);
    static final List<MassPoint> SHELL = List.of(part(285, 2.150, 0, 0.720), part(38, 2.250, 0, 1.050));
    static final List<MassPoint> ROLLING = List.of(SHELL.get(0), SHELL.get(1), part(165, 2.050, 0, 0.380),
            part(118, 0.950, 0, 0.330), part(142, 3.400, 0, 0.330));
    static final List<MassPoint> ALL = List.of(ROLLING.get(0), ROLLING.get(1), ROLLING.get(2), ROLLING.get(3), ROLLING.get(4),
            ENGINE, GEARBOX);

    private SmallCar() {
    }

    /** 2 % of the mass, 10 mm in each direction. */
    static MassPoint part(double mass, double x, double y, double z) {
        return new MassPoint(mass, new Vec3(x, y, z), 0.02 * mass, new Vec3(0.01, 0.01, 0.01), MassPoint.NO_COMMON_SCALE);
    }

    static MassPoint onScale(MassPoint p, String scale) {
        return new MassPoint(p.mass(), p.position(), p.massUncertainty(), p.positionUncertainty(), scale);
    }
}
