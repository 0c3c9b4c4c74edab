package cradlewright.mechanics.frame;

import java.util.List;

import cradlewright.mechanics.geometry.Vec3;

/**
 * Statics and bending of one straight member from its near end on (method of initial parameters): exact for loads at points
 * and uniform loads. See {@link FrameFormulas#ALONG_MEMBER} and {@link FrameFormulas#SPAN_LOADS}.
 */
final class BeamSpan {

    private final MemberSection section;
    private final double length;

    BeamSpan(MemberSection section, double length) {
        this.section = section;
        this.length = length;
    }

    /** d^n/n!, 0 before the start of the load. */
    private static double growth(double d, int n) {
        double value = 1;
        for (int i = 1; i <= n; i++) {
            value *= d / i;
        }
        return value;
    }

    private static boolean begun(SpanLoad load, double x, CutSide side) {
        return load.start() < x || load.start() == x && side == CutSide.AFTER;
    }

    /**
     * Internal forces at the distance x under the action on the near end, the first six of {@code nearForces}, and the loads of
     * the span; the torque is that about the shear centre.
     */
    InternalForces forces(double x, CutSide side, double[] nearForces, List<SpanLoad> loads) {
        InternalForces f = aboutCentroid(x, side, nearForces, loads);
        return new InternalForces(f.n(), f.vy(), f.vz(), f.t() - section.shearTorque(f.vy(), f.vz()), f.my(), f.mz());
    }

    private InternalForces aboutCentroid(double x, CutSide side, double[] nearForces, List<SpanLoad> loads) {
        double n = -nearForces[0];
        double vy = -nearForces[1];
        double vz = -nearForces[2];
        double t = -nearForces[3];
        double my = -nearForces[4] - nearForces[2] * x;
        double mz = -nearForces[5] + nearForces[1] * x;
        for (SpanLoad load : loads) {
            if (!begun(load, x, side)) {
                continue;
            }
            double g0 = growth(x - load.start(), load.order());
            double g1 = growth(x - load.start(), load.order() + 1);
            Vec3 f = load.force();
            Vec3 m = load.moment();
            n -= f.x() * g0;
            vy -= f.y() * g0;
            vz -= f.z() * g0;
            t -= m.x() * g0;
            my -= m.y() * g0 + f.z() * g1;
            mz -= m.z() * g0 - f.y() * g1;
        }
        return new InternalForces(n, vy, vz, t, my, mz);
    }

    /** Movement at the distance x, member axes, if the near end moves by {@code near}. */
    Motion motion(double x, Motion near, double[] nearForces, List<SpanLoad> loads) {
        Vec3 shearCentre = new Vec3(0, section.shearCentreY(), section.shearCentreZ());
        Vec3 atStart = new Vec3(near.rotation().x(), 0, 0).cross(shearCentre);
        Motion moved = new Motion(near.translation().plus(atStart), near.rotation()).at(new Vec3(x, 0, 0));
        moved = bent(moved, x, new SpanLoad(0, 0, Vectors.vector(nearForces, 0), Vectors.vector(nearForces, 3)));
        for (SpanLoad load : loads) {
            if (begun(load, x, CutSide.BEFORE)) {
                moved = bent(moved, x, load);
            }
        }
        // Bending moves the centroid along the member by itself: only the twist leads to the shear centre and back.
        Vec3 twist = new Vec3(moved.rotation().x(), 0, 0);
        return new Motion(moved.translation().plus(twist.cross(shearCentre.times(-1))), moved.rotation());
    }

    /** Adds what one load between the near end and the cut does to the shear centre. */
    private Motion bent(Motion moved, double x, SpanLoad load) {
        double d = x - load.start();
        double g1 = growth(d, load.order() + 1);
        double g2 = growth(d, load.order() + 2);
        double g3 = growth(d, load.order() + 3);
        double eiy = section.e() * section.iy();
        double eiz = section.e() * section.iz();
        Vec3 f = load.force();
        Vec3 m = load.moment();
        double torque = m.x() - section.shearTorque(f.y(), f.z());
        Vec3 turn = new Vec3(torque * g1 / (section.g() * section.j()), (m.y() * g1 + f.z() * g2) / eiy,
                (m.z() * g1 - f.y() * g2) / eiz);
        Vec3 shift = new Vec3(f.x() * g1 / (section.e() * section.area()),
                (m.z() * g2 - f.y() * g3) / eiz + f.y() * g1 / (section.g() * section.shearAreaY()),
                f.z() * g1 / (section.g() * section.shearAreaZ()) - (m.y() * g2 + f.z() * g3) / eiy);
        return new Motion(moved.translation().minus(shift), moved.rotation().minus(turn));
    }

    /** What the near end must supply so that the loads of the span are carried with nothing acting on the far end. */
    double[] cantileverForces(List<SpanLoad> loads) {
        InternalForces far = aboutCentroid(length, CutSide.AFTER, new double[6], loads);
        return new double[] {far.n(), far.vy(), far.vz(), far.t(), far.my() - far.vz() * length, far.mz() + far.vy() * length};
    }

    /** Actions on both ends of the member when both are held fast, member axes, twelve numbers. */
    double[] fixedEndForces(double[][] stiffness, List<SpanLoad> loads) {
        double[] near = cantileverForces(loads);
        Motion far = motion(length, new Motion(Vec3.ZERO, Vec3.ZERO), near, loads);
        double[] back = new double[12];
        for (Dof dof : Dof.values()) {
            back[6 + dof.ordinal()] = -far.component(dof);
        }
        double[] forces = Vectors.times(stiffness, back);
        for (int i = 0; i < 6; i++) {
            forces[i] += near[i];
        }
        return forces;
    }

    /** Sum of the loads with its moment about the near end, member axes. */
    ForceMoment sum(List<SpanLoad> loads) {
        double[] near = cantileverForces(loads);
        return new ForceMoment(Vectors.vector(near, 0), Vectors.vector(near, 3)).times(-1);
    }
}
