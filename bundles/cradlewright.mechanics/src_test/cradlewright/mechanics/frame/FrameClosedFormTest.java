package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;

/** Closed forms and tables of beams, portals and grillages. */
class FrameClosedFormTest {

    private static final CheckValues VALUES = CheckValues.load("frame");
    private static final double E = 2.1e11;
    private static final double G = 8.1e10;
    private static final double I = 2.54e-7;
    private static final double SHEAR = 5.408e-4 * 0.44;
    private static final MemberSection BEAM = MemberSection.withoutShear(E, G, 5.4e-4, I, 1.34e-7, 2.93e-7);
    private static final MemberSection SOFT_IN_SHEAR = new MemberSection(E, G, 5.408e-4, I, 1.34e-7, 2.93e-7, SHEAR, SHEAR);
    private static final MemberSection STIFF_BEAM = MemberSection.withoutShear(E, G, 1e-3, 1e-6, 1e-6, 1e-6);
    private static final Dof[] SIMPLE_NEAR = {Dof.UX, Dof.UY, Dof.UZ, Dof.RX, Dof.RZ};
    private static final Dof[] SIMPLE_FAR = {Dof.UY, Dof.UZ, Dof.RZ};

    private static FrameMember along(String name, String from, String to, MemberSection section) {
        return FrameMember.of(name, from, to, section, Vec3.UP);
    }

