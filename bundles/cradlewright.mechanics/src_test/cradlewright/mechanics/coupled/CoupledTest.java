package cradlewright.mechanics.coupled;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.contact.ContactSolution;
import cradlewright.mechanics.contact.FallMotion;
import cradlewright.mechanics.contact.LoadPath;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.contact.StaticsBounds;
import cradlewright.mechanics.contact.SupportRank;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FramePoint;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.frame.MemberSection;
import cradlewright.mechanics.frame.ShellSpine;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;

/** Coupled bodies against the check values. */
class CoupledTest {

    private static final CheckValues VALUES = CheckValues.load("coupled");
    private static final List<String> PADS = List.of("1R", "1L", "2R", "2L", "3R", "3L");
    private static final List<String> CASTORS = List.of("1R", "1L", "2R", "2L");
    private static final double PER_DEGREE = 180 / Math.PI;

    private static CoupledProblem grid(String clamp) {
        return GridDolly.problem(GridDolly.flexibility(FrameStructure.freeBody(GridDolly.frame(), clamp)));
    }

    @Test
    void shellOnElasticDollyOnUnevenFloor() {
        FrameFlexibility dolly = GridDolly.flexibility(FrameStructure.freeBody(GridDolly.frame()));
        CoupledSolution solution = GridDolly.problem(dolly).solve();
        PADS.forEach(id -> VALUES.check("grid.pad." + id, solution.force("pad " + id)));
        CASTORS.forEach(id -> VALUES.check("grid.castor." + id, solution.force("castor " + id)));
        double total = 320 * Constants.GRAVITY;
        for (String body : List.of(GridDolly.SHELL, GridDolly.DOLLY)) {
            ForceMoment rest = solution.unbalanced(body);
            assertTrue(rest.force().norm() < 1e-9 * total && rest.moment().norm() < 3e-9 * total, body + " " + rest);
        }
        FrameResult result = dolly.result(solution, GridDolly.DOLLY);
        Vec3 lowered = result.motion(GridDolly.node('L', 1.5)).translation();
        assertTrue(lowered.z() != 0);
    }

    @Test
    void clampedNodePlaysNoPart() {
        CoupledSolution one = grid(GridDolly.node('L', 0)).solve();
        CoupledSolution other = grid(GridDolly.node('M', 2)).solve();
        for (int i = 0; i < one.unknowns().forces().length; i++) {
            assertEquals(one.unknowns().force(i), other.unknowns().force(i), 1e-7);
        }
    }

    private static CoupledProblem boxesAndShim(FrameFlexibility dolly, FrameStructure structure, double boxes, double shim) {
        List<Contact> contacts = GridDolly.contacts().stream()
                .map(c -> c.id().equals("pad 2R") ? c.withGap(c.gap() - shim) : c).toList();
        Body loaded = Body.elastic(GridDolly.DOLLY, dolly.withLoads(GridDolly.loads(structure.model(), boxes)));
        return new CoupledProblem(List.of(GridDolly.shell(), loaded), contacts);
    }

    /** Independent: fresh solves, each with its own sag, while a load grows on an elastic rail and a shim is put in. */
    @Test
    void pathCarriesTheSagAlong() {
        FrameStructure structure = FrameStructure.freeBody(GridDolly.frame());
        FrameFlexibility dolly = GridDolly.flexibility(structure);
        CoupledProblem start = boxesAndShim(dolly, structure, 0, 0);
        CoupledProblem target = boxesAndShim(dolly, structure, 100, 0.03);
        LoadPath path = start.pathTo(target, 2);
        assertEquals(SolveStatus.OK, path.status());
        assertTrue(path.breakpoints().size() >= 2, path.breakpoints().toString());
        for (double t = 0; t <= 2; t += 0.125) {
            double[] fresh = boxesAndShim(dolly, structure, 100 * t, 0.03 * t).solve().unknowns().forces();
            double[] along = path.forcesAt(t);
            for (int i = 0; i < fresh.length; i++) {
                assertEquals(fresh[i], along[i], 1e-6, "t " + t + " unknown " + i);
            }
        }
        assertThrows(IllegalArgumentException.class, () -> start.pathTo(target.asRigid(), 1));
        assertThrows(IllegalArgumentException.class, () -> start.loadChange(GridDolly.DOLLY, ForceMoment.ZERO));
    }

