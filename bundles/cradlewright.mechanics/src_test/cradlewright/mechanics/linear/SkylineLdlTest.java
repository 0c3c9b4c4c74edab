package cradlewright.mechanics.linear;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class SkylineLdlTest {

    /** A random network of springs between random rows with some springs to the ground: positive definite. */
    private static double[][] network(int n, Random random, SymmetricAssembly assembly) {
        double[][] dense = new double[n][n];
        for (int s = 0; s < 2 * n; s++) {
            int i = random.nextInt(n);
            int j = random.nextInt(n);
            double k = 0.1 + random.nextDouble();
            if (i != j) {
                assembly.add(i, i, k);
                assembly.add(j, j, k);
                assembly.add(Math.min(i, j), Math.max(i, j), -k);
                dense[i][i] += k;
                dense[j][j] += k;
                dense[i][j] -= k;
                dense[j][i] -= k;
            }
        }
        for (int i = 0; i < n; i++) {
            assembly.add(i, i, 0.05);
            dense[i][i] += 0.05;
        }
        return dense;
    }

    @Property(seed = "51", tries = 60)
    void solvesLikeADenseSolver(@ForAll @IntRange(min = 1, max = 40) int n, @ForAll @LongRange(min = 0, max = 99999) long seed) {
        Random random = new Random(seed);
        SymmetricAssembly assembly = new SymmetricAssembly(n);
        double[][] dense = network(n, random, assembly);
        double[] b = random.doubles(n, -1, 1).toArray();
        double[] wanted = new LUDecomposition(new Array2DRowRealMatrix(dense)).getSolver().solve(new ArrayRealVector(b))
                .toArray();
        SkylineLdl factors = SkylineLdl.factor(assembly);
        assertEquals(n, factors.size());
        double[] x = factors.solve(b);
        assertArrayEquals(wanted, x, 1e-10);
        assertArrayEquals(b, assembly.times(x), 1e-12);
        assertArrayEquals(x, factors.solve(b), 0, "a second right hand side finds the factors as they were");
    }

    @Test
    void theOrderOfAShuffledChainGivesTheLeastProfile() {
        int n = 101;
        int[] name = new Random(7).ints(0, n).distinct().limit(n).toArray();
        SymmetricAssembly chain = new SymmetricAssembly(n);
        for (int i = 0; i < n; i++) {
            chain.add(name[i], name[i], 2.5);
            if (i > 0) {
                chain.add(name[i], name[i - 1], -1);
            }
        }
        assertEquals(2 * n - 1, SkylineLdl.factor(chain).profileLength());
    }

    @Test
    void theOrderOfAGridKeepsTheProfileNarrow() {
        int wide = 30;
        int narrow = 4;
        SymmetricAssembly grid = new SymmetricAssembly(wide * narrow);
        for (int i = 0; i < wide * narrow; i++) {
            grid.add(i, i, 4.1);
            if (i % wide > 0) {
                grid.add(i, i - 1, -1);
            }
            if (i >= wide) {
                grid.add(i, i - wide, -1);
            }
        }
        long length = SkylineLdl.factor(grid).profileLength();
        assertTrue(length <= (long) wide * narrow * (narrow + 2), "row by row it would be about 30 wide, found " + length);
    }

    @Test
    void namesTheUnknownAndTheMotionThatMeetsNoResistance() {
        SymmetricAssembly chain = new SymmetricAssembly(5);
        for (int i = 1; i < 4; i++) {
            chain.add(i, i, 3);
            chain.add(i - 1, i - 1, 3);
            chain.add(i, i - 1, -3);
        }
        chain.add(4, 4, 1);
        SingularStructureException e = assertThrows(SingularStructureException.class, () -> SkylineLdl.factor(chain));
        assertTrue(e.dof() < 4, "row 4 is held, found " + e.dof());
        assertTrue(e.pivot() <= 1e-10 * e.diagonal());
        double[] motion = e.motion();
        assertEquals(1, motion[e.dof()]);
        assertArrayEquals(new double[] {1, 1, 1, 1, 0}, motion, 1e-12);
        assertArrayEquals(new double[5], chain.times(motion), 1e-12);
    }

    @Test
    void thePivotLimitIsTakenFromItsOwnDiagonal() {
        SymmetricAssembly stiff = new SymmetricAssembly(2);
        stiff.add(0, 0, 1e12);
        stiff.add(1, 1, 1e-6);
        assertArrayEquals(new double[] {1e-12, 1e6}, SkylineLdl.factor(stiff).solve(new double[] {1, 1}), 1e-6);
        SymmetricAssembly nearly = new SymmetricAssembly(2);
        nearly.add(0, 0, 1);
        nearly.add(1, 0, -1);
        nearly.add(1, 1, 1 + 0.9e-10);
        assertThrows(SingularStructureException.class, () -> SkylineLdl.factor(nearly));
        nearly.add(1, 1, 0.3e-10);
        assertEquals(1 / 1.2e-10, SkylineLdl.factor(nearly).solve(new double[] {1, 0})[0], 1e4);
    }

    @Test
    void refusesWhatIsNotPositiveDefinite() {
        SymmetricAssembly negative = new SymmetricAssembly(1);
        negative.add(0, 0, -1);
        assertEquals(0, assertThrows(SingularStructureException.class, () -> SkylineLdl.factor(negative)).dof());
        assertThrows(SingularStructureException.class, () -> SkylineLdl.factor(new SymmetricAssembly(1)));
    }

    @Test
    void refusesBadInput() {
        SymmetricAssembly matrix = new SymmetricAssembly(2);
        assertThrows(IllegalArgumentException.class, () -> matrix.add(2, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> matrix.add(0, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> matrix.add(0, 0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> matrix.times(new double[3]));
        assertThrows(IllegalArgumentException.class, () -> new SymmetricAssembly(-1));
        matrix.add(0, 0, 1);
        matrix.add(1, 1, 1);
        assertThrows(IllegalArgumentException.class, () -> SkylineLdl.factor(matrix).solve(new double[3]));
        assertEquals(0, Arrays.stream(SkylineLdl.factor(matrix).solve(new double[2])).sum());
    }
}
