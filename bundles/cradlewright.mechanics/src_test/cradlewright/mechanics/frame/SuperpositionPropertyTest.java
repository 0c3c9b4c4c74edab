package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

import cradlewright.mechanics.geometry.Vec3;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Sums of stored states against the whole solved directly, on random frames with releases, rigid ends and loaded members. */
class SuperpositionPropertyTest {

    private static final UnaryOperator<Vec3> AS_IT_IS = v -> v;

    private static List<ContactDof> contacts(Random random) {
        return List.of(ContactDof.push(FramePoint.node("n4", RandomFrames.vector(random, 0.2)), Vec3.UP),
                ContactDof.push(FramePoint.member("brace", 0.35, RandomFrames.vector(random, 0.1)), new Vec3(0.6, 0, 0.8)),
                ContactDof.push(FramePoint.member("brace", 0.5), Vec3.UP),
                new ContactDof(FramePoint.member("tie", 0.4), new Vec3(0, 1, 0), RandomFrames.vector(random, 0.3)),
                new ContactDof(FramePoint.node("n2"), Vec3.ZERO, new Vec3(0, 1, 0)));
    }

    private static double along(FrameResult result, ContactDof contact) {
        return contact.action().work(result.motion(contact.point()));
    }

    @Property(seed = "68", tries = 40)
    void superposedEqualsDirectlySolved(@ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random random = new Random(seed);
        FrameModel model = RandomFrames.frame(random, AS_IT_IS).fixAll("n0").spring("n5", Dof.UY, 1e5).build();
        FrameStructure structure = FrameStructure.supported(model);
        List<ContactDof> contacts = contacts(random);
        CondensedFrame condensed = structure.condense(contacts);
        LoadCase pattern = RandomFrames.loads(model, random, AS_IT_IS).plus(LoadCase.on(model).selfWeight().build());
        if (random.nextBoolean()) {
            pattern = pattern.plus(LoadCase.on(model).settle("n0", Dof.RX, 0.002).settle("n5", Dof.UY, 0.001).build());
        }
        LoadedFrame loaded = condensed.under(pattern);
        for (double factor : new double[] {1, 1.35}) {
            double[] forces = random.doubles(contacts.size(), -900, 900).toArray();
            LoadCase.Builder pushes = LoadCase.on(model);
            for (int i = 0; i < forces.length; i++) {
                pushes.action(contacts.get(i).point(), contacts.get(i).action().times(forces[i]));
            }
            FrameResult direct = structure.solve(pattern.times(factor).plus(pushes.build()));
            FrameResult superposed = loaded.result(forces, factor);
            for (FrameMember member : model.members()) {
                double length = model.axes(member.name()).length();
                for (double x : new double[] {0, 0.3 * length, length}) {
                    assertClose(direct.forces(member.name(), x), superposed.forces(member.name(), x));
                    assertClose(direct.motion(member.name(), x), superposed.motion(member.name(), x));
                }
            }
            assertEquals(0, direct.reaction("n0").force().minus(superposed.reaction("n0").force()).norm(), 1e-4);
            double[] sag = loaded.sag(factor);
            double[][] give = condensed.flexibility();
            FrameResult alone = structure.solve(pattern.times(factor));
            for (int i = 0; i < forces.length; i++) {
                double moved = sag[i];
                for (int j = 0; j < forces.length; j++) {
                    moved += give[i][j] * forces[j];
                }
                assertEquals(along(alone, contacts.get(i)), sag[i], 1e-10, "sag of contact " + i);
                assertEquals(along(direct, contacts.get(i)), moved, 1e-10, "movement of contact " + i);
            }
        }
    }

    private static void assertClose(InternalForces a, InternalForces b) {
        assertEquals(0, Math.hypot(a.n() - b.n(), Math.hypot(a.vy() - b.vy(), a.vz() - b.vz())), 1e-5);
        assertEquals(0, Math.hypot(a.t() - b.t(), Math.hypot(a.my() - b.my(), a.mz() - b.mz())), 1e-5);
    }

    private static void assertClose(Motion a, Motion b) {
        assertEquals(0, a.translation().minus(b.translation()).norm(), 1e-10);
        assertEquals(0, a.rotation().minus(b.rotation()).norm(), 1e-10);
    }
}