    @Test
    void staticsBoundsOfTheFirstPad() {
        CoupledProblem problem = grid(GridDolly.node('L', 0));
        StaticsBounds bounds = problem.staticsBounds();
        VALUES.check("grid.bounds.least", bounds.least(problem.indexOf("pad 1R")));
        VALUES.check("grid.bounds.largest", bounds.largest(problem.indexOf("pad 1R")));
        ContactSolution solution = problem.solve().unknowns();
        for (int i = 0; i < solution.forces().length; i++) {
            assertTrue(solution.force(i) > bounds.least(i) - 1e-6 && solution.force(i) < bounds.largest(i) + 1e-6);
        }
    }

    /** Warning: what comes out without the sag depends on where the free body was held, and looks plausible. */
    @Test
    void forcesWithoutSagAreWrong() {
        CoupledSolution one = withoutSag(GridDolly.node('R', 0)).solve();
        CoupledSolution other = withoutSag(GridDolly.node('M', 1)).solve();
        VALUES.check("grid.nosag.a.pad", one.force("pad 1R"));
        VALUES.check("grid.nosag.a.castor", one.force("castor 2R"));
        VALUES.check("grid.nosag.b.pad", other.force("pad 1R"));
        VALUES.check("grid.nosag.b.castor", other.force("castor 2R"));
    }

    private static CoupledProblem withoutSag(String clamp) {
        FrameFlexibility dolly = GridDolly.flexibility(FrameStructure.freeBody(GridDolly.frame(), clamp));
        return GridDolly.problem(new Flexibility() {
            @Override
            public Condensed condense(List<UnitAction> actions) {
                Condensed whole = dolly.condense(actions);
                return new Condensed(whole.compliance(), new double[actions.size()]);
            }

            @Override
            public ForceMoment loads() {
                return dolly.loads();
            }
        });
    }

    @Test
    void rigidDollyIsWrongToo() {
        CoupledSolution rigid = grid(GridDolly.node('L', 0)).asRigid().solve();
        VALUES.check("grid.rigid.pad", rigid.force("pad 1R"));
        assertEquals(0, rigid.force("castor 2R"));
    }

