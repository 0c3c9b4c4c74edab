package cradlewright.mechanics.frame;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;

/** Free bodies, their contacts, and bodies coupled through contacts that are known to be shut. */
class CondensedFrameTest {

    private static final CheckValues VALUES = CheckValues.load("frame");
    private static final MemberSection BEAM = MemberSection.withoutShear(2.1e11, 8.1e10, 5.4e-4, 2.54e-7, 1.34e-7, 2.93e-7);
    private static final Vec3 DOWN = new Vec3(0, 0, -1);

    private static double[] solve(double[][] matrix, double[] right) {
        return new LUDecomposition(new Array2DRowRealMatrix(matrix)).getSolver().solve(new ArrayRealVector(right)).toArray();
    }

    /** [C -E'; E 0] [f; q] = [-g; w] for contacts that all stay shut. */
    private static double[] coupled(double[][] c, double[] g, double[][] e, double[] w) {
        int n = g.length;
        int rows = w.length;
        double[][] matrix = new double[n + rows][n + rows];
        double[] right = new double[n + rows];
        for (int i = 0; i < n; i++) {
            System.arraycopy(c[i], 0, matrix[i], 0, n);
            right[i] = -g[i];
            for (int r = 0; r < rows; r++) {
                matrix[i][n + r] = -e[r][i];
                matrix[n + r][i] = e[r][i];
            }
        }
        System.arraycopy(w, 0, right, n, rows);
        return solve(matrix, right);
    }

    /** Upward force and moments about x and y of an action about the origin. */
    private static double[] upright(ForceMoment action) {
        return new double[] {action.force().z(), action.moment().x(), action.moment().y()};
    }

    private static FrameModel threeNodes() {
        return FrameModel.builder().node("a", Vec3.ZERO).node("m", new Vec3(1, 0, 0)).node("b", new Vec3(2, 0, 0))
                .member(FrameMember.of("am", "a", "m", BEAM, Vec3.UP))
                .member(FrameMember.of("mb", "m", "b", BEAM, Vec3.UP)).build();
    }

    @Test
    void looseBeam() {
        FrameModel model = threeNodes();
        LoadCase loads = LoadCase.on(model).force(FramePoint.node("m"), DOWN.times(1000))
                .force(FramePoint.node("a"), Vec3.UP.times(500)).force(FramePoint.node("b"), Vec3.UP.times(500)).build();
        assertEquals("m", FrameStructure.freeBody(model).clampNode(), "where most members meet");
        for (String clamp : List.of("a", "m", "b")) {
            FrameResult result = FrameStructure.freeBody(model, clamp).solve(loads);
            VALUES.check("free.moment", -result.forces("am", 1).my());
            double ends = (result.motion("a").translation().z() + result.motion("b").translation().z()) / 2;
            VALUES.check("free.sag", 1e3 * (ends - result.motion("m").translation().z()));
        }
        LoadCase lopsided = loads.plus(LoadCase.on(model).force(FramePoint.node("a"), Vec3.UP).build());
        assertThrows(IllegalArgumentException.class, () -> FrameStructure.freeBody(model).solve(lopsided));
        LoadCase turning = loads.plus(LoadCase.on(model)
                .action(FramePoint.node("a"), new ForceMoment(Vec3.ZERO, new Vec3(0, 1, 0))).build());
        assertThrows(IllegalArgumentException.class, () -> FrameStructure.freeBody(model).solve(turning));
    }

