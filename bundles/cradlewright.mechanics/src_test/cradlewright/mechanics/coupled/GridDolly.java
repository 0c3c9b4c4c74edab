package cradlewright.mechanics.coupled;

import java.util.ArrayList;
import java.util.List;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FramePoint;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.frame.MemberSection;
import cradlewright.mechanics.geometry.Vec3;

/** The dolly of the check values: two rails of 3.0 m, 1.1 m apart, four cross members; a rigid shell of 320 kg on six pads. */
final class GridDolly {

    static final String SHELL = "shell";
    static final String DOLLY = "dolly";

    private static final double HALF = 0.55;
    private static final double STEP = 0.25;
    private static final int STEPS = 12;

    private GridDolly() {
    }

    static String node(char side, double x) {
        return side + " " + Math.round(x / STEP);
    }

    static FrameModel frame() {
        MemberSection section = MemberSection.withoutShear(210e9, 81e9, 5.4e-4, 1.344e-7, 2.54e-7, 2.9e-7);
        FrameModel.Builder builder = FrameModel.builder();
        for (int i = 0; i <= STEPS; i++) {
            builder.node(node('L', i * STEP), new Vec3(i * STEP, -HALF, 0))
                    .node(node('R', i * STEP), new Vec3(i * STEP, HALF, 0));
        }
        List<FrameMember> members = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            for (char side : new char[] {'L', 'R'}) {
                members.add(FrameMember.of("rail " + node(side, i * STEP), node(side, i * STEP), node(side, (i + 1) * STEP),
                        section, Vec3.UP));
            }
        }
        for (int x = 0; x <= 3; x++) {
            builder.node(node('M', x), new Vec3(x, 0, 0));
            members.add(FrameMember.of("cross L " + x, node('L', x), node('M', x), section, Vec3.UP));
            members.add(FrameMember.of("cross R " + x, node('M', x), node('R', x), section, Vec3.UP));
        }
        members.forEach(m -> builder.member(m.withDensity(7850)));
        return builder.build();
    }

    static LoadCase loads(FrameModel frame) {
        return loads(frame, 60);
    }

    static LoadCase loads(FrameModel frame, double boxes) {
        return LoadCase.on(frame).selfWeight()
                .force(FramePoint.node(node('L', 1.5)), new Vec3(0, 0, -boxes * Constants.GRAVITY)).build();
    }

    private static FramePoint place(UnitAction action) {
        return FramePoint.node(node(action.point().y() < 0 ? 'L' : 'R', action.point().x()));
    }

    static FrameFlexibility flexibility(FrameStructure structure) {
        return FrameFlexibility.of(structure, loads(structure.model()), GridDolly::place);
    }

    static List<Contact> contacts() {
        List<Contact> contacts = new ArrayList<>();
        double[] x = {0.25, 1.5, 2.75};
        for (int i = 0; i < 3; i++) {
            contacts.add(Contact.rests("pad " + (i + 1) + "R", SHELL, DOLLY, new Vec3(x[i], HALF, 0), 1e-7)
                    .withGap(i == 1 ? 0.0008 : 0));
            contacts.add(Contact.rests("pad " + (i + 1) + "L", SHELL, DOLLY, new Vec3(x[i], -HALF, 0), 1e-7));
        }
        for (int i = 0; i < 2; i++) {
            contacts.add(Contact.rests("castor " + (i + 1) + "R", DOLLY, Contact.GROUND, new Vec3(3 * i, HALF, 0), 5e-7));
            contacts.add(Contact.rests("castor " + (i + 1) + "L", DOLLY, Contact.GROUND, new Vec3(3 * i, -HALF, 0), 5e-7)
                    .withGap(i == 0 ? 0.003 : 0));
        }
        return contacts;
    }

    static Body shell() {
        return Body.rigid(SHELL, Body.weight(320, new Vec3(1.35, -0.03, 0)));
    }

    static CoupledProblem problem(Flexibility dolly) {
        return new CoupledProblem(List.of(shell(), Body.elastic(DOLLY, dolly)), contacts());
    }
}
