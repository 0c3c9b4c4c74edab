package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

import cradlewright.mechanics.geometry.Vec3;

/** What hangs loose is named; bad input is refused. */
class LooseStructureTest {

    private static final MemberSection BEAM = MemberSection.withoutShear(2.1e11, 8.1e10, 5.4e-4, 2.54e-7, 1.34e-7, 2.93e-7);

    private static FrameMember member(String name, String from, String to) {
        return FrameMember.of(name, from, to, BEAM, Vec3.UP);
    }

    private static FrameModel.Builder chain(int nodes) {
        FrameModel.Builder chain = FrameModel.builder();
        for (int i = 0; i < nodes; i++) {
            chain.node("n" + i, new Vec3(i, 0, 0));
        }
        return chain;
    }

    private static LooseStructureException loose(Executable work) {
        return assertThrows(LooseStructureException.class, work);
    }

    @Test
    void aPartThatIsNotJoinedIsNamed() {
        FrameModel model = chain(4).member(member("near", "n0", "n1")).member(member("apart", "n2", "n3")).build();
        LooseStructureException e = loose(() -> FrameStructure.freeBody(model, "n1"));
        assertEquals(List.of("n2", "n3"), e.nodes());
        assertEquals(List.of("apart"), e.members());
        assertTrue(e.getMessage().contains("apart"));
        FrameModel held = chain(4).member(member("near", "n0", "n1")).member(member("apart", "n2", "n3")).fixAll("n3").build();
        assertEquals(List.of("near"), loose(() -> FrameStructure.supported(held)).members());
        FrameModel node = chain(3).member(member("near", "n0", "n1")).fixAll("n0").build();
        assertEquals(List.of("n2"), loose(() -> FrameStructure.supported(node)).nodes());
    }

    @Test
    void aHingeThatMakesAMechanismIsNamed() {
        FrameModel model = chain(5).member(member("a", "n0", "n1")).member(member("b", "n1", "n2"))
                .member(member("c", "n2", "n3").releasedNear(Dof.RY)).member(member("d", "n3", "n4")).fixAll("n0").build();
        LooseStructureException e = loose(() -> FrameStructure.supported(model));
        assertEquals(List.of("n3", "n4"), e.nodes());
        assertEquals(List.of("c", "d"), e.members());
        FrameModel body = chain(5).member(member("a", "n0", "n1")).member(member("b", "n1", "n2"))
                .member(member("c", "n2", "n3").releasedNear(Dof.RY)).member(member("d", "n3", "n4")).build();
        for (int clamp = 0; clamp < 5; clamp++) {
            int node = clamp;
            assertTrue(loose(() -> FrameStructure.freeBody(body, "n" + node)).members().contains("c"));
        }
    }

    @Test
    void aFrameThatRollsOrANodeThatSpinsIsNamed() {
        FrameModel rolling = chain(2).member(member("a", "n0", "n1")).fix("n0", Dof.UY, Dof.UZ, Dof.RX, Dof.RZ)
                .fix("n1", Dof.UY, Dof.UZ).build();
        assertEquals(List.of("n0", "n1"), loose(() -> FrameStructure.supported(rolling)).nodes());
        FrameModel spinning = chain(3).member(member("a", "n0", "n1").releasedFar(Dof.RY))
                .member(member("b", "n1", "n2").releasedNear(Dof.RY)).fixAll("n0").fixAll("n2").build();
        assertEquals(List.of("n1"), loose(() -> FrameStructure.supported(spinning)).nodes());
        FrameModel.Builder twisting = chain(2).member(member("shaft", "n0", "n1").releasedNear(Dof.RX).releasedFar(Dof.RX))
                .fixAll("n0").fixAll("n1");
        assertEquals(List.of("shaft"), loose(() -> FrameStructure.supported(twisting.build())).members());
    }

    @Test
    void aLongChainIsNotTakenForAMechanism() {
        FrameModel.Builder chain = FrameModel.builder();
        for (int i = 0; i <= 200; i++) {
            chain.node("n" + i, new Vec3(0.025 * i, 0, 0));
            if (i > 0) {
                chain.member(member("m" + i, "n" + (i - 1), "n" + i));
            }
        }
        FrameModel model = chain.build();
        for (String clamp : List.of("n0", "n100", "n200")) {
            assertEquals(clamp, FrameStructure.freeBody(model, clamp).clampNode());
        }
    }

