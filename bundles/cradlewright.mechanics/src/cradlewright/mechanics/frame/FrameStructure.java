package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.linear.SingularStructureException;
import cradlewright.mechanics.linear.SkylineLdl;
import cradlewright.mechanics.linear.SymmetricAssembly;

/**
 * A frame assembled and factorised once, then solved for any number of load cases. Immutable, safe for use by several
 * threads.
 *
 * <p>Linear elastic, small movements, no second-order effects, no warping torsion. A free body has all freedoms of one node
 * clamped: under loads that balance the clamp carries nothing, and no force depends on the choice of node. See
 * {@link FrameFormulas#ELEMENT} and {@link FrameFormulas#FREE_BODY}.
 */
public final class FrameStructure {

    /** Loads on a free body may miss balance by this share of their sum of amounts. */
    private static final double BALANCE = 1e-6;
    private static final double MOVES = 1e-6;

    private final FrameModel model;
    private final String clamp;
    private final MemberElement[] elements;
    /** For each freedom its unknown, or -1 where fixed. */
    private final int[] unknown;
    private final double[] spring;
    private final SkylineLdl factors;

    private FrameStructure(FrameModel model, String clamp) {
        this.model = model;
        this.clamp = clamp;
        elements = model.members().stream().map(member -> new MemberElement(model, member)).toArray(MemberElement[]::new);
        int freedoms = 6 * model.nodes().size();
        unknown = new int[freedoms];
        spring = new double[freedoms];
        int unknowns = numberUnknowns();
        requireConnected();
        factors = factor(unknowns);
    }

    /**
     * Returns the frame on its supports.
     *
     * @throws LooseStructureException if a part has no support or can move without resistance
     */
    public static FrameStructure supported(FrameModel model) {
        return new FrameStructure(Objects.requireNonNull(model, "model"), null);
    }

    /**
     * Returns the frame as a free body, clamped at the node to which most member ends are joined without a release.
     *
     * @throws IllegalArgumentException if the model has supports
     * @throws LooseStructureException if a part hangs loose or the body is a mechanism
     */
    public static FrameStructure freeBody(FrameModel model) {
        int[] joined = new int[model.nodes().size()];
        for (FrameMember member : model.members()) {
            joined[model.nodeIndex(member.from())] += member.releasedFrom().isEmpty() ? 1 : 0;
            joined[model.nodeIndex(member.to())] += member.releasedTo().isEmpty() ? 1 : 0;
        }
        FrameNode best = model.nodes().stream()
                .max(Comparator.comparingInt((FrameNode node) -> joined[model.nodeIndex(node.name())])
                        .thenComparing(Comparator.comparingInt((FrameNode node) -> model.nodeIndex(node.name())).reversed()))
                .orElseThrow();
        return freeBody(model, best.name());
    }

    /**
     * Returns the frame as a free body clamped at a given node.
     *
     * @throws IllegalArgumentException if the model has supports or no such node
     * @throws LooseStructureException if a part hangs loose or the body is a mechanism
     */
    public static FrameStructure freeBody(FrameModel model, String clampNode) {
        if (!model.supports().isEmpty()) {
            throw new IllegalArgumentException("a free body has no supports, found some at " + model.supports().keySet());
        }
        return new FrameStructure(model, model.node(clampNode).name());
    }

    private int numberUnknowns() {
        int count = 0;
        for (int node = 0; node < model.nodes().size(); node++) {
            String name = model.nodes().get(node).name();
            Map<Dof, Double> held = model.supports().getOrDefault(name, Map.of());
            for (Dof dof : Dof.values()) {
                double stiffness = held.getOrDefault(dof, 0.0);
                boolean fixed = Double.isInfinite(stiffness) || name.equals(clamp);
                unknown[6 * node + dof.ordinal()] = fixed ? -1 : count++;
                spring[6 * node + dof.ordinal()] = fixed ? 0 : stiffness;
            }
        }
        return count;
    }

