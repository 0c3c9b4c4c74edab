package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.List;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.linear.SingularStructureException;
import cradlewright.mechanics.linear.SkylineLdl;
import cradlewright.mechanics.linear.SymmetricAssembly;

/**
 * A member made ready for the sum over the frame: rigid ends, releases and axes are folded into its stiffness. The ends of
 * the flexible part move by u = T A q + Q p, with q the movements of the nodes, A rigid ends and axes, T the part of the
 * movement that released freedoms take from the held ones, Q the part that they take from the span loads p. See
 * {@link FrameFormulas#RELEASES} and {@link FrameFormulas#RIGID_ENDS}.
 */
final class MemberElement {

    private static final int SIZE = 12;

    private final MemberAxes axes;
    private final BeamSpan span;
    private final double[][] free;
    private final double[][] release = new double[SIZE][SIZE];
    private final double[][] slack = new double[SIZE][SIZE];
    private final double[][] fromNodes;
    private final double[][] stiffness;

    MemberElement(FrameMember member, MemberAxes axes) {
        this.axes = axes;
        span = new BeamSpan(member.section(), axes.length());
        free = BeamElement.stiffness(member.section(), axes.length());
        release(member);
        fromNodes = product(release, nodeTransform(member));
        stiffness = Vectors.congruent(fromNodes, free);
    }

    private void release(FrameMember member) {
        List<Integer> released = new ArrayList<>();
        for (Dof dof : Dof.values()) {
            if (member.releasedFrom().contains(dof)) {
                released.add(dof.ordinal());
            }
            if (member.releasedTo().contains(dof)) {
                released.add(6 + dof.ordinal());
            }
        }
        for (int i = 0; i < SIZE; i++) {
            release[i][i] = released.contains(i) ? 0 : 1;
        }
        SkylineLdl held = factor(member, released);
        for (int column = 0; column < released.size(); column++) {
            double[] unit = new double[released.size()];
            unit[column] = 1;
            double[] answer = held.solve(unit);
            for (int row = 0; row < released.size(); row++) {
                slack[released.get(row)][released.get(column)] = answer[row];
            }
        }
        for (int row : released) {
            for (int column = 0; column < SIZE; column++) {
                if (!released.contains(column)) {
                    for (int k : released) {
                        release[row][column] -= slack[row][k] * free[k][column];
                    }
                }
            }
        }
    }

    private SkylineLdl factor(FrameMember member, List<Integer> released) {
        SymmetricAssembly block = new SymmetricAssembly(released.size());
        for (int i = 0; i < released.size(); i++) {
            for (int j = 0; j <= i; j++) {
                block.add(i, j, free[released.get(i)][released.get(j)]);
            }
        }
        try {
            return SkylineLdl.factor(block);
        } catch (SingularStructureException e) {
            throw new LooseStructureException("the releases at the ends of a member leave it loose", List.of(),
                    List.of(member.name()));
        }
    }

    private double[][] nodeTransform(FrameMember member) {
        double[][] a = new double[SIZE][SIZE];
        Vec3[] directions = {axes.x(), axes.y(), axes.z()};
        for (int end = 0; end < 2; end++) {
            Vec3 arm = end == 0 ? member.rigidFrom() : member.rigidTo();
            for (int i = 0; i < 3; i++) {
                Vec3 direction = directions[i];
                set(a[6 * end + i], 6 * end, direction);
                set(a[6 * end + i], 6 * end + 3, arm.cross(direction));
                set(a[6 * end + 3 + i], 6 * end + 3, direction);
            }
        }
        return a;
    }

    private static void set(double[] row, int at, Vec3 v) {
        row[at] = v.x();
        row[at + 1] = v.y();
        row[at + 2] = v.z();
    }

    private static double[][] product(double[][] a, double[][] b) {
        double[][] result = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            result[i] = Vectors.transposedTimes(b, a[i]);
        }
        return result;
    }

    MemberAxes axes() {
        return axes;
    }

    BeamSpan span() {
        return span;
    }

    /** Stiffness between the freedoms of both nodes, global axes. */
    double[][] stiffness() {
        return stiffness;
    }

    /** What the span loads do to the two nodes when these are held fast, global axes. */
    double[] nodeLoads(List<SpanLoad> loads) {
        return Vectors.transposedTimes(fromNodes, equivalent(loads));
    }

    private double[] equivalent(List<SpanLoad> loads) {
        double[] p = span.fixedEndForces(free, loads);
        for (int i = 0; i < SIZE; i++) {
            p[i] = -p[i];
        }
        return p;
    }

    /** State of the member for given movements of its nodes. */
    MemberState recover(double[] nodes, List<SpanLoad> loads) {
        double[] p = equivalent(loads);
        double[] ends = Vectors.times(fromNodes, nodes);
        double[] taken = Vectors.times(slack, p);
        for (int i = 0; i < SIZE; i++) {
            ends[i] += taken[i];
        }
        double[] forces = Vectors.times(free, ends);
        for (int i = 0; i < SIZE; i++) {
            forces[i] -= p[i];
        }
        return new MemberState(this, ends, forces, loads);
    }
}
