package cradlewright.benchmarks;

import cradlewright.mechanics.frame.Dof;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FramePoint;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * The grid on supports that push and pull: springs (N/m) under nodes, nodes held sideways, six loads per loaded node.
 *
 * @param springs vertical stiffness by node
 * @param heldSideways nodes fixed along x and y
 * @param loads forces (N) and moments (N*m) by node, global axes
 */
record Bilateral(Map<Integer, Double> springs, List<Integer> heldSideways, Map<Integer, double[]> loads) {

    static Bilateral of(GridDolly dolly) {
        Map<Integer, Double> springs = new TreeMap<>();
        dolly.touches.stream().filter(t -> !t.pad()).forEach(t -> springs.put(t.node(), t.stiffness()));
        Map<Integer, double[]> loads = new TreeMap<>();
        Random random = new Random(GridDolly.SEED);
        dolly.touches.stream().filter(GridDolly.Touch::pad).forEach(t -> loads.put(t.node(), new double[] {
            100 * random.nextGaussian(), 100 * random.nextGaussian(), -400 - 200 * random.nextDouble(),
            20 * random.nextGaussian(), 20 * random.nextGaussian(), 20 * random.nextGaussian()}));
        return new Bilateral(springs, List.copyOf(springs.keySet()), loads);
    }

    FrameResult solve(GridDolly dolly) {
        FrameModel.Builder builder = dolly.grid();
        springs.forEach((n, k) -> builder.spring(GridDolly.name(n), Dof.UZ, k));
        heldSideways.forEach(n -> builder.fix(GridDolly.name(n), Dof.UX, Dof.UY));
        FrameModel model = builder.build();
        LoadCase.Builder all = LoadCase.on(model);
        loads.forEach((n, six) -> all.action(FramePoint.node(GridDolly.name(n)),
                new ForceMoment(new Vec3(six[0], six[1], six[2]), new Vec3(six[3], six[4], six[5]))));
        return FrameStructure.supported(model).solve(all.build());
    }
}