    /** Every node must lead through members to a held node: told before any elimination, because it is easy to explain. */
    private void requireConnected() {
        int[] part = new int[model.nodes().size()];
        Arrays.setAll(part, i -> i);
        for (FrameMember member : model.members()) {
            int a = root(part, model.nodeIndex(member.from()));
            int b = root(part, model.nodeIndex(member.to()));
            part[Math.max(a, b)] = Math.min(a, b);
        }
        Set<Integer> held = new LinkedHashSet<>();
        for (int i = 0; i < unknown.length; i++) {
            if (unknown[i] < 0 || spring[i] > 0) {
                held.add(root(part, i / 6));
            }
        }
        boolean[] loose = new boolean[part.length];
        boolean any = false;
        for (int node = 0; node < part.length; node++) {
            loose[node] = !held.contains(root(part, node));
            any |= loose[node];
        }
        if (any) {
            throw loose(clamp == null ? "parts of the frame have no support" : "parts of the body are not joined to the rest",
                    loose);
        }
    }

    private static int root(int[] part, int node) {
        int i = node;
        while (part[i] != i) {
            i = part[i];
        }
        return i;
    }

    private LooseStructureException loose(String what, boolean[] nodes) {
        List<String> nodeNames = new ArrayList<>();
        for (int i = 0; i < nodes.length; i++) {
            if (nodes[i]) {
                nodeNames.add(model.nodes().get(i).name());
            }
        }
        List<String> memberNames = model.members().stream()
                .filter(m -> nodes[model.nodeIndex(m.from())] || nodes[model.nodeIndex(m.to())]).map(FrameMember::name).toList();
        return new LooseStructureException(what, nodeNames, memberNames);
    }

    private SkylineLdl factor(int unknowns) {
        SymmetricAssembly matrix = new SymmetricAssembly(unknowns);
        for (MemberElement element : elements) {
            double[][] k = element.stiffness();
            for (int i = 0; i < k.length; i++) {
                int row = unknown[element.freedom(i)];
                for (int j = 0; j <= i && row >= 0; j++) {
                    int column = unknown[element.freedom(j)];
                    if (column >= 0 && k[i][j] != 0) {
                        matrix.add(row, column, k[i][j]);
                    }
                }
            }
        }
        for (int i = 0; i < spring.length; i++) {
            if (spring[i] > 0) {
                matrix.add(unknown[i], unknown[i], spring[i]);
            }
        }
        try {
            return SkylineLdl.factor(matrix);
        } catch (SingularStructureException e) {
            throw loose("the frame can move without resistance", moving(spread(e.motion())));
        }
    }

    private boolean[] moving(double[] motion) {
        double size = size();
        double[] amount = new double[model.nodes().size()];
        for (int i = 0; i < motion.length; i++) {
            double weight = i % 6 < 3 ? 1 : size;
            amount[i / 6] = Math.max(amount[i / 6], weight * Math.abs(motion[i]));
        }
        double most = Arrays.stream(amount).max().orElseThrow();
        boolean[] moves = new boolean[amount.length];
        for (int i = 0; i < amount.length; i++) {
            moves[i] = amount[i] > MOVES * most;
        }
        return moves;
    }

    /** Largest distance of a node from the first one, at least the longest member: the scale between shifts and turns. */
    private double size() {
        Vec3 first = model.nodes().get(0).position();
        double reach = model.nodes().stream().mapToDouble(n -> n.position().minus(first).norm()).max().orElseThrow();
        return Math.max(reach, Arrays.stream(elements).mapToDouble(e -> e.axes().length()).max().orElse(1));
    }

    private double[] spread(double[] unknowns) {
        double[] all = new double[unknown.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = unknown[i] < 0 ? 0 : unknowns[unknown[i]];
        }
        return all;
    }

    /** Returns the model. */
    public FrameModel model() {
        return model;
    }

    /** Returns true if the frame is a free body. */
    public boolean isFreeBody() {
        return clamp != null;
    }