    @Test
    void contactsBetweenTheNodesGiveLikeContactsAtNodes() {
        FrameModel plain = FrameModel.builder().node("a", Vec3.ZERO).node("b", new Vec3(2, 0, 0))
                .member(FrameMember.of("ab", "a", "b", BEAM, Vec3.UP)).build();
        FrameModel split = threeNodes();
        Vec3 arm = new Vec3(0.05, 0.2, 0.1);
        Vec3 skew = new Vec3(0.6, 0, 0.8);
        CondensedFrame a = FrameStructure.freeBody(plain, "a").condense(List.of(
                ContactDof.push(FramePoint.member("ab", 1, arm), skew), ContactDof.push(FramePoint.member("ab", 0.4), Vec3.UP),
                new ContactDof(FramePoint.node("b"), Vec3.ZERO, new Vec3(0, 1, 0))));
        CondensedFrame b = FrameStructure.freeBody(split, "a").condense(List.of(
                ContactDof.push(FramePoint.node("m", arm), skew), ContactDof.push(FramePoint.member("am", 0.4), Vec3.UP),
                new ContactDof(FramePoint.node("b"), Vec3.ZERO, new Vec3(0, 1, 0))));
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(b.flexibility()[i], a.flexibility()[i], 1e-15);
            assertClose(b.balanceColumn(i), a.balanceColumn(i));
        }
        LoadCase loadA = LoadCase.on(plain).force(FramePoint.member("ab", 0.7), DOWN.times(500))
                .uniform("ab", DOWN.times(200), LoadAxes.GLOBAL).build();
        LoadCase loadB = LoadCase.on(split).force(FramePoint.member("am", 0.7), DOWN.times(500))
                .uniform("am", DOWN.times(200), LoadAxes.GLOBAL).uniform("mb", DOWN.times(200), LoadAxes.GLOBAL).build();
        assertArrayEquals(b.sag(loadB), a.sag(loadA), 1e-12);
    }

    private static void assertClose(ForceMoment wanted, ForceMoment found) {
        assertEquals(0, wanted.force().minus(found.force()).norm(), 1e-12);
        assertEquals(0, wanted.moment().minus(found.moment()).norm(), 1e-12);
    }

    /** What does not hang on the clamped node: the middle against the mean of both ends. */
    @Test
    void beamBetweenThreeContacts() {
        FrameModel model = threeNodes();
        LoadCase weight = LoadCase.on(model).uniform("am", DOWN.times(300), LoadAxes.GLOBAL)
                .uniform("mb", DOWN.times(300), LoadAxes.GLOBAL).build();
        double[] share = {-0.5, 1, -0.5};
        double[] forces = {300, 0, 300};
        for (String clamp : List.of("a", "m", "b")) {
            CondensedFrame condensed = FrameStructure.freeBody(model, clamp).condense(List.of(
                    ContactDof.push(FramePoint.node("a"), Vec3.UP), ContactDof.push(FramePoint.node("m"), Vec3.UP),
                    ContactDof.push(FramePoint.node("b"), Vec3.UP)));
            double[][] c = condensed.flexibility();
            double[] sag = condensed.sag(weight);
            double give = 0;
            double lowered = 0;
            for (int i = 0; i < 3; i++) {
                lowered -= share[i] * sag[i];
                for (int k = 0; k < 3; k++) {
                    give += share[i] * c[i][k] * share[k];
                    lowered -= share[i] * c[i][k] * forces[k];
                }
            }
            VALUES.check("condense.give", 1e6 * give);
            VALUES.check("condense.sag", 1e3 * lowered);
        }
    }

    @Test
    void sumOfContactsAndLoadsIsSolvedAtOnce() {
        FrameModel model = threeNodes();
        FrameStructure structure = FrameStructure.freeBody(model);
        CondensedFrame condensed = structure.condense(List.of(ContactDof.push(FramePoint.member("am", 0.3), Vec3.UP),
                ContactDof.push(FramePoint.member("mb", 0.7), Vec3.UP)));
        LoadCase load = LoadCase.on(model).uniform("am", DOWN.times(300), LoadAxes.GLOBAL)
                .uniform("mb", DOWN.times(300), LoadAxes.GLOBAL).build();
        double[] forces = {300, 300};
        FrameResult result = condensed.result(forces, load);
        FrameResult direct = structure.solve(load.plus(LoadCase.on(model).force(FramePoint.member("am", 0.3), Vec3.UP.times(300))
                .force(FramePoint.member("mb", 0.7), Vec3.UP.times(300)).build()));
        assertEquals(direct.forces("am", 1).my(), result.forces("am", 1).my(), 1e-9);
        assertEquals(300 * 0.5 - 300 * 0.7, result.forces("am", 1).my(), 1e-9, "statics: hog of the weight, sag of the support");
        assertEquals(result.motion("am", 0.3).translation().z(), condensed.sag(load)[0] + 300 * condensed.flexibility()[0][0]
                + 300 * condensed.flexibility()[0][1], 1e-12);
        assertThrows(IllegalArgumentException.class, () -> condensed.result(new double[] {300, 299}, load));
        assertThrows(IllegalArgumentException.class, () -> condensed.result(new double[] {300}, load));
        assertThrows(IllegalArgumentException.class, () -> condensed.result(new double[] {300, Double.NaN}, load));
    }

    private static double[] shellOnSprings(double perDegree, double stiffness, double bending) {
        ShellSpine shell = ShellSpine.of(Vec3.ZERO, new Vec3(1.8, 0, 0), 1.8, Math.toDegrees(perDegree), bending);
        List<ContactDof> mounts = new ArrayList<>();
        for (double[] place : new double[][] {{0, -0.5}, {0, 0.5}, {1.8, 0.5}, {1.8, -0.5}}) {
            mounts.add(ContactDof.push(shell.pointAt(new Vec3(place[0], place[1], -0.2)), Vec3.UP));
        }
        CondensedFrame condensed = shell.freeBody().condense(mounts);
        double[][] c = condensed.flexibility();
        LoadCase weight = LoadCase.on(shell.model()).force(shell.pointAt(new Vec3(0.9, 0, 0.3)), DOWN.times(4000)).build();
        double[] g = condensed.sag(weight);
        g[0] += 0.001;
        double[][] e = new double[3][4];
        for (int i = 0; i < 4; i++) {
            c[i][i] += 1 / stiffness;
            double[] column = upright(condensed.balanceColumn(i));
            for (int r = 0; r < 3; r++) {
                e[r][i] = column[r];
            }
        }
        double[] forces = coupled(c, g, e, upright(weight.resultant().times(-1)));
        double[] four = {forces[0], forces[1], forces[2], forces[3]};
        assertEquals(0, condensed.result(four, weight).reaction(ShellSpine.FRONT).force().norm(), 1e-6);
        return four;
    }

    @Test
    void shellThatTwistsOnFourSprings() {
        ShellSpine shell = ShellSpine.of(new Vec3(0.2, 0, 0.3), new Vec3(2, 0, 0.3), 1.8, Math.toDegrees(3390), 3e5);
        List<ContactDof> mounts = new ArrayList<>();
        for (double[] place : new double[][] {{0.2, -0.5}, {0.2, 0.5}, {2, 0.5}, {2, -0.5}}) {
            mounts.add(ContactDof.push(shell.pointAt(new Vec3(place[0], place[1], 0)), Vec3.UP));
        }
        double[][] c = shell.freeBody().condense(mounts).flexibility();
        double warp = 0;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                warp += (i % 2 == 0 ? 1 : -1) * (j % 2 == 0 ? 1 : -1) * c[i][j];
            }
        }
        VALUES.check("B5.body", 1e6 * warp);
        for (double bending : new double[] {1e5, 1e7}) {
            double[] forces = shellOnSprings(3390, 1e6, bending);
            VALUES.check("B5.fe-low", forces[0]);
            VALUES.check("B5.fe-high", forces[1]);
            VALUES.check("B5.fe-low", forces[2]);
            VALUES.check("B5.fe-high", forces[3]);
        }
        VALUES.check("B5.20000", 1000 - shellOnSprings(20000, 1e6, 1e6)[0]);
        VALUES.check("B5.934", 1000 - shellOnSprings(934, 1e6, 1e6)[0]);
        VALUES.check("B5.cork-20000", 1000 - shellOnSprings(20000, 1e7, 1e6)[0]);
        VALUES.check("B5.cork-3390", 1000 - shellOnSprings(3390, 1e7, 1e6)[0]);
        VALUES.check("B5.cork-934", 1000 - shellOnSprings(934, 1e7, 1e6)[0]);
    }

    @Test
    void spineReachesBeyondItsEnds() {
        ShellSpine shell = ShellSpine.of(new Vec3(1, 0, 0.5), new Vec3(3, 0, 0.5), 2.4, 1e5, 1e6);
        FramePoint behind = shell.pointAt(new Vec3(3.5, 0.4, 0.2));
        assertEquals(2, behind.distance(), 1e-12);
        assertEquals(0, shell.model().position(behind).minus(new Vec3(3.5, 0.4, 0.2)).norm(), 1e-12);
        assertEquals(2.4e5, shell.model().member(ShellSpine.SPINE).section().j(), 1e-6, "G is one");
        FramePoint beside = ShellSpine.of(Vec3.ZERO, new Vec3(0, 2, 0), 2, 1e5, 1e6).pointAt(new Vec3(0.7, 1.5, 0.2));
        assertEquals(1.5, beside.distance(), 1e-12, "along the spine, whichever way that lies");
        Vec3 end = new Vec3(2, 0, 0);
        assertThrows(IllegalArgumentException.class, () -> ShellSpine.of(end, end, 2, 1e5, 1e6));
        assertThrows(IllegalArgumentException.class, () -> ShellSpine.of(Vec3.ZERO, end, 2, 0, 1e6));
        assertThrows(IllegalArgumentException.class, () -> ShellSpine.of(Vec3.ZERO, end, 2, 1e5, Double.POSITIVE_INFINITY));
    }

    private static String rail(int side, int i) {
        return (side > 0 ? "right " : "left ") + i;
    }

    /** Rails 3.0 m long, 1.1 m apart, a node each quarter of a metre, cross members at each metre with a node in the middle. */
    private static FrameModel dolly() {
        MemberSection section = MemberSection.withoutShear(2.1e11, 8.1e10, 5.4e-4, 1.344e-7, 2.54e-7, 2.9e-7);
        FrameModel.Builder dolly = FrameModel.builder();
        for (int side : new int[] {1, -1}) {
            for (int i = 0; i <= 12; i++) {
                dolly.node(rail(side, i), new Vec3(0.25 * i, 0.55 * side, 0));
                if (i > 0) {
                    dolly.member(FrameMember.of("rail " + rail(side, i), rail(side, i - 1), rail(side, i), section, Vec3.UP)
                            .withDensity(7850));
                }
            }
        }
        for (int x = 0; x <= 3; x++) {
            dolly.node("middle " + x, new Vec3(x, 0, 0));
            for (int side : new int[] {1, -1}) {
                dolly.member(FrameMember.of(String.format(Locale.ROOT, "cross %d %d", x, side), "middle " + x, rail(side, 4 * x),
                        section, Vec3.UP).withDensity(7850));
            }
        }
        return dolly.build();
    }

    private static FrameResult rigidShellOnDolly(FrameStructure dolly, double[] forces) {
        FrameModel model = dolly.model();
        List<ContactDof> contacts = new ArrayList<>();
        List<Vec3> pads = new ArrayList<>();
        for (int i : new int[] {1, 6, 11}) {
            for (int side : new int[] {1, -1}) {
                contacts.add(ContactDof.push(FramePoint.node(rail(side, i)), DOWN));
                pads.add(model.node(rail(side, i)).position());
            }
        }
        for (int i : new int[] {0, 12}) {
            for (int side : new int[] {1, -1}) {
                contacts.add(ContactDof.push(FramePoint.node(rail(side, i)), Vec3.UP));
            }
        }
        LoadCase loads = LoadCase.on(model).selfWeight()
                .force(FramePoint.node(rail(-1, 6)), DOWN.times(60 * Constants.GRAVITY)).build();
        CondensedFrame condensed = dolly.condense(contacts);
        double[][] flexibility = condensed.flexibility();
        double[] gaps = condensed.sag(loads);
        gaps[2] += 0.0008;
        gaps[7] += 0.003;
        double[][] columns = new double[6][10];
        for (int i = 0; i < 10; i++) {
            flexibility[i][i] += i < 6 ? 1e-7 : 5e-7;
            double[] below = upright(condensed.balanceColumn(i));
            double[] above = i < 6 ? upright(new ForceMoment(Vec3.UP, Vec3.ZERO).seenFrom(pads.get(i))) : new double[3];
            for (int r = 0; r < 3; r++) {
                columns[r][i] = below[r];
                columns[3 + r][i] = above[r];
            }
        }
        double[] own = upright(loads.resultant().times(-1));
        double[] shell = upright(new ForceMoment(Vec3.UP.times(320 * Constants.GRAVITY), Vec3.ZERO)
                .seenFrom(new Vec3(1.35, -0.03, 0)));
        double[] w = {own[0], own[1], own[2], shell[0], shell[1], shell[2]};
        int[] shut = {0, 1, 5, 6, 7, 8, 9};
        double[][] c = new double[7][7];
        double[] g = new double[7];
        double[][] e = new double[6][7];
        for (int i = 0; i < 7; i++) {
            g[i] = gaps[shut[i]];
            for (int j = 0; j < 7; j++) {
                c[i][j] = flexibility[shut[i]][shut[j]];
            }
            for (int r = 0; r < 6; r++) {
                e[r][i] = columns[r][shut[i]];
            }
        }
        double[] solution = coupled(c, g, e, w);
        for (int i = 0; i < 7; i++) {
            forces[shut[i]] = solution[i];
        }
        for (int i = 0; i < 10; i++) {
            double gap = gaps[i];
            for (int j = 0; j < 10; j++) {
                gap += flexibility[i][j] * forces[j];
            }
            for (int r = 0; r < 6; r++) {
                gap -= columns[r][i] * solution[7 + r];
            }
            assertTrue(forces[i] >= 0 && gap >= -1e-12, "contact " + i + " force " + forces[i] + " gap " + gap);
        }
        return condensed.result(forces, loads);
    }

    @Test
    void rigidShellOnAnElasticDolly() {
        FrameModel model = dolly();
        double[] forces = new double[10];
        FrameResult result = rigidShellOnDolly(FrameStructure.freeBody(model), forces);
        VALUES.check("coupled.pad-1", forces[0]);
        VALUES.check("coupled.pad-2", forces[1]);
        VALUES.check("coupled.pad-6", forces[5]);
        for (int i = 0; i < 4; i++) {
            VALUES.check("coupled.castor-" + (i + 1), forces[6 + i]);
        }
        double[] again = new double[10];
        FrameResult other = rigidShellOnDolly(FrameStructure.freeBody(model, rail(-1, 12)), again);
        assertArrayEquals(forces, again, 1e-6);
        assertEquals(result.forces("rail right 6", 0.1).my(), other.forces("rail right 6", 0.1).my(), 1e-6);
    }
}
