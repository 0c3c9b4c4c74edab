package cradlewright.benchmarks;

import cradlewright.mechanics.coupled.Contact;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.MemberSection;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.section.HollowSection;
import cradlewright.mechanics.section.SectionProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The measured dolly: a flat grid of rectangular tube 60 x 40 x 3 under twelve pads and on four castors, a rigid shell on the
 * pads. Everything that both programs are given comes from here.
 *
 * <p>The other program's beam takes Iy + Iz for the torsion constant and cannot be told another, and its shear strain has the
 * wrong sign: so both are given that torsion constant and no shear strain.
 */
final class GridDolly {

    /** Seed of gaps and load cases. */
    static final long SEED = 20250314L;
    static final int CASES = 200;
    static final double E = 210e9;
    static final double NU = 0.3;
    static final double DENSITY = 7850;
    static final double PAD_STIFFNESS = 2e6;
    static final double CASTOR_STIFFNESS = 1e6;

    private static final int ALONG = 11;
    private static final int ACROSS = 10;
    private static final double LENGTH = 2.4;
    private static final double WIDTH = 1.2;
    private static final double SHELL_MASS = 450;

    /** One contact: a pad between shell and node, or a castor between node and floor; gap in m. */
    record Touch(String id, int node, boolean pad, double stiffness, double gap) {
    }

    /** A member from node to node. */
    record Bar(int from, int to) {
    }

    /** Loads of one case: the weight of the shell (N) with its balance point (m), a box (N) on one node. */
    record Case(double shell, double x, double y, int boxNode, double box) {
    }

    final List<Vec3> nodes = new ArrayList<>();
    final List<Bar> bars = new ArrayList<>();
    final List<Touch> touches = new ArrayList<>();
    final List<Case> cases = new ArrayList<>();
    final SectionProperties tube = HollowSection.rectangular(0.06, 0.04, 0.003);

    GridDolly() {
        for (int i = 0; i < ALONG; i++) {
            for (int j = 0; j < ACROSS; j++) {
                nodes.add(new Vec3(LENGTH * i / (ALONG - 1), WIDTH * (j / (ACROSS - 1.0) - 0.5), 0));
                if (i > 0) {
                    bars.add(new Bar(at(i - 1, j), at(i, j)));
                }
                if (j > 0) {
                    bars.add(new Bar(at(i, j - 1), at(i, j)));
                }
            }
        }
        Random random = new Random(SEED);
        for (int side : new int[] {1, ACROSS - 2}) {
            for (int i = 0; i < 6; i++) {
                touches.add(new Touch("pad" + touches.size(), at(2 * i, side), true, PAD_STIFFNESS, gap(random)));
            }
        }
        for (int i : new int[] {1, ALONG - 2}) {
            for (int j : new int[] {0, ACROSS - 1}) {
                touches.add(new Touch("castor" + touches.size(), at(i, j), false, CASTOR_STIFFNESS, 2 * gap(random)));
            }
        }
        for (int c = 0; c < CASES; c++) {
            cases.add(new Case(SHELL_MASS * Constants.GRAVITY * (0.7 + 0.6 * random.nextDouble()),
                    LENGTH * (0.3 + 0.4 * random.nextDouble()), 0.5 * WIDTH * (random.nextDouble() - 0.5),
                            random.nextInt(nodes.size()),
                    800 * random.nextDouble()));
        }
    }

    private static double gap(Random random) {
        return 0.001 * random.nextDouble();
    }

    private static int at(int i, int j) {
        return i * ACROSS + j;
    }

    int freedoms() {
        return 6 * nodes.size();
    }

    static String name(int node) {
        return "n" + node;
    }

    static String barName(int bar) {
        return "m" + bar;
    }

    MemberSection section() {
        return MemberSection.withoutShear(E, E / (2 * (1 + NU)), tube.area(), tube.iy(), tube.iz(), tube.iy() + tube.iz());
    }

    /** Returns the grid without supports. */
    FrameModel.Builder grid() {
        FrameModel.Builder builder = FrameModel.builder();
        for (int i = 0; i < nodes.size(); i++) {
            builder.node(name(i), nodes.get(i));
        }
        MemberSection section = section();
        for (int b = 0; b < bars.size(); b++) {
            builder.member(FrameMember.of(barName(b), name(bars.get(b).from()), name(bars.get(b).to()), section, Vec3.UP));
        }
        return builder;
    }

    /** Returns the weight of the members, N, half at each end: the other program's beam takes no weight of its own. */
    double[] ownWeight() {
        double[] weight = new double[nodes.size()];
        for (Bar bar : bars) {
            double half = DENSITY * tube.area() * length(bar) * Constants.GRAVITY / 2;
            weight[bar.from()] += half;
            weight[bar.to()] += half;
        }
        return weight;
    }

    Vec3 direction(Bar bar) {
        return nodes.get(bar.to()).minus(nodes.get(bar.from())).unit();
    }

    double length(Bar bar) {
        return nodes.get(bar.to()).minus(nodes.get(bar.from())).norm();
    }

    List<Contact> contacts() {
        return touches.stream().map(t -> Contact.rests(t.id(), t.pad() ? "shell" : "dolly", t.pad() ? "dolly" : Contact.GROUND,
                nodes.get(t.node()), 1 / t.stiffness()).withGap(t.gap())).toList();
    }
}
