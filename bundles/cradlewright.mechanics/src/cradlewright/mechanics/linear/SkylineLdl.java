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
            double[] upper = rows[j];
            int upperFirst = first(j);
            double sum = row[j - first];
            for (int k = Math.max(first, upperFirst); k < j; k++) {
                sum -= row[k - first] * upper[k - upperFirst];
            }
            row[j - first] = sum;
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
            double sum = b[order[i]];
            int first = first(i);
            for (int k = first; k < i; k++) {
                sum -= rows[i][k - first] * x[k];
            }
            x[i] = sum;
        }
        for (int i = 0; i < n; i++) {
            x[i] /= pivot(i);
        }
        substituteBack(x, n - 1);
        return scatter(x);
    }

    private void substituteBack(double[] x, int from) {
        for (int i = from; i >= 0; i--) {
            int first = first(i);
            for (int k = first; k < i; k++) {
                x[k] -= rows[i][k - first] * x[i];
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