    private static CoupledProblem shellOnPads(double compliance, double stiffness, double low) {
        double[][] corner = {{-0.9, -0.5}, {-0.9, 0.5}, {0.9, 0.5}, {0.9, -0.5}};
        String[] name = {"FL", "FR", "RR", "RL"};
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            contacts.add(Contact.rests(name[i], "shell", Contact.GROUND, new Vec3(corner[i][0], corner[i][1], 0), compliance)
                    .withGap(i == 0 ? low : 0));
        }
        if (Double.isInfinite(stiffness)) {
            return new CoupledProblem(List.of(Body.rigid("shell", Body.force(Vec3.ZERO, new Vec3(0, 0, -4000)))), contacts);
        }
        ShellSpine spine = ShellSpine.of(new Vec3(-0.9, 0, 0), new Vec3(0.9, 0, 0), 1.8, stiffness, 1e9);
        LoadCase weight = LoadCase.on(spine.model()).force(FramePoint.member(ShellSpine.SPINE, 0.9), new Vec3(0, 0, -4000))
                .build();
        return new CoupledProblem(List.of(Body.elastic("shell", FrameFlexibility.of(spine, weight))), contacts);
    }

    @Test
    void softShellForgivesAShortShim() {
        for (String stiffness : List.of("rigid", "20000", "3390", "934")) {
            double k = stiffness.equals("rigid") ? Double.POSITIVE_INFINITY : Double.parseDouble(stiffness) * PER_DEGREE;
            for (String pad : List.of("1e6", "1e7")) {
                double compliance = 1 / Double.parseDouble(pad);
                String row = "B5." + stiffness + "." + pad;
                CoupledProblem level = shellOnPads(compliance, k, 0);
                double[] lowering = {1, 0, 0, 0};
                LoadPath path = LoadPath.follow(level.matrices(), new double[6], lowering, 0.05);
                VALUES.check(row + ".warp", 0.001 * path.ratesAt(0)[1]);
                VALUES.check(row + ".unload", path.goesLight(0).orElseThrow());
            }
        }
        CoupledSolution short1 = shellOnPads(1e-6, 3390 * PER_DEGREE, 0.001).solve();
        for (String corner : List.of("FL", "FR", "RR", "RL")) {
            VALUES.check("B5.fe." + corner, short1.force(corner));
        }
    }

    private static CoupledProblem pushed() {
        Body shell = Body.rigid("shell", Body.weight(320, new Vec3(1.3, 0, 1.1)));
        Body dolly = Body.rigid("dolly", Body.weight(90, new Vec3(1.5, 0, 0.4)));
        List<Contact> contacts = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            String s = side < 0 ? "L" : "R";
            contacts.add(Contact.rests("pad 1" + s, "shell", "dolly", new Vec3(0.3, 0.45 * side, 0.8), 1e-7).pinned(1e-7));
            contacts.add(Contact.rests("pad 2" + s, "shell", "dolly", new Vec3(2.4, 0.45 * side, 0.8), 1e-7).pinned(1e-7));
            contacts.add(Contact.rests("castor 1" + s, "dolly", Contact.GROUND, new Vec3(0, 0.55 * side, 0), 5e-7).pinned(1e-6));
            contacts.add(Contact.rests("castor 2" + s, "dolly", Contact.GROUND, new Vec3(3, 0.55 * side, 0), 5e-7).pinned(1e-6));
        }
        return new CoupledProblem(List.of(shell, dolly), contacts);
    }

    @Test
    void tippingIsAskedTwice() {
        CoupledProblem problem = pushed();
        ForceMoment push = Body.force(new Vec3(1.3, 0, 1.3), new Vec3(0, 1, 0));
        TippingQuestions questions = new TippingQuestions(problem);
        TippingQuestions.Answer floor = questions.onTheFloor(push);
        TippingQuestions.Answer pads = questions.onItsSupports("shell", push);
        VALUES.check("push.floor", floor.lambda());
        VALUES.check("push.pads", pads.lambda());
        assertEquals(List.of("castor 1R", "castor 2R"), floor.shut());
        assertEquals(List.of("pad 1R", "pad 2R"), pads.shut());
        assertEquals(FallMotion.Kind.TIPS, floor.motion().kind());
        assertEquals(0.55, floor.motion().axisPoint().y(), 1e-9);
        assertEquals(0, floor.motion().axisPoint().z(), 1e-9);
        // pushed to the right it turns with the top going right: about -x by the right-hand rule
        assertEquals(-1, floor.motion().direction().x(), 1e-9);
        assertEquals(0.8, pads.motion().axisPoint().z(), 1e-9);
        assertEquals(floor.lambda(), questions.onItsSupports("dolly", push).lambda(), 1e-9);
    }

    /** Independent: all rows of both bodies together give the smaller of the two limits, and the contact solver agrees. */
    @Test
    void bothBodiesTogetherFallAtTheSmallerPush() {
        CoupledProblem problem = pushed();
        double[] action = problem.loadChange("shell", Body.force(new Vec3(1.3, 0, 1.3), new Vec3(0, 1, 0)));
        LoadPath path = LoadPath.follow(problem.matrices(), action, new double[problem.matrices().size()], 5000);
        assertEquals(LoadPath.End.FALLS, path.ending());
        VALUES.check("push.floor", path.reached());
    }

    @Test
    void withoutBrakesItRolls() {
        Body body = Body.rigid("dolly", Body.weight(100, new Vec3(1, 0, 0.5)));
        List<Contact> castors = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            castors.add(Contact.rests("castor " + i, "dolly", Contact.GROUND,
                    new Vec3(2 * (i / 2), i % 2 == 0 ? -0.5 : 0.5, 0), 1e-6));
        }
        TippingQuestions.Answer rolls = new TippingQuestions(new CoupledProblem(List.of(body), castors))
                .onTheFloor(Body.force(new Vec3(1, 0, 0.5), new Vec3(50, 0, 0)));
        assertEquals(0, rolls.lambda(), 1e-12);
        assertTrue(rolls.standsWithoutAction());
        assertEquals(FallMotion.Kind.SLIDES, rolls.motion().kind());
        assertEquals(1, rolls.motion().direction().x(), 1e-9);
        TippingQuestions.Answer lifted = new TippingQuestions(new CoupledProblem(List.of(body), castors))
                .onTheFloor(Body.force(new Vec3(1, 0, 0.5), new Vec3(0, 0, 100)));
        assertEquals(Constants.GRAVITY, lifted.lambda(), 1e-9);
        assertEquals(FallMotion.Kind.UNSUPPORTED, lifted.motion().kind());
        castors.set(0, castors.get(0).braked(new Vec3(1, 0, 0), 1e-6));
        castors.set(1, castors.get(1).braked(new Vec3(1, 0, 0), 1e-6));
        assertTrue(new TippingQuestions(new CoupledProblem(List.of(body), castors))
                .onTheFloor(Body.force(new Vec3(1, 0, 0.5), new Vec3(50, 0, 0))).lambda() > 10);
        assertEquals(0, new TippingQuestions(new CoupledProblem(List.of(body), castors))
                .onTheFloor(Body.force(new Vec3(1, 0, 0.5), new Vec3(0, 50, 0))).lambda(), 1e-12);
    }

    /** Closed form: moments about the right pads, 100 g 0.5 + 300 (0.5 + 0.5) = P 0.6 with two bolts of 150 N on the left. */
    @Test
    void boltsHoldUpToTheirPull() {
        Body body = Body.rigid("shell", Body.weight(100, new Vec3(1, 0, 0.6)));
        List<Contact> pads = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Contact pad = Contact.rests("pad " + i, "shell", Contact.GROUND,
                    new Vec3(2 * (i / 2), i % 2 == 0 ? -0.5 : 0.5, 0), 1e-6);
            pads.add(i % 2 == 0 ? pad.bolted(150, 1e-6) : pad.pinned(1e-6));
        }
        CoupledProblem problem = new CoupledProblem(List.of(body), pads);
        ForceMoment push = Body.force(new Vec3(1, 0, 0.6), new Vec3(0, 1, 0));
        double limit = (100 * Constants.GRAVITY * 0.5 + 300 * 1.0) / 0.6;
        assertEquals(limit, new TippingQuestions(problem).onTheFloor(push).lambda(), 1e-6);
        Body pushedBody = Body.rigid("shell", body.loads().plus(push.times(limit * 0.99)));
        CoupledSolution below = new CoupledProblem(List.of(pushedBody), pads).solve();
        assertTrue(below.force("pad 0") < 0 && below.holdsPull("pad 0"));
        Vec3 sideways = below.shear("pad 0").plus(below.shear("pad 1")).plus(below.shear("pad 2")).plus(below.shear("pad 3"));
        assertEquals(-0.99 * limit, sideways.y(), 1e-6);
        Body over = Body.rigid("shell", body.loads().plus(push.times(limit * 1.01)));
        CoupledSolution above = new CoupledProblem(List.of(over), pads).solve();
        assertEquals(SolveStatus.OK, above.status());
        assertTrue(!above.holdsPull("pad 0") && above.unbalanced("shell").moment().norm() < 1e-6);
    }

    /** Closed form: a plate that hangs on four bolts of 150 N falls when its weight and the pull pass 600 N. */
    @Test
    void plateHangsOnBoltsFromAbove() {
        Body plate = Body.rigid("plate", Body.weight(10, new Vec3(1, 0, 0.9)));
        Body dolly = Body.rigid("dolly", Body.weight(100, new Vec3(1, 0, 1.1)));
        List<Contact> contacts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Vec3 point = new Vec3(2 * (i / 2), i % 2 == 0 ? -0.5 : 0.5, 1);
            contacts.add(Contact.rests("bolt " + i, "dolly", "plate", point, 1e-6).bolted(150, 1e-6));
            contacts.add(Contact.rests("castor " + i, "dolly", Contact.GROUND, point.minus(Vec3.UP), 1e-6));
        }
        TippingQuestions questions = new TippingQuestions(new CoupledProblem(List.of(plate, dolly), contacts));
        assertEquals(600 - 10 * Constants.GRAVITY,
                questions.locked(Set.of("plate"), Body.force(new Vec3(1, 0, 0), new Vec3(0, 0, -1))).lambda(), 1e-6);
    }

    @Test
    void supportsOfEachBodyAreLookedAtFirst() {
        CoupledProblem problem = pushed();
        assertEquals(0.45, problem.supportRank(Set.of("shell")).margin(), 1e-12);
        assertEquals(0.55, problem.supportRank(Set.of("shell", "dolly")).margin(), 1e-12);
        assertEquals(SupportRank.Place.INSIDE, problem.supportRank(Set.of("shell")).place());
        assertThrows(IllegalArgumentException.class, () -> problem.supportRank(Set.of("boot lid")));
    }

    @Test
    void sweepCoversSoftAndRigidShells() {
        double lower = 200 * PER_DEGREE;
        StiffnessSweep sweep = StiffnessSweep.run(lower, 40_000 * PER_DEGREE, k -> shellOnPads(1e-7, k, 0.002),
                shellOnPads(1e-7, Double.POSITIVE_INFINITY, 0.002).solve());
        assertEquals(SolveStatus.OK, sweep.status());
        assertEquals(6, sweep.stiffnesses().size());
        assertEquals(lower, sweep.stiffnesses().get(0), 1e-9);
        assertEquals(40_000 * PER_DEGREE, sweep.stiffnesses().get(4), 1e-3);
        assertTrue(Double.isInfinite(sweep.stiffnesses().get(5)));
        assertEquals(Math.sqrt(lower * sweep.stiffnesses().get(2)), sweep.stiffnesses().get(1), 1e-6);
        VALUES.check("sweep.softest", sweep.largest("FL"));
        VALUES.check("sweep.rigid-short", sweep.least("FL"));
        VALUES.check("sweep.rigid-partner", sweep.largest("FR"));
        VALUES.check("sweep.statics-least", sweep.staticsLeast("FL"));
        VALUES.check("sweep.statics-largest", sweep.staticsLargest("FL"));
    }

    /** Two rails joined at their ends: under a load that is the same left and right the cross members only ride along. */
    @Test
    void shellOnPadsAlongTwoRails() {
        MemberSection section = MemberSection.withoutShear(2.1e11, 8.1e10, 5.4e-4, 2.54e-7, 1.34e-7, 2.93e-7);
        FrameModel.Builder frame = FrameModel.builder();
        List<Contact> contacts = new ArrayList<>();
        for (char side : new char[] {'L', 'R'}) {
            double y = side == 'L' ? -0.55 : 0.55;
            for (int x = 0; x <= 2; x++) {
                frame.node("" + side + x, new Vec3(x, y, 0));
                contacts.add(Contact.rests("pad " + side + x, "shell", "dolly", new Vec3(x, y, 0), 1e-6));
                if (x != 1) {
                    contacts.add(Contact.rests("castor " + side + x, "dolly", Contact.GROUND, new Vec3(x, y, 0), 5e-7));
                }
            }
            frame.member(FrameMember.of("front " + side, side + "0", side + "1", section, Vec3.UP));
            frame.member(FrameMember.of("rear " + side, side + "1", side + "2", section, Vec3.UP));
        }
        frame.member(FrameMember.of("cross 0", "L0", "R0", section, Vec3.UP));
        frame.member(FrameMember.of("cross 2", "L2", "R2", section, Vec3.UP));
        FrameModel model = frame.build();
        FrameFlexibility dolly = FrameFlexibility.of(FrameStructure.freeBody(model), LoadCase.on(model).build(),
                action -> FramePoint.node((action.point().y() < 0 ? "L" : "R") + (int) action.point().x()));
        Body shell = Body.rigid("shell", Body.force(new Vec3(1, 0, 0.5), new Vec3(0, 0, -4000)));
        CoupledSolution solution = new CoupledProblem(List.of(shell, Body.elastic("dolly", dolly)), contacts).solve();
        for (char side : new char[] {'L', 'R'}) {
            VALUES.check("rails.end-pad", solution.force("pad " + side + 0));
            VALUES.check("rails.middle-pad", solution.force("pad " + side + 1));
            VALUES.check("rails.end-pad", solution.force("pad " + side + 2));
            VALUES.check("rails.castor", solution.force("castor " + side + 0));
        }
    }

    @Test
    void everyFormulaIsNamedOnce() {
        Set<String> ids = new HashSet<>();
        for (Formula formula : CoupledFormulas.all()) {
            assertTrue(formula.id().startsWith("coupled.") && ids.add(formula.id()), formula.id());
        }
    }

    @Test
    void refusesWhatDoesNotFitTogether() {
        Contact pad = Contact.rests("pad", "shell", Contact.GROUND, Vec3.ZERO, 1e-6);
        Body shell = Body.rigid("shell", ForceMoment.ZERO);
        assertThrows(IllegalArgumentException.class, () -> new CoupledProblem(List.of(shell, shell), List.of(pad)));
        assertThrows(IllegalArgumentException.class, () -> new CoupledProblem(List.of(shell), List.of(pad, pad)));
        assertThrows(IllegalArgumentException.class, () -> new CoupledProblem(List.of(), List.of(pad)));
        assertThrows(IllegalArgumentException.class, () -> Contact.rests("pad", "shell", "shell", Vec3.ZERO, 1e-6));
        assertThrows(IllegalArgumentException.class, () -> Contact.rests("pad", "shell", "dolly", Vec3.ZERO, 1e-10));
        assertThrows(IllegalArgumentException.class, () -> pad.bolted(-1, 1e-6));
        assertThrows(IllegalArgumentException.class, () -> pad.braked(Vec3.UP, 1e-6));
        assertThrows(IllegalArgumentException.class, () -> pad.withGap(Double.NaN));
        assertTrue(Contact.rests("pad", "shell", "dolly", Vec3.ZERO, 1e-9).isComplianceAssumed());
    }
}