    private static FrameModel.Builder beam(double length, MemberSection section) {
        return FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(length, 0, 0)).member(along("m", "a", "b", section));
    }

    private static FrameModel cantilever(double length, MemberSection section) {
        return beam(length, section).fixAll("a").build();
    }

    private static FrameModel fixed(double length, MemberSection section) {
        return beam(length, section).fixAll("a").fixAll("b").build();
    }

    private static FrameModel simple(double length, MemberSection section) {
        return beam(length, section).fix("a", SIMPLE_NEAR).fix("b", SIMPLE_FAR).build();
    }

    private static FrameResult solve(LoadCase loads) {
        return FrameStructure.supported(loads.model()).solve(loads);
    }

    private static FrameResult pointLoad(FrameModel model, double distance, Vec3 force, Vec3 moment) {
        return solve(LoadCase.on(model).point("m", distance, new ForceMoment(force, moment), LoadAxes.GLOBAL).build());
    }

    private static FrameResult uniform(FrameModel model, double force, String... members) {
        LoadCase.Builder loads = LoadCase.on(model);
        for (String member : members) {
            loads.uniform(member, down(force), LoadAxes.GLOBAL);
        }
        return solve(loads.build());
    }

    private static Vec3 down(double force) {
        return new Vec3(0, 0, -force);
    }

    private static double sag(Motion motion) {
        return -1e3 * motion.translation().z();
    }

    private static FrameResult tipLoad(FrameModel model, double force) {
        return solve(LoadCase.on(model).force(FramePoint.node("b"), down(force)).build());
    }

    @Test
    void cantilever() {
        FrameResult result = tipLoad(cantilever(1.2, BEAM), 1000);
        VALUES.check("C1.tip", sag(result.motion("b")));
        VALUES.check("C1.moment", result.forces("m", 0, CutSide.AFTER).my());
        assertEquals(1000, result.reaction("a").force().z(), 1e-6);
        assertEquals(-1200, result.reaction("a").moment().y(), 1e-6, "the root holds the beam up");
    }

    @Test
    void cantileverThatGivesInShear() {
        VALUES.check("C4.tip", sag(tipLoad(cantilever(1.2, SOFT_IN_SHEAR), 1000).motion("b")));
        double all = sag(tipLoad(cantilever(0.3, SOFT_IN_SHEAR), 1000).motion("b"));
        double bending = sag(tipLoad(cantilever(0.3, BEAM), 1000).motion("b"));
        VALUES.check("C4s.tip", all);
        VALUES.check("C4s.share", 100 * (all - bending) / bending);
        FrameResult uniform = uniform(cantilever(1.2, SOFT_IN_SHEAR), 1000, "m");
        VALUES.check("shear.uniform", sag(uniform.motion("m", 1.2)));
        VALUES.check("shear.uniform", sag(uniform.motion("b")));
        VALUES.check("shear.fixed", sag(pointLoad(fixed(2, SOFT_IN_SHEAR), 1, down(1000), Vec3.ZERO).motion("m", 1)));
    }

    @Test
    void simpleAndFixedBeams() {
        FrameResult uniform = uniform(simple(2, BEAM), 1000, "m");
        VALUES.check("C2.sag", sag(uniform.motion("m", 1)));
        VALUES.check("C2.moment", -uniform.forces("m", 1).my());
        FrameResult fixed = pointLoad(fixed(2, BEAM), 1, down(1000), Vec3.ZERO);
        VALUES.check("C3.sag", sag(fixed.motion("m", 1)));
        VALUES.check("C3.moment", fixed.forces("m", 0, CutSide.AFTER).my());
        VALUES.check("C3.moment", fixed.farEnd("m").moment().y());
        VALUES.check("C3.simple", sag(pointLoad(simple(2, BEAM), 1, down(1000), Vec3.ZERO).motion("m", 1)));
    }

    @Test
    void loadsBetweenTheNodes() {
        FrameResult fixed = pointLoad(fixed(2, BEAM), 0.7, down(1000), Vec3.ZERO);
        VALUES.check("point.near", -fixed.nearEnd("m").moment().y());
        VALUES.check("point.far", fixed.farEnd("m").moment().y());
        VALUES.check("point.sag", sag(fixed.motion("m", 0.7)));
        VALUES.check("point.simple", sag(pointLoad(simple(2, BEAM), 0.7, down(1000), Vec3.ZERO).motion("m", 0.7)));
        FrameResult twisted = pointLoad(fixed(2, BEAM), 0.7, Vec3.ZERO, new Vec3(100, 0, 0));
        VALUES.check("point.torque", -twisted.reaction("a").moment().x());
        VALUES.check("point.torque", twisted.forces("m", 0.7, CutSide.BEFORE).t());
        assertEquals(-100, twisted.forces("m", 0.7, CutSide.AFTER).t() - twisted.forces("m", 0.7, CutSide.BEFORE).t(), 1e-9);
        FrameResult bent = pointLoad(fixed(2, BEAM), 0.7, Vec3.ZERO, new Vec3(0, 100, 0));
        VALUES.check("point.couple", Math.abs(bent.forces("m", 0.3).vz()));
        FrameResult pulled = pointLoad(fixed(2, BEAM), 0.7, new Vec3(1000, 0, 0), Vec3.ZERO);
        VALUES.check("point.axial", pulled.forces("m", 0.5).n());
        FrameResult sideways = pointLoad(fixed(2, MemberSection.withoutShear(E, G, 5.4e-4, 1.34e-7, I, 2.93e-7)), 0.7,
                new Vec3(0, 1000, 0), Vec3.ZERO);
        VALUES.check("point.near", -sideways.reaction("a").moment().z());
        VALUES.check("point.sag", 1e3 * sideways.motion("m", 0.7).translation().y());
        FrameModel rod = cantilever(2, BEAM);
        VALUES.check("axial.tip", 1e3 * solve(LoadCase.on(rod).force(FramePoint.node("b"), new Vec3(10000, 0, 0)).build())
                .motion("b").translation().x());
        FrameResult torque = solve(LoadCase.on(cantilever(1, BEAM)).uniformTorque("m", 40).build());
        VALUES.check("torque.uniform", torque.motion("b").rotation().x());
        assertEquals(40, torque.forces("m", 0, CutSide.AFTER).t(), 1e-9);
    }

    private static FrameModel portal(Dof... held) {
        MemberSection section = MemberSection.withoutShear(E, G, 1, I, I, 2.93e-7);
        FrameModel.Builder portal = FrameModel.builder();
        Vec3[] places = {Vec3.ZERO, new Vec3(0, 0, 0.8), new Vec3(1.6, 0, 0.8), new Vec3(1.6, 0, 0)};
        for (int i = 0; i < 4; i++) {
            portal.node("n" + i, places[i]);
        }
        for (int i = 0; i < 3; i++) {
            portal.member(FrameMember.of("m" + i, "n" + i, "n" + (i + 1), section, new Vec3(-1, 0, 1)));
        }
        return portal.fix("n0", held).fix("n3", held).build();
    }

    @Test
    void portals() {
        FrameModel pinned = portal(Dof.UX, Dof.UY, Dof.UZ, Dof.RX, Dof.RZ);
        FrameResult result = solve(LoadCase.on(pinned).force(FramePoint.node("n1"), new Vec3(500, 0, 0)).build());
        VALUES.check("C5.sway", 1e3 * result.motion("n1").translation().x());
        VALUES.check("C5.push", -result.reaction("n0").force().x());
        VALUES.check("C5.push", -result.reaction("n3").force().x());
        VALUES.check("C5.lift", -result.reaction("n0").force().z());
        VALUES.check("C5.lift", result.reaction("n3").force().z());
        FrameModel fixed = portal(Dof.values());
        result = solve(LoadCase.on(fixed).force(FramePoint.node("n1"), new Vec3(500, 0, 0)).build());
        VALUES.check("C6.foot", Math.abs(result.reaction("n0").moment().y()));
        VALUES.check("C6.foot", Math.abs(result.reaction("n3").moment().y()));
        VALUES.check("C6.top", Math.abs(result.forces("m1", 0, CutSide.AFTER).my()));
        VALUES.check("C6.top", Math.abs(result.farEnd("m0").moment().y()));
    }

    @Test
    void crossedBeams() {
        MemberSection heavy = MemberSection.withoutShear(E, G, 5e-4, I, I, 1e-16);
        MemberSection light = MemberSection.withoutShear(E, G, 5e-4, 1.34e-7, 1.34e-7, 1e-16);
        FrameModel model = FrameModel.builder().node("c", Vec3.ZERO).node("w", new Vec3(-0.6, 0, 0))
                .node("e", new Vec3(0.6, 0, 0)).node("s", new Vec3(0, -0.45, 0)).node("n", new Vec3(0, 0.45, 0))
                .member(along("cw", "c", "w", heavy)).member(along("ce", "c", "e", heavy)).member(along("cs", "c", "s", light))
                .member(along("cn", "c", "n", light)).fix("w", SIMPLE_NEAR).fix("e", SIMPLE_NEAR)
                .fix("s", Dof.UX, Dof.UY, Dof.UZ, Dof.RY, Dof.RZ).fix("n", Dof.UX, Dof.UY, Dof.UZ, Dof.RY, Dof.RZ).build();
        FrameResult result = solve(LoadCase.on(model).force(FramePoint.node("c"), down(2000)).build());
        VALUES.check("C7.long", 2 * result.reaction("w").force().z());
        VALUES.check("C7.short", 2 * result.reaction("n").force().z());
        VALUES.check("C7.sag", sag(result.motion("c")));
    }

    @Test
    void armRoundACorner() {
        FrameModel model = FrameModel.builder().node("root", Vec3.ZERO).node("corner", new Vec3(1, 0, 0))
                .node("tip", new Vec3(1, 0.5, 0)).member(along("long", "root", "corner", BEAM))
                .member(along("short", "corner", "tip", BEAM)).fixAll("root").build();
        FrameResult result = solve(LoadCase.on(model).force(FramePoint.node("tip"), down(300)).build());
        VALUES.check("C8.tip", sag(result.motion("tip")));
        VALUES.check("C8.torque", Math.abs(result.forces("long", 0, CutSide.AFTER).t()));
        VALUES.check("C8.moment", result.forces("long", 0, CutSide.AFTER).my());
    }

    private static FrameModel.Builder twoSpans(double first, double second) {
        return FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(first, 0, 0))
                .node("c", new Vec3(first + second, 0, 0)).member(along("ab", "a", "b", STIFF_BEAM))
                .member(along("bc", "b", "c", STIFF_BEAM)).fix("a", Dof.UX, Dof.UY, Dof.RX, Dof.RZ).fix("b", Dof.UY);
    }

    @Test
    void continuousBeam() {
        FrameModel model = twoSpans(1.5, 1.5).fix("a", Dof.UZ).fix("b", Dof.UZ).fix("c", Dof.UZ).build();
        FrameStructure structure = FrameStructure.supported(model);
        LoadCase weight = LoadCase.on(model).uniform("ab", down(1000), LoadAxes.GLOBAL)
                .uniform("bc", down(1000), LoadAxes.GLOBAL).build();
        FrameResult level = structure.solve(weight);
        VALUES.check("B7.end", level.reaction("a").force().z());
        VALUES.check("B7.middle", level.reaction("b").force().z());
        VALUES.check("B7.moment", level.forces("ab", 1.5).my());
        LoadCase low = LoadCase.on(model).settle("b", Dof.UZ, -0.001).build();
        FrameResult settled = structure.solve(weight.plus(low));
        VALUES.check("B7s.end", settled.reaction("c").force().z());
        VALUES.check("B7s.middle", settled.reaction("b").force().z());
        double unload = 1875 / (1875 - settled.reaction("b").force().z());
        VALUES.check("B7s.lift-off", unload);
        assertEquals(0, structure.solve(weight.plus(low.times(unload))).reaction("b").force().z(), 1e-6);
    }

    private static FrameResult stretch(FrameModel model, double from, double to, Vec3 force, double torque) {
        return solve(LoadCase.on(model).uniform("m", from, to, new ForceMoment(force, new Vec3(torque, 0, 0)), LoadAxes.GLOBAL)
                .build());
    }

    @Test
    void loadsOverAStretch() {
        FrameResult near = stretch(simple(2, BEAM), 0, 0.8, down(1000), 0);
        VALUES.check("stretch.near", near.reaction("a").force().z());
        VALUES.check("stretch.far", near.reaction("b").force().z());
        VALUES.check("stretch.moment", -near.forces("m", 0.8).my());
        FrameResult inside = stretch(simple(2, BEAM), 0.5, 1.3, down(1000), 0);
        VALUES.check("stretch.inside", inside.reaction("a").force().z());
        FrameResult twisted = stretch(fixed(2, BEAM), 0, 0.8, Vec3.ZERO, 40);
        VALUES.check("stretch.torque", Math.abs(twisted.reaction("b").moment().x()));
        LoadCase.Builder beyond = LoadCase.on(simple(2, BEAM));
        assertThrows(IllegalArgumentException.class,
                () -> beyond.uniform("m", 0, 2.01, new ForceMoment(down(1000), Vec3.ZERO), LoadAxes.GLOBAL));
    }

    @Test
    void settledEndOfAFixedBeam() {
        FrameResult result = solve(LoadCase.on(fixed(2, BEAM)).settle("b", Dof.UZ, -0.001).build());
        VALUES.check("settled.moment", Math.abs(result.reaction("a").moment().y()));
        VALUES.check("settled.moment", Math.abs(result.reaction("b").moment().y()));
        VALUES.check("settled.force", result.reaction("a").force().z());
    }

    @Test
    void cantileverOnASpring() {
        FrameModel model = beam(1.2, BEAM).fix("a", Dof.values()).spring("b", Dof.UZ, 1e5).build();
        FrameResult result = tipLoad(model, 1000);
        VALUES.check("spring.tip", sag(result.motion("b")));
        VALUES.check("spring.force", result.reaction("b").force().z());
    }

    @Test
    void continuousBeamOnSprings() {
        FrameModel soft = twoSpans(1.5, 1.5).spring("a", Dof.UZ, 1e6).spring("b", Dof.UZ, 1e6).spring("c", Dof.UZ, 1e6).build();
        FrameResult result = uniform(soft, 1000, "ab", "bc");
        VALUES.check("B11.end", result.reaction("a").force().z());
        VALUES.check("B11.middle", result.reaction("b").force().z());
        assertEquals(result.reaction("b").force().z(), -1e6 * result.motion("b").translation().z(), 1e-6);
        FrameModel softer = twoSpans(1.5, 1.5).spring("a", Dof.UZ, 1e4).spring("b", Dof.UZ, 1e4).spring("c", Dof.UZ, 1e4)
                .build();
        FrameResult second = uniform(softer, 1000, "ab", "bc");
        VALUES.check("B11.soft-end", second.reaction("c").force().z());
        VALUES.check("B11.soft-middle", second.reaction("b").force().z());
        LoadCase plane = LoadCase.on(soft).settle("a", Dof.UZ, -0.002).settle("b", Dof.UZ, -0.002).settle("c", Dof.UZ, -0.002)
                .build();
        FrameResult lowered = solve(plane);
        assertEquals(-0.002, lowered.motion("b").translation().z(), 1e-12, "springs go down with the ground");
        assertEquals(0, lowered.reaction("b").force().norm(), 1e-6);
    }

    @Test
    void beamWithOverhang() {
        FrameModel model = twoSpans(2, 0.9).fix("a", Dof.UZ).fix("b", Dof.UZ).build();
        FrameResult uniform = uniform(model, 1500, "ab", "bc");
        VALUES.check("B8.front", uniform.reaction("a").force().z());
        VALUES.check("B8.rear", uniform.reaction("b").force().z());
        VALUES.check("B8.slope", uniform.motion("b").rotation().y());
        VALUES.check("B8.tip", 1e3 * uniform.motion("c").translation().z());
        FrameResult tip = solve(LoadCase.on(model).force(FramePoint.node("c"), down(800)).build());
        VALUES.check("B9.front", tip.reaction("a").force().z());
        VALUES.check("B9.rear", tip.reaction("b").force().z());
        VALUES.check("B9.tip", 1e3 * tip.motion("c").translation().z());
        VALUES.check("B9.rise", 1e3 * tip.motion("ab", 2 / Math.sqrt(3)).translation().z());
    }

    @Test
    void hinges() {
        FrameModel propped = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(2, 0, 0))
                .member(along("m", "a", "b", BEAM).releasedFar(Dof.RY)).fixAll("a").fixAll("b").build();
        FrameResult uniform = uniform(propped, 1000, "m");
        VALUES.check("propped.uniform", uniform.reaction("b").force().z());
        VALUES.check("propped.uniform-moment", uniform.forces("m", 0, CutSide.AFTER).my());
        VALUES.check("propped.slope", -uniform.motion("m", 2).rotation().y());
        assertEquals(0, uniform.motion("b").rotation().norm(), 0, "the node itself is held");
        assertEquals(0, uniform.farEnd("m").moment().y(), 1e-9);
        VALUES.check("propped.point", pointLoad(propped, 1, down(1000), Vec3.ZERO).reaction("b").force().z());
        FrameModel mirrored = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(2, 0, 0))
                .member(along("m", "b", "a", BEAM).releasedNear(Dof.RY)).fixAll("a").fixAll("b").build();
        VALUES.check("propped.uniform", uniform(mirrored, 1000, "m").reaction("b").force().z());
        FrameModel pins = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(2, 0, 0))
                .member(along("m", "a", "b", BEAM).releasedNear(Dof.RY).releasedFar(Dof.RY)).fixAll("a").fixAll("b").build();
        VALUES.check("C2.sag", sag(uniform(pins, 1000, "m").motion("m", 1)));
    }

    @Test
    void hingeInTheMiddle() {
        FrameModel model = FrameModel.builder().node("a", Vec3.ZERO).node("h", new Vec3(1, 0, 0)).node("b", new Vec3(2, 0, 0))
                .member(along("near", "a", "h", BEAM).releasedFar(Dof.RY)).member(along("far", "h", "b", BEAM)).fixAll("a")
                .fixAll("b").build();
        FrameResult result = solve(LoadCase.on(model).force(FramePoint.node("h"), down(1000)).build());
        VALUES.check("hinge.middle", sag(result.motion("h")));
        assertEquals(result.motion("near", 1).rotation().y(), -result.motion("far", 0).rotation().y(), 1e-12);
    }

    @Test
    void rigidEnds() {
        FrameModel model = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(1.35, 0, 0))
                .member(along("m", "a", "b", BEAM).withRigidEnds(Vec3.ZERO, new Vec3(-0.15, 0, 0))).fixAll("a").build();
        FrameResult tip = tipLoad(model, 1000);
        VALUES.check("rigid-end.tip", sag(tip.motion("b")));
        assertEquals(1.2, model.axes("m").length(), 1e-12);
        assertEquals(150, tip.forces("m", 1.2).my(), 1e-6, "moment of the rigid end");
        FrameModel rooted = FrameModel.builder().node("a", new Vec3(-0.2, 0, 0)).node("b", new Vec3(1.35, 0, 0))
                .member(along("m", "a", "b", BEAM).withRigidEnds(new Vec3(0.2, 0, 0), new Vec3(-0.15, 0, 0))).fixAll("a").build();
        FrameResult second = tipLoad(rooted, 1000);
        VALUES.check("rigid-end.tip", sag(second.motion("b")));
        assertEquals(-1550, second.reaction("a").moment().y(), 1e-6);
        FrameModel cranked = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(1, 0.2, 0))
                .member(along("m", "a", "b", BEAM).withRigidEnds(Vec3.ZERO, new Vec3(0, -0.2, 0))).fixAll("a").build();
        VALUES.check("rigid-end.twist", sag(tipLoad(cranked, 500).motion("b")));
        FrameModel straight = cantilever(1, BEAM);
        FramePoint arm = FramePoint.node("b", new Vec3(0, 0.2, 0));
        FrameResult armed = solve(LoadCase.on(straight).force(arm, down(500)).build());
        VALUES.check("rigid-end.twist", sag(armed.motion(arm)));
        FramePoint onMember = FramePoint.member("m", 1, new Vec3(0, 0.2, 0));
        VALUES.check("rigid-end.twist", sag(solve(LoadCase.on(straight).force(onMember, down(500)).build()).motion(onMember)));
    }

    @Test
    void ownWeight() {
        FrameModel model = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(0, 1.2, 1.6))
                .member(along("m", "a", "b", BEAM).withDensity(7850)).fixAll("a").build();
        LoadCase weight = LoadCase.on(model).selfWeight().build();
        VALUES.check("weight.member", -weight.resultant().force().z());
        VALUES.check("weight.member", solve(weight).reaction("a").force().z());
        assertEquals(0.6 * weight.resultant().force().z(), weight.resultant().moment().x(), 1e-9, "acts at the middle");
    }
}
