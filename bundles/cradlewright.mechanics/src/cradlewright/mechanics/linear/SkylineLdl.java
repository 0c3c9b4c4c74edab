package cradlewright.mechanics.linear;

/**
 * Factors K = L D L' of a sparse symmetric positive definite matrix, held as a profile in the reverse Cuthill-McKee order;
 * factorised once, then good for any number of right hand sides. Immutable, safe for use by several threads.
 *
 * <p>Source: any text on matrix structural analysis, active column or profile solution (from memory). Valid for positive
 * definite matrices; the work grows with the sum of the squares of the row lengths, meant for up to some ten thousand rows.
 */
public final class SkylineLdl {

    /** A pivot at or below this share of its diagonal counts as no resistance. */
    public static final double PIVOT_SHARE = 1e-10;

    private final int[] order;
    /** Row i of L from its first column up to, without, the diagonal of ones; the last place holds D. */
    private final double[][] rows;

    private SkylineLdl(int[] order, double[][] rows) {
        this.order = order;
        this.rows = rows;
    }

    /**
     * Factorises the matrix.
     *
     * @throws SingularStructureException if a pivot falls to {@link #PIVOT_SHARE} of its diagonal or below
     */
    public static SkylineLdl factor(SymmetricAssembly matrix) {
        int[] order = ReverseCuthillMcKee.order(matrix.neighbours());
        int[] place = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        SkylineLdl factors = new SkylineLdl(order, matrix.profile(place));
        for (int i = 0; i < order.length; i++) {
            factors.eliminate(i);
        }
        return factors;
    }

    private void eliminate(int i) {
        double[] row = rows[i];
        int first = first(i);
        int last = row.length - 1;
        double diagonal = row[last];
        for (int j = first; j < i; j++) {
            int upperFirst = first(j);
            int start = Math.max(first, upperFirst);
            row[j - first] -= dot(row, start - first, rows[j], start - upperFirst, j - start);
        }
        double pivot = diagonal;
        for (int j = first; j < i; j++) {
            double share = row[j - first] / pivot(j);
            pivot -= share * row[j - first];
            row[j - first] = share;
        }
        if (!(pivot > PIVOT_SHARE * diagonal)) {
            throw new SingularStructureException(order[i], pivot, diagonal, freeMotion(i));
        }
        row[last] = pivot;
    }

    /** Sum of products of two stretches, in four sums that do not wait for one another. */
    private static double dot(double[] a, int fromA, double[] b, int fromB, int count) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int k = 0;
        for (; k + 3 < count; k += 4) {
            s0 += a[fromA + k] * b[fromB + k];
            s1 += a[fromA + k + 1] * b[fromB + k + 1];
            s2 += a[fromA + k + 2] * b[fromB + k + 2];
            s3 += a[fromA + k + 3] * b[fromB + k + 3];
        }
        for (; k < count; k++) {
            s0 += a[fromA + k] * b[fromB + k];
        }
        return s0 + s1 + (s2 + s3);
    }

    /** Row i moves by one, the rows before it follow freely, the rows after it stay: L' x = e_i. */
    private double[] freeMotion(int i) {
        double[] x = new double[order.length];
        x[i] = 1;
        substituteBack(x, i);
        return scatter(x);
    }

    /**
     * Solves K x = b.
     *
     * @throws IllegalArgumentException if b has the wrong length
     */
    public double[] solve(double[] b) {
        int n = order.length;
        if (b.length != n) {
            throw new IllegalArgumentException("right hand side of " + n + " numbers wanted, found " + b.length);
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            double[] row = rows[i];
            x[i] = b[order[i]] - dot(row, 0, x, first(i), row.length - 1);
        }
        for (int i = 0; i < n; i++) {
            x[i] /= pivot(i);
        }
        substituteBack(x, n - 1);
        return scatter(x);
    }

    private void substituteBack(double[] x, int from) {
        for (int i = from; i >= 0; i--) {
            double[] row = rows[i];
            int first = first(i);
            double xi = x[i];
            for (int k = 0; k < row.length - 1; k++) {
                x[first + k] -= row[k] * xi;
            }
        }
    }

    private double[] scatter(double[] x) {
        double[] original = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            original[order[i]] = x[i];
        }
        return original;
    }

    private int first(int i) {
        return i - rows[i].length + 1;
    }

    private double pivot(int i) {
        return rows[i][rows[i].length - 1];
    }

    /** Returns the number of rows. */
    public int size() {
        return order.length;
    }

    /** Returns the number of places the profile holds, diagonal included: a measure of memory and work. */
    public long profileLength() {
        long sum = 0;
        for (double[] row : rows) {
            sum += row.length;
        }
        return sum;
    }
}
