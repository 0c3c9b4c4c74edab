package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** One member under one load case: movements and actions of the ends in member axes, and what follows between them. */
final class MemberState {

    private static final double NO_CURVATURE = 1e-12;

    private final MemberElement element;
    private final Motion near;
    private final double[] forces;
    private final List<SpanLoad> loads;

    MemberState(MemberElement element, double[] ends, double[] forces, List<SpanLoad> loads) {
        this.element = element;
        this.near = new Motion(Vectors.vector(ends, 0), Vectors.vector(ends, 3));
        this.forces = forces;
        this.loads = loads;
    }

    /** Action of the near (0) or far (6) joint on the member, member axes. */
    ForceMoment end(int offset) {
        return new ForceMoment(Vectors.vector(forces, offset), Vectors.vector(forces, offset + 3));
    }

    InternalForces forces(double x, CutSide side) {
        return element.span().forces(x, side, forces, loads);
    }

    /** Movement of the axis in global axes. */
    Motion motion(double x) {
        Motion local = element.span().motion(x, near, forces, loads);
        return new Motion(element.axes().toGlobal(local.translation()), element.axes().toGlobal(local.rotation()));
    }

    /** Between two neighbouring load stations every internal force is a polynomial of second degree or less. */
    List<StationForces> critical() {
        double length = element.axes().length();
        double[] breaks = DoubleStream.concat(DoubleStream.of(0, length), loads.stream().mapToDouble(SpanLoad::start))
                .filter(x -> x >= 0 && x <= length).sorted().distinct().toArray();
        List<StationForces> stations = new ArrayList<>();
        if (loads.stream().anyMatch(load -> load.order() == 0 && load.start() == 0)) {
            add(stations, 0, CutSide.BEFORE);
        }
        for (int i = 1; i < breaks.length; i++) {
            double left = breaks[i - 1];
            double right = breaks[i];
            add(stations, left, CutSide.AFTER);
            InternalForces a = forces(left, CutSide.AFTER);
            InternalForces m = forces((left + right) / 2, CutSide.BEFORE);
            InternalForces b = forces(right, CutSide.BEFORE);
            DoubleStream.of(peak(a.my(), m.my(), b.my()), peak(a.mz(), m.mz(), b.mz())).filter(s -> s > 0 && s < 1).sorted()
                    .distinct().forEach(s -> add(stations, left + s * (right - left), CutSide.BEFORE));
            add(stations, right, CutSide.BEFORE);
        }
        if (loads.stream().anyMatch(load -> load.order() == 0 && load.start() == length)) {
            add(stations, length, CutSide.AFTER);
        }
        return stations;
    }

    private void add(List<StationForces> stations, double x, CutSide side) {
        stations.add(new StationForces(x, forces(x, side)));
    }

    /** Place from 0 to 1 of the vertex of the parabola through three values, outside that range if there is none. */
    private static double peak(double start, double middle, double end) {
        double curvature = start - 2 * middle + end;
        double size = Math.max(Math.abs(middle), Math.max(Math.abs(start), Math.abs(end)));
        if (Math.abs(curvature) <= NO_CURVATURE * size) {
            return -1;
        }
        return 0.5 - (end - start) / (4 * curvature);
    }
}
