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

    private final FrameMember member;
    private final MemberAxes axes;
    private final BeamSpan span;
    /** First freedom of the near and of the far node. */
    private final int near;
    private final int far;
    private final double[][] free;
    /** T and Q; null where nothing is released, then T changes nothing and Q gives nothing. */
    private final double[][] release;
    private final double[][] slack;

    MemberElement(FrameModel model, FrameMember member) {
        this.member = member;
        axes = model.axes(member.name());
        near = 6 * model.nodeIndex(member.from());
        far = 6 * model.nodeIndex(member.to());
        span = new BeamSpan(member.section(), axes.length());
        free = BeamElement.stiffness(member.section(), axes.length());
        List<Integer> released = released();
        slack = released.isEmpty() ? null : slack(released);
        release = released.isEmpty() ? null : release(released);
    }

    private List<Integer> released() {
        List<Integer> released = new ArrayList<>();
        for (Dof dof : Dof.values()) {
            if (member.releasedFrom().contains(dof)) {
                released.add(dof.ordinal());
            }
            if (member.releasedTo().contains(dof)) {
                released.add(6 + dof.ordinal());
            }
        }
        return released;
    }

    private double[][] slack(List<Integer> released) {
        double[][] result = new double[SIZE][SIZE];
        SkylineLdl held = factor(released);
        for (int column = 0; column < released.size(); column++) {
            double[] unit = new double[released.size()];
            unit[column] = 1;
            double[] answer = held.solve(unit);
            for (int row = 0; row < released.size(); row++) {
                result[released.get(row)][released.get(column)] = answer[row];
            }
        }
        return result;
    }

    private double[][] release(List<Integer> released) {
        double[][] result = new double[SIZE][SIZE];
        for (int i = 0; i < SIZE; i++) {
            result[i][i] = released.contains(i) ? 0 : 1;
        }
        for (int row : released) {
            for (int column = 0; column < SIZE; column++) {
                if (!released.contains(column)) {
                    for (int k : released) {
                        result[row][column] -= slack[row][k] * free[k][column];
                    }
                }
            }
        }
        return result;
    }

    private SkylineLdl factor(List<Integer> released) {
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

    /** A of the class comment. */
    private double[][] nodeTransform() {
        double[][] a = new double[SIZE][SIZE];
        Vec3[] directions = {axes.x(), axes.y(), axes.z()};
        for (int end = 0; end < 2; end++) {
            Vec3 arm = end == 0 ? member.rigidFrom() : member.rigidTo();
            for (int i = 0; i < 3; i++) {
                Vec3 direction = directions[i];
                put(direction, a[6 * end + i], 6 * end);
                put(arm.cross(direction), a[6 * end + i], 6 * end + 3);
                put(direction, a[6 * end + 3 + i], 6 * end + 3);
            }
        }
        return a;
    }

    private static void put(Vec3 v, double[] row, int at) {
        row[at] = v.x();
        row[at + 1] = v.y();
        row[at + 2] = v.z();
    }

    MemberAxes axes() {
        return axes;
    }

    BeamSpan span() {
        return span;
    }

    /** Place of one of the twelve freedoms of its nodes among those of the frame. */
    int freedom(int i) {
        return i < 6 ? near + i : far + i - 6;
    }

    /** Stiffness between the freedoms of both nodes, global axes. */
    double[][] stiffness() {
        double[][] held = release == null ? free : Vectors.congruent(release, free);
        return Vectors.congruent(nodeTransform(), held);
    }

    /** Adds what the span loads do to the two nodes when these are held fast, global axes, to the actions on all freedoms. */
    void addNodeLoads(List<SpanLoad> loads, double[] actions) {
        addBack(equivalent(loads), actions);
    }

    /** Adds what the nodes must do to the member for given movements of all freedoms, span loads left out. */
    void addForces(double[] movements, double[] actions) {
        addBack(Vectors.times(free, ends(movements)), actions);
    }

    private double[] equivalent(List<SpanLoad> loads) {
        double[] p = span.fixedEndForces(free, loads);
        for (int i = 0; i < SIZE; i++) {
            p[i] = -p[i];
        }
        return p;
    }

    /** T A q, member axes. */
    private double[] ends(double[] movements) {
        double[] local = new double[SIZE];
        toMember(movements, near, member.rigidFrom(), local, 0);
        toMember(movements, far, member.rigidTo(), local, 6);
        return release == null ? local : Vectors.times(release, local);
    }

    private void toMember(double[] movements, int node, Vec3 arm, double[] local, int end) {
        Vec3 turn = Vectors.vector(movements, node + 3);
        put(axes.toMember(Vectors.vector(movements, node).plus(turn.cross(arm))), local, end);
        put(axes.toMember(turn), local, end + 3);
    }

    /** Adds A'T'p. */
    private void addBack(double[] p, double[] actions) {
        double[] held = release == null ? p : Vectors.transposedTimes(release, p);
        addToNode(held, 0, member.rigidFrom(), actions, near);
        addToNode(held, 6, member.rigidTo(), actions, far);
    }

    private void addToNode(double[] local, int end, Vec3 arm, double[] actions, int node) {
        Vec3 force = axes.toGlobal(Vectors.vector(local, end));
        Vec3 moment = axes.toGlobal(Vectors.vector(local, end + 3)).plus(arm.cross(force));
        actions[node] += force.x();
        actions[node + 1] += force.y();
        actions[node + 2] += force.z();
        actions[node + 3] += moment.x();
        actions[node + 4] += moment.y();
        actions[node + 5] += moment.z();
    }

    /** State of the member for given movements of all freedoms. */
    MemberState recover(double[] movements, List<SpanLoad> loads) {
        return loaded(ends(movements), loads);
    }

    /** State of the member under its span loads alone, both nodes held fast. */
    MemberState held(List<SpanLoad> loads) {
        return loaded(new double[SIZE], loads);
    }

    private MemberState loaded(double[] ends, List<SpanLoad> loads) {
        if (loads.isEmpty()) {
            return new MemberState(this, ends, Vectors.times(free, ends), loads);
        }
        double[] p = equivalent(loads);
        if (slack != null) {
            Vectors.addTimes(ends, 1, Vectors.times(slack, p));
        }
        double[] forces = Vectors.times(free, ends);
        Vectors.addTimes(forces, -1, p);
        return new MemberState(this, ends, forces, loads);
    }
}
