package cradlewright.benchmarks;

import cradlewright.mechanics.coupled.Body;
import cradlewright.mechanics.coupled.Contact;
import cradlewright.mechanics.coupled.CoupledProblem;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.coupled.FrameFlexibility;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FramePoint;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.InternalForces;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All load cases by this project's frame and contacts: from assembly to the forces at both ends of every member. */
final class OwnSide {

    /** Contact forces (N, in the order of the touches) and end forces of all members of one case. */
    record Answer(double[] contacts, InternalForces[][] members) {
    }

    private OwnSide() {
    }

    static List<Answer> solve(GridDolly dolly) {
        FrameModel model = dolly.grid().build();
        FrameStructure structure = FrameStructure.freeBody(model);
        Map<String, FramePoint> places = new HashMap<>();
        dolly.touches.forEach(t -> places.put(t.id(), FramePoint.node(GridDolly.name(t.node()))));
        LoadCase own = loads(dolly, model, -1, 0);
        FrameFlexibility frame = FrameFlexibility.of(structure, own, action -> places.get(action.contact()));
        List<Contact> contacts = dolly.contacts();
        List<Answer> answers = new ArrayList<>();
        for (GridDolly.Case c : dolly.cases) {
            FrameFlexibility loaded = frame.withLoads(loads(dolly, model, c.boxNode(), c.box()));
            Body shell = Body.rigid("shell", Body.force(new Vec3(c.x(), c.y(), 0), Vec3.UP.times(-c.shell())));
            CoupledSolution solution = new CoupledProblem(List.of(Body.elastic("dolly", loaded), shell), contacts).solve();
            FrameResult result = loaded.result(solution, "dolly");
            InternalForces[][] members = new InternalForces[dolly.bars.size()][];
            for (int b = 0; b < members.length; b++) {
                String bar = GridDolly.barName(b);
                members[b] = new InternalForces[] {result.forces(bar, 0),
                        result.forces(bar, dolly.length(dolly.bars.get(b)))};
            }
            answers.add(new Answer(dolly.touches.stream().mapToDouble(t -> solution.force(t.id())).toArray(), members));
        }
        return answers;
    }

    private static LoadCase loads(GridDolly dolly, FrameModel model, int boxNode, double box) {
        LoadCase.Builder builder = LoadCase.on(model);
        double[] weight = dolly.ownWeight();
        for (int i = 0; i < weight.length; i++) {
            builder.force(FramePoint.node(GridDolly.name(i)), Vec3.UP.times(-weight[i] - (i == boxNode ? box : 0)));
        }
        return builder.build();
    }
}