    /** Returns the clamped node of a free body; throws IllegalStateException for a frame on supports. */
    public String clampNode() {
        if (clamp == null) {
            throw new IllegalStateException("the frame stands on supports, no node is clamped");
        }
        return clamp;
    }

    /**
     * Solves one load case.
     *
     * @throws IllegalArgumentException if the case belongs to another model, or if the loads on a free body do not balance
     */
    public FrameResult solve(LoadCase loads) {
        loads.requireOn(model);
        requireBalance(loads);
        return result(loads, movements(loads));
    }

    /** Prepares the body for its contacts. See {@link FrameFormulas#CONDENSE}. */
    public CondensedFrame condense(List<ContactDof> contacts) {
        return new CondensedFrame(this, contacts);
    }

    void requireBalance(LoadCase loads) {
        if (clamp == null) {
            return;
        }
        double forces = 0;
        double moments = 0;
        for (ForceMoment part : loads.contributions()) {
            forces += part.force().norm();
            moments += part.moment().norm();
        }
        ForceMoment rest = loads.resultant();
        if (rest.force().norm() > BALANCE * forces || rest.moment().norm() > BALANCE * (moments + size() * forces)) {
            throw new IllegalArgumentException("the loads on a free body must balance, found a rest of " + rest.force()
                    + " N and " + rest.moment() + " N*m about the origin");
        }
    }

    FrameResult result(LoadCase loads, double[] movements) {
        return new FrameResult(this, loads, movements);
    }

    MemberElement element(int member) {
        return elements[member];
    }

    /** Movements of all freedoms under a load case; on a free body relative to the clamped node. */
    double[] movements(LoadCase loads) {
        double[] all = forced(loads);
        double[] solution = spread(factors.solve(wanted(loads, all)));
        for (int i = 0; i < all.length; i++) {
            all[i] += solution[i];
        }
        return all;
    }

    /** What the unknowns have to balance, in their numbering, when the fixed freedoms move as {@link #forced} says. */
    private double[] wanted(LoadCase loads, double[] forced) {
        double[] actions = actions(loads);
        double[] b = new double[factors.size()];
        for (int i = 0; i < unknown.length; i++) {
            if (unknown[i] >= 0) {
                b[unknown[i]] = actions[i];
            }
        }
        if (loads.hasSettlements()) {
            double[] back = new double[unknown.length];
            for (MemberElement element : elements) {
                element.addForces(forced, back);
            }
            for (int i = 0; i < unknown.length; i++) {
                if (unknown[i] >= 0) {
                    b[unknown[i]] += spring[i] * loads.settlement(i / 6, Dof.values()[i % 6]) - back[i];
                }
            }
        }
        return b;
    }

    private double[] forced(LoadCase loads) {
        double[] all = new double[unknown.length];
        for (int i = 0; i < all.length && loads.hasSettlements(); i++) {
            all[i] = unknown[i] < 0 ? loads.settlement(i / 6, Dof.values()[i % 6]) : 0;
        }
        return all;
    }

    /** Node loads and what the span loads do to their nodes, all freedoms. */
    double[] actions(LoadCase loads) {
        double[] actions = new double[unknown.length];
        loads.addNodeLoads(actions);
        for (int m = 0; m < elements.length; m++) {
            List<SpanLoad> span = loads.spanLoads(m);
            if (!span.isEmpty()) {
                elements[m].addNodeLoads(span, actions);
            }
        }
        return actions;
    }

    /** What the ground (or the clamp) does to each freedom: stiffness times movements, less the loads. */
    double[] reactions(LoadCase loads, double[] movements) {
        double[] rest = new double[unknown.length];
        for (MemberElement element : elements) {
            element.addForces(movements, rest);
        }
        double[] actions = actions(loads);
        for (int i = 0; i < rest.length; i++) {
            rest[i] = unknown[i] < 0 || spring[i] > 0 ? rest[i] - actions[i] : 0;
        }
        return rest;
    }
}