    @Test
    void theClampAvoidsHinges() {
        FrameModel model = chain(4).node("x", new Vec3(1, 1, 0)).node("y", new Vec3(1, -1, 0))
                .member(member("a", "n0", "n1").releasedFar(Dof.RY)).member(member("x", "n1", "x").releasedNear(Dof.RY))
                .member(member("y", "y", "n1")).member(member("b", "n1", "n2")).member(member("c", "n2", "n3"))
                .member(member("p", "x", "n3")).member(member("q", "n0", "n2")).build();
        assertEquals("n2", FrameStructure.freeBody(model).clampNode(), "four ends meet at n1, two of them hinged");
    }

    @Test
    void badInputIsRefused() {
        assertRefused(() -> new MemberSection(2.1e11, 8.1e10, 0, 1, 1, 1, 1, 1));
        assertRefused(() -> new MemberSection(2.1e11, 8.1e10, 1, 1, Double.NaN, 1, 1, 1));
        assertRefused(() -> new MemberSection(2.1e11, 8.1e10, 1, 1, 1, 1, Double.NaN, 1));
        assertRefused(() -> new MemberSection(2.1e11, 8.1e10, 1, 1, 1, 1, 1, -1));
        assertRefused(() -> BeamElement.stiffness(BEAM, 0));
        assertRefused(() -> member("a", "n0", "n0"));
        assertRefused(() -> member("a", "n0", "n1").withDensity(-1));
        assertRefused(() -> chain(1).node("n0", Vec3.ZERO).build());
        assertRefused(() -> chain(2).member(member("a", "n0", "n1")).member(member("a", "n1", "n0")).build());
        assertRefused(() -> chain(2).member(member("a", "n0", "n9")).build());
        assertRefused(() -> FrameModel.builder().build());
        assertRefused(() -> chain(2).fixAll("n7").build());
        assertRefused(() -> chain(2).fix("n0", Dof.UX).spring("n0", Dof.UX, 1));
        assertRefused(() -> chain(2).spring("n0", Dof.UX, 0));
        assertRefused(() -> chain(2).node("same", Vec3.ZERO).member(member("a", "n0", "same")).build());
        assertRefused(() -> chain(2).member(FrameMember.of("a", "n0", "n1", BEAM, new Vec3(1, 0, 0))).build());
        assertRefused(() -> chain(2).member(FrameMember.of("a", "n0", "n1", BEAM, new Vec3(1, 0, 1e-7))).build());
        assertRefused(() -> chain(2).member(FrameMember.of("a", "n0", "n1", BEAM, Vec3.ZERO)).build());
        assertRefused(() -> chain(2).member(member("a", "n0", "n1").withRigidEnds(new Vec3(2, 0, 0), Vec3.ZERO)).build());
        FrameModel model = chain(2).member(member("a", "n0", "n1")).fixAll("n0").build();
        assertRefused(() -> FrameStructure.freeBody(model));
        assertRefused(() -> LoadCase.on(model).force(FramePoint.member("a", 1.1), Vec3.UP));
        assertRefused(() -> FramePoint.member("a", -0.1));
        assertRefused(() -> new FramePoint(false, "n0", 0.1, Vec3.ZERO));
        assertRefused(() -> LoadCase.on(model).force(FramePoint.node("n0"), new Vec3(Double.NaN, 0, 0)));
        assertRefused(() -> LoadCase.on(model).uniform("a", 0.5, 0.5, ForceMoment.ZERO, LoadAxes.GLOBAL));
        assertRefused(() -> LoadCase.on(model).settle("n1", Dof.UZ, 0.001));
        assertRefused(() -> LoadCase.none(model).times(Double.NaN));
        assertRefused(() -> ContactDof.push(FramePoint.node("n0"), new Vec3(0, 0, 2)));
        assertRefused(() -> new ContactDof(FramePoint.node("n0"), Vec3.ZERO, Vec3.ZERO));
        FrameModel other = chain(2).member(member("a", "n0", "n1")).fixAll("n0").build();
        FrameStructure structure = FrameStructure.supported(model);
        assertRefused(() -> structure.solve(LoadCase.none(other)));
        assertRefused(() -> LoadCase.none(model).plus(LoadCase.none(other)));
        assertRefused(() -> structure.condense(List.of()).sag(LoadCase.none(other)));
        assertRefused(() -> structure.solve(LoadCase.none(model)).forces("a", 1.5));
        assertRefused(() -> structure.solve(LoadCase.none(model)).motion("n5"));
        assertThrows(IllegalStateException.class, structure::clampNode);
        assertEquals(0, structure.solve(LoadCase.none(model)).motion("n1").translation().norm(), 0);
    }

    private static void assertRefused(Executable work) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, work);
        assertTrue(e.getMessage() != null && !e.getMessage().isBlank());
    }
}
